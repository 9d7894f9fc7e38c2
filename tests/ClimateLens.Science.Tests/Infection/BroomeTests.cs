using ClimateLens.Science.Infection;
using CsCheck;

namespace ClimateLens.Science.Tests.Infection;

/// <summary>Limits and grades of the grape model.</summary>
public class BroomeTests
{
    private static readonly Gen<(double T, double W)> Weather = Gen.Select(Gen.Double[-20, 45], Gen.Double[0, 60]);

    [Theory]
    [InlineData(20, 3.9, Grade.None)] // shorter than any trial
    [InlineData(20, 4, Grade.None)] // index -1.64
    [InlineData(20, 11, Grade.Low)] // 0.13
    [InlineData(20, 13, Grade.Moderate)] // 0.64
    [InlineData(20, 15, Grade.High)] // 1.14
    [InlineData(41, 20, Grade.None)]
    public void Of_WetPeriods_AreGradedByTheIndex(double temperatureC, double hours, Grade expected) =>
        Assert.Equal(expected, Broome.Of(new(temperatureC), hours).Grade);

    [Fact]
    public void Of_ShortOrTooHot_ScoresNothing() =>
        Assert.Equal(0, Broome.Of(new(20), 3.99).BerryShare + Broome.Of(new(40.1), 12).BerryShare);

    [Fact]
    public void Of_OutsideTheTrials_SaysSoAndHoldsItsInputs()
    {
        BroomeScore cold = Broome.Of(new(5), 30);
        Assert.Equal(Broome.Of(new(12), 20).Index, cold.Index);
        Assert.Equal((12, 20, true), (cold.TemperatureUsedC, cold.HoursUsed, cold.OutsideFit));
        Assert.Equal(Broome.Of(new(32), 10).Index, Broome.Of(new(36), 10).Index);
        Assert.True(Broome.Of(new(31), 10).OutsideFit);
        Assert.False(Broome.Of(new(30), 10).OutsideFit);
    }

    [Fact]
    public void Of_UnknownInput_IsNotKnown()
    {
        Assert.Equal(Grade.NotKnown, Broome.Of(new(double.NaN), 12).Grade);
        Assert.Equal(Grade.NotKnown, Broome.Of(new(20), double.NaN).Grade);
        Assert.Equal(Grade.None, Broome.Of(new(double.NaN), 2).Grade); // too short at any temperature
        Assert.Throws<ArgumentOutOfRangeException>(() => Broome.Of(new(20), -1));
    }

    [Fact]
    public void Of_LongerPeriod_NeverScoresLess() => Gen.Select(Weather, Gen.Double[0, 20]).Sample((weather, more) =>
        Broome.Of(new(weather.T), weather.W + more).BerryShare >= Broome.Of(new(weather.T), weather.W).BerryShare);

    [Fact]
    public void Of_AnyWeather_IsAShareAndHighestAtTheOptimum() => Weather.Sample((t, w) =>
        Broome.Of(new(t), w).BerryShare is >= 0 and <= 1
        && Broome.Of(new(t), w).BerryShare <= Broome.Of(Broome.Optimum, w).BerryShare);

    [Fact]
    public void HoursTo_AnyShare_LeadsBackToIt() => Gen.Select(Gen.Double[8, 32], Gen.Double[0.1, 0.95]).Sample((t, share) =>
        Math.Abs(Broome.Share(Broome.Logit(new(t), Broome.HoursTo(new(t), share))) - share) < 1e-9);

    [Fact]
    public void HoursTo_ColdOrHot_IsNever() =>
        // The equation's gain is positive between 7.4 and 33.3 °C only (computed by a separate program).
        Assert.True(double.IsInfinity(Broome.HoursTo(new(7.3), 0.5)) && double.IsInfinity(Broome.HoursTo(new(33.4), 0.5))
            && double.IsFinite(Broome.HoursTo(new(7.5), 0.5)) && double.IsFinite(Broome.HoursTo(new(33.2), 0.5)));
}
