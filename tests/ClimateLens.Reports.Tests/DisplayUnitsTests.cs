using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Units;
using NodaTime;

namespace ClimateLens.Reports.Tests;

/// <summary>Fixed points by definition: 0 °C = 32 °F, 100 °C = 212 °F, −40 = −40; 1 K = 1.8 °F; 1 US gal = 3.785411784 L (NIST SP 811, App. B).</summary>
public class DisplayUnitsTests
{
    private static readonly DisplayUnits Metric = new(UnitSystem.Metric);
    private static readonly DisplayUnits Us = new(UnitSystem.Us);

    [Theory]
    [InlineData(0.0, "32.0 °F")]
    [InlineData(100.0, "212.0 °F")]
    [InlineData(-40.0, "−40.0 °F")]
    public void Temperature_Us_HasTheZeroShift(double celsius, string expected) => Assert.Equal(expected, Plain(Us.Temperature(celsius)));

    [Theory]
    [InlineData(0.0, "0.0 °F")]
    [InlineData(1.0, "1.8 °F")]
    [InlineData(-5.0, "−9.0 °F")]
    public void Difference_Us_HasNoZeroShift(double kelvin, string expected) => Assert.Equal(expected, Plain(Us.Difference(kelvin)));

    [Fact]
    public void Volume_Us_IsInGallons() => Assert.Equal("10.0 US gal", Plain(Us.Volume(37.85411784)));

    [Fact]
    public void Vpd_AnySystem_StaysInKiloPascal() => Assert.Equal("0.83 kPa", Plain(DisplayUnits.Vpd(0.825)));

    [Fact]
    public void Number_SmallNegative_IsNotMinusZero() => Assert.Equal("0.0", DisplayUnits.Number(-0.04, 1));

    [Theory]
    [InlineData(null)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Number_NotKnown_SaysSo(double? value)
    {
        Assert.Equal("not known", DisplayUnits.Number(value, 1));
        Assert.Equal("not known", Us.Temperature(value));
        Assert.Equal("not known", Metric.Volume(value));
    }

    [Theory]
    [InlineData(1.5, "K", "1.5 K", "2.7 °F")]
    [InlineData(5, "Cel", "5.0 °C", "41.0 °F")]
    [InlineData(4, "h", "4 h", "4 h")]
    [InlineData(0.95, "1", "0.95", "0.95")]
    public void Threshold_Unit_ReadsInBothSystems(double value, string unit, string metric, string us)
    {
        Assert.Equal(metric, Plain(Metric.Threshold(value, unit)));
        Assert.Equal(us, Plain(Us.Threshold(value, unit)));
    }

    [Fact]
    public void Moment_AnyCulture_ReadsInEnglish()
    {
        OffsetDateTime time = new LocalDateTime(2025, 10, 13, 15, 40).WithOffset(Offset.FromHours(1));
        Assert.Equal("Mon 13 Oct 15:40", LocalTimes.Moment(time));
        Assert.Equal("Mon 13 Oct 15:40 to 16:10", LocalTimes.Span(time, time + Duration.FromMinutes(30)));
        Assert.Equal("Mon 13 Oct 15:40 to Tue 14 Oct 00:40", LocalTimes.Span(time, time + Duration.FromHours(9)));
    }

    [Fact]
    public void Number_WithUnit_StaysOnOneLine() => Assert.Equal("1.0\u00A0K", Metric.Difference(1));

    private static string Plain(string text) => text.Replace('\u00A0', ' ');
}
