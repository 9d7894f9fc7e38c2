using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using ClimateLens.Science.Tests.References;

namespace ClimateLens.Science.Tests.CheckRows;

/// <summary>The error of each saturation curve against Hyland-Wexler, as the docstrings and docs/science/moist-air.md print it.</summary>
public class CurveErrorTests
{
    private const double LastDigit = 6e-5; // the tables are rounded to four decimals

    public static TheoryData<int, string> Saturation =>
        CheckRow.Theory("curve_errors", row => row.Quantity == "saturation_error");

    public static TheoryData<int, string> DewPoints =>
        CheckRow.Theory("curve_errors", row => row.Quantity == "dew_point_error");

    [Theory]
    [MemberData(nameof(Saturation))]
    public void Curve_AgainstHylandWexler_HasTheTabulatedError(int index, string source)
    {
        CheckRow row = CheckRow.Of("curve_errors")[index];
        (double low, double high) = Range(row.Json.GetProperty("range").GetString()!);
        (double max, double mean) = RelativeErrorPct(Curve(row.Formula), low, high);
        Assert.True(Math.Abs(max - row.Number("max_rel_error_pct")) < LastDigit, $"{row}: max {max}; {source}");
        Assert.True(Math.Abs(mean - row.Number("mean_abs_rel_error_pct")) < LastDigit, $"{row}: mean {mean}; {source}");
    }

    [Theory]
    [MemberData(nameof(DewPoints))]
    public void DewPoint_AgainstHylandWexler_HasTheTabulatedError(int index, string source)
    {
        CheckRow row = CheckRow.Of("curve_errors")[index];
        double max = MaxDewPointErrorK(Curve(row.Formula), 1, 40, 1);
        Assert.True(Math.Abs(max - row.Number("max_error_C")) < LastDigit, $"{row}: {max}; {source}");
    }

    [Fact]
    public void DefaultCurve_TenTo35C_IsWithin0Point07PercentOfHylandWexler()
    {
        (double max, _) = RelativeErrorPct(SaturationCurve.Water, 10, 35);
        Assert.InRange(Math.Abs(max), 0.06, 0.07);
    }

    [Fact]
    public void DefaultSlope_ZeroTo50C_IsWithin0Point6PercentOfHylandWexler()
    {
        double max = Grid(0, 50, 0.05).Max(t =>
            Math.Abs((SaturationCurve.Water.SlopeKPaPerK(t) / HylandWexler.Water.SlopeKPaPerK(t)) - 1));
        Assert.InRange(max, 0.004, 0.006);
    }

    [Fact]
    public void DefaultDewPoint_FineGrid_IsWithin0Point014K()
    {
        double max = Math.Abs(MaxDewPointErrorK(SaturationCurve.Water, 0, 40, 0.5));
        Assert.InRange(max, 0.012, 0.014);
    }

    [Fact]
    public void DefaultFrostPoint_Minus20To0C_IsWithin0Point025K()
    {
        double max = 0;
        foreach (double t in Grid(-20, 0, 0.5))
        {
            foreach (double rh in Grid(30, 100, 1).Where(rh => rh / 100 * SaturationCurve.Water.VapourPressureKPa(t) < 0.611))
            {
                double ours = FrostPoint.FromRelativeHumidity(new(t), new(rh)).Value;
                double reference = FrostPoint.FromRelativeHumidity(new(t), new(rh), HylandWexler.Water, HylandWexler.Ice).Value;
                max = Math.Max(max, Math.Abs(ours - reference));
            }
        }

        Assert.InRange(max, 0.02, 0.025);
    }

    [Fact]
    public void HylandWexler_AgainstSteamEquations_IsWithin0Point03Percent()
    {
        foreach (ReferenceCurve reference in new[] { Iapws.WagnerPruss1993, Iapws.If97 })
        {
            double max = Grid(0, 50, 0.05).Max(t =>
                Math.Abs((HylandWexler.Water.VapourPressureKPa(t) / reference.VapourPressureKPa(t)) - 1));
            Assert.InRange(max, 0.0001, 0.0003);
        }
    }

    private static (double MaxPct, double MeanAbsPct) RelativeErrorPct(SaturationCurve curve, double low, double high)
    {
        SaturationCurve reference = curve.OverIce ? HylandWexler.Ice : HylandWexler.Water;
        double[] errors = [.. Grid(low, high, 0.05).Select(t =>
            100 * ((curve.VapourPressureKPa(t) / reference.VapourPressureKPa(t)) - 1))];
        return (errors.MaxBy(Math.Abs), errors.Average(Math.Abs));
    }

    private static double MaxDewPointErrorK(SaturationCurve curve, double low, double high, double step)
    {
        double max = 0;
        foreach (double t in Grid(low, high, step))
        {
            foreach (double rh in Grid(30, 100, step))
            {
                Celsius air = new(t);
                double error = DewPoint.FromRelativeHumidity(air, new(rh), curve).Value
                    - DewPoint.FromRelativeHumidity(air, new(rh), HylandWexler.Water).Value;
                max = Math.Abs(error) > Math.Abs(max) ? error : max;
            }
        }

        return max;
    }

    private static IEnumerable<double> Grid(double low, double high, double step) =>
        Enumerable.Range(0, (int)Math.Round((high - low) / step) + 1).Select(i => low + (i * step));

    private static (double Low, double High) Range(string name) => name switch
    {
        "minus20_to_50" => (-20, 50),
        "zero_to_50" => (0, 50),
        "ten_to_35" => (10, 35),
        "minus20_to_0" => (-20, 0),
        "minus40_to_0" => (-40, 0),
        _ => throw new InvalidOperationException($"No range {name}."),
    };

    private static SaturationCurve Curve(string name) => name switch
    {
        "WMO-8 / Sonntag Magnus" => MagnusForm.Wmo8Water,
        "AERK (Alduchov & Eskridge 1996)" => MagnusForm.AerkWater,
        "Buck 1981 ew1" => MagnusForm.Buck1981Water,
        "Tetens as FAO-56 eq.11" => MagnusForm.Fao56Water,
        "Bolton 1980" => MagnusForm.Bolton1980Water,
        "WMO-8 / Sonntag Magnus ice" => MagnusForm.Wmo8Ice,
        "AERKi" => MagnusForm.AerkIce,
        "Buck 1981 ei2" => MagnusForm.Buck1981Ice,
        "Tetens-Murray 1967" => ReferenceCurves.Murray1967Water,
        "Buck 1996" => ReferenceCurves.Buck1996Water,
        "Buck 1981 ew4" => ReferenceCurves.Buck1981Ew4,
        "Sonntag 1990 five-term" => ReferenceCurves.Sonntag1990Water,
        "Hardy 1998 ITS-90" => ReferenceCurves.Hardy1998Water,
        "Goff-Gratch 1946" => ReferenceCurves.GoffGratch1946,
        "Wagner-Pruss 1993" => Iapws.WagnerPruss1993,
        "Buck 1981 ei1" => ReferenceCurves.Buck1981Ei1,
        "Tetens-Murray ice" => ReferenceCurves.Murray1967Ice,
        "Buck 1996 ice" => ReferenceCurves.Buck1996Ice,
        "Sonntag 1990 ice five-term" => ReferenceCurves.Sonntag1990Ice,
        "Hardy 1998 ice" => ReferenceCurves.Hardy1998Ice,
        "IAPWS R14-08 sublimation" => Iapws.SublimationR14,
        _ => throw new InvalidOperationException($"No curve {name}."),
    };
}
