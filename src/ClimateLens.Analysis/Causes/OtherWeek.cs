using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Leaf;
using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Analysis.Causes;

/// <summary>One set of changes, ready to be replayed under every draw. Holds the memory for one run.</summary>
internal sealed class OtherWeek
{
    /// <summary>Steps of the balance are about this long. [h]</summary>
    private const double ReplayHours = BalanceFit.FitStepHours;

    private readonly PreparedReplay _replay;
    private readonly AirChange _change;
    private readonly FoliageHours _foliage;
    private readonly int _first, _times;
    private readonly double[] _warmthK, _canopyPct, _canopyK, _pctPerGm3, _pctByWarmth;

    /// <summary>Prepares a set of changes.</summary>
    /// <param name="asWas">The house period as it was.</param>
    /// <param name="other">The same under the changes of watering and spacing.</param>
    /// <param name="hours">Its hours.</param>
    /// <param name="firstHour">Hours before this one are left alone.</param>
    /// <param name="warmthK">Warmth added by step. [K]</param>
    /// <param name="terms">Terms of the balance.</param>
    public OtherWeek(HousePeriod asWas, HousePeriod other, HourTable hours, int firstHour, double[] warmthK, BalanceTerms terms)
    {
        _first = firstHour * asWas.StepsPerHour;
        _times = Math.Max(1, (int)Math.Round(ReplayHours / asWas.Frame.Axis.Step.TotalHours));
        _warmthK = warmthK;
        _replay = new PreparedReplay(HeatAndVent.Of(BalanceColumns.Of(other, _first), warmthK.AsSpan(_first)), terms, _times);
        _change = new AirChange(warmthK.Length, asWas.StepsPerHour);
        _foliage = new FoliageHours(other, hours, _change, firstHour, sensorMayRule: false);
        (_canopyK, _canopyPct) = CanopyDifference(asWas, other);
        (_pctPerGm3, _pctByWarmth) = Conversion(other.Foliage!, warmthK);
    }

    /// <summary>Whether each hour is a risk hour, after a run.</summary>
    public bool[] Risk => _foliage.Risk;

    /// <summary>Humidity of the balance at the end of each of its steps; good until the next run. [g/m³]</summary>
    public ReadOnlySpan<double> Humidity(ReadOnlySpan<double> parameters) => _replay.Run(parameters);

    /// <summary>Replays the leaves under one draw.</summary>
    /// <param name="changeGm3">What the balance changes, at the end of each of its steps; NaN for not known, which changes nothing. [g/m³]</param>
    /// <param name="run">Runs the leaves under the draw's errors.</param>
    public void Replay(ReadOnlySpan<double> changeGm3, Action<FoliageHours> run)
    {
        for (int i = _first; i < _warmthK.Length; i++)
        {
            double gm3 = At(changeGm3, i - _first);
            _change.TemperatureK[i] = _warmthK[i] + _canopyK[i];
            _change.HumidityPct[i] = _pctByWarmth[i] + (_pctPerGm3[i] * gm3) + _canopyPct[i];
        }

        run(_foliage);
    }

    /// <summary>The change in the middle of a step, straight between the ends of the balance's steps.</summary>
    private double At(ReadOnlySpan<double> changeGm3, int step)
    {
        double at = ((step + 0.5) / _times) - 1;
        int before = (int)Math.Floor(at);
        double share = at - before;
        double left = before >= 0 && before < changeGm3.Length ? Known(changeGm3[before]) : 0;
        double right = before + 1 < changeGm3.Length ? Known(changeGm3[before + 1]) : left;
        return left + (share * (right - left));
    }

    private static double Known(double value) => double.IsNaN(value) ? 0 : value;

    /// <summary>Where a sensor hangs among the leaves, the assumed effect of the other cover on the air there; elsewhere the leaf stage has it already.</summary>
    private static (double[] TemperatureK, double[] HumidityPct) CanopyDifference(HousePeriod asWas, HousePeriod other)
    {
        FoliageWeather leaves = asWas.Foliage!;
        double[] kelvin = new double[leaves.Count], points = new double[leaves.Count];
        Nursery.Settings.RiskRules rules = asWas.Input.House.Rules;
        InCanopyAir air = rules.CanopyDifference ? new(rules.CanopyTemperatureK, 0, rules.CanopyHumidityPct, 0) : InCanopyAir.None;
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
