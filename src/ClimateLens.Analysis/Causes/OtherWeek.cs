using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Leaf;
using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Analysis.Causes;

/// <summary>One set of changes, ready to be replayed under every draw. Holds the memory for one run.</summary>
internal sealed class OtherWeek
{
    private readonly PreparedReplay _replay;
    private readonly AirChange _change;
    private readonly FoliageHours _foliage;
    private readonly int _first;
    private readonly (int Before, double Share)[] _between;
    private readonly double[] _pctPerGm3, _pctWithoutBalance;

    /// <summary>Prepares a set of changes.</summary>
    /// <param name="asWas">The house period as it was.</param>
    /// <param name="other">The same under the changes of watering and spacing.</param>
    /// <param name="hours">Its hours.</param>
    /// <param name="firstHour">Hours before this one are left alone.</param>
    /// <param name="warmthK">Warmth added by step. [K]</param>
    /// <param name="columns">Columns of the balance as it was, from that hour on.</param>
    /// <param name="terms">Terms of the balance.</param>
    public OtherWeek(HousePeriod asWas, HousePeriod other, HourTable hours, int firstHour, double[] warmthK, BalanceInputs columns, BalanceTerms terms)
    {
        _first = firstHour * asWas.StepsPerHour;
        int times = BalanceFit.JoinedSteps(columns.StepHours);
        _between = Between(warmthK.Length - _first, times);
        _replay = new PreparedReplay(HeatAndVent.Of(BalanceColumns.WithCropAndWater(columns, other, _first), warmthK.AsSpan(_first)), terms, times);
        _change = new AirChange(warmthK.Length, asWas.StepsPerHour);
        _foliage = new FoliageHours(other, hours, _change, firstHour, sensorMayRule: false);
        (double[] canopyK, double[] canopyPct) = CanopyDifference(asWas, other);
        (_pctPerGm3, _pctWithoutBalance) = Conversion(other.Foliage!, warmthK);
        for (int i = _first; i < warmthK.Length; i++)
        {
            _change.TemperatureK[i] = warmthK[i] + canopyK[i];
            _pctWithoutBalance[i] += canopyPct[i];
        }
    }

    /// <summary>Steps of the balance.</summary>
    public int Steps => _replay.Steps;

    /// <summary>Runs the balance with the parameters of several draws.</summary>
    public void Run(ReadOnlySpan<double[]> parameters) => _replay.RunAll(parameters);

    /// <summary>Humidity of the balance at the end of each of its steps in one of the draws that ran last; good until the next run. [g/m³]</summary>
    public ReadOnlySpan<double> Humidity(int draw) => _replay.Humidity(draw);

    /// <summary>The leaves, which have taken what the last <see cref="Take"/> gave them.</summary>
    public FoliageHours Leaves => _foliage;

    /// <summary>Lets the leaves take one draw.</summary>
    /// <param name="changeGm3">What the balance changes, at the end of each of its steps; NaN for not known, which changes nothing. [g/m³]</param>
    /// <param name="errors">Errors of the draw.</param>
    /// <param name="hourlyPct">Half-width of the hour's own error of humidity. [%]</param>
    /// <param name="hourly">The hour's own error in half-widths, by hour.</param>
    public void Take(ReadOnlySpan<double> changeGm3, in FoliageErrors errors, double hourlyPct, ReadOnlySpan<double> hourly)
    {
        for (int i = _first; i < _pctPerGm3.Length; i++)
        {
            _change.HumidityPct[i] = _pctWithoutBalance[i] + (_pctPerGm3[i] * At(changeGm3, i - _first));
        }

        _foliage.Take(errors, hourlyPct, hourly);
    }

    /// <summary>The change in the middle of a step, straight between the ends of the balance's steps.</summary>
    private double At(ReadOnlySpan<double> changeGm3, int step)
    {
        (int before, double share) = _between[step];
        double left = before >= 0 && before < changeGm3.Length ? Known(changeGm3[before]) : 0;
        double right = before + 1 < changeGm3.Length ? Known(changeGm3[before + 1]) : left;
        return left + (share * (right - left));
    }

    /// <summary>For each step, the step of the balance that ends last before its middle, and the share of the way to the next end.</summary>
    private static (int Before, double Share)[] Between(int steps, int times)
    {
        var between = new (int Before, double Share)[steps];
        for (int step = 0; step < steps; step++)
        {
            double at = ((step + 0.5) / times) - 1, before = Math.Floor(at);
            between[step] = ((int)before, at - before);
        }

        return between;
    }

    private static double Known(double value) => double.IsNaN(value) ? 0 : value;

    /// <summary>Where a sensor hangs among the leaves, the assumed effect of the other cover on the air there; elsewhere the leaf stage has it already.</summary>
    private static (double[] TemperatureK, double[] HumidityPct) CanopyDifference(HousePeriod asWas, HousePeriod other)
    {
        FoliageWeather leaves = asWas.Foliage!;
        double[] kelvin = new double[leaves.Count], points = new double[leaves.Count];
        InCanopyAir air = AssumedCanopyAir.Of(asWas.Input.House.Rules);
        for (int i = 0; i < kelvin.Length; i++)
        {
            int day = leaves.Day[i];
            CanopyAirOffset was = air.At(asWas.Cover!.Days[day].Value), would = air.At(other.Cover!.Days[day].Value);
            bool fitted = leaves.FittedDifference is not null;
            kelvin[i] = fitted || leaves.TemperatureInCanopy[i] ? would.TemperatureK - was.TemperatureK : 0;
            points[i] = fitted || leaves.HumidityInCanopy[i] ? would.HumidityPct - was.HumidityPct : 0;
        }

        return (kelvin, points);
    }

    /// <summary>Points of relative humidity for each g/m³ at the changed temperature, and what the warmth alone takes off.</summary>
    private static (double[] PctPerGm3, double[] PctByWarmth) Conversion(FoliageWeather leaves, double[] warmthK)
    {
        double[] warm = [.. leaves.AirC.Select((t, i) => t + warmthK[i])], saturation = new double[warm.Length], before = new double[warm.Length];
        MoistAirColumns.SaturationVapourPressureKPa(warm, saturation);
        MoistAirColumns.SaturationVapourPressureKPa(leaves.AirC, before);
        double[] perGm3 = new double[warm.Length], byWarmth = new double[warm.Length];
        for (int i = 0; i < warm.Length; i++)
        {
            perGm3[i] = 100 * (warm[i] + Limits.ZeroCelsiusK) / VapourDensity.GramKelvinPerCubicMetreKPa / saturation[i];
            byWarmth[i] = leaves.HumidityPct[i] * ((before[i] / saturation[i]) - 1);
        }

        return (perGm3, byWarmth);
    }
}
