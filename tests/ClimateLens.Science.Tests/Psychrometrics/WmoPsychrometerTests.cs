using ClimateLens.Science.Psychrometrics;
using CsCheck;

namespace ClimateLens.Science.Tests.Psychrometrics;

public class WmoPsychrometerTests
{
    [Fact]
    public void EnhancementFactor_SeaLevel_IsThePublishedOne() =>
        // [WMO8] annex 4.B formula; the value is the formula's own, seen in six public codes.
        Assert.Equal(1.004719, WmoPsychrometer.EnhancementFactor(new(101.325)), 6);

    [Fact]
    public void RelativeHumidity_AgainstThePlainAspiratedPsychrometer_DiffersByLessThanAPoint() =>
        Gen.Select(Gen.Double[5, 40], Gen.Double[0, 5], Gen.Double[90, 105]).Sample((t, depression, p) =>
        {
            double wmo = WmoPsychrometer.RelativeHumidity(
                new(t), WmoPsychrometer.VapourPressure(new(t), new(t - depression), new(p)), new(p)).Percent;
            double plain = Psychrometer.RelativeHumidity(new(t), new(t - depression), new(p), BulbVentilation.Aspirated).Percent;
            return Math.Abs(wmo - plain) < 1;
        });

    [Fact]
    public void CoefficientPerK_UnknownVentilation_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Psychrometer.CoefficientPerK((BulbVentilation)7));
}
