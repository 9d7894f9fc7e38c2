using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Leaf;
using NodaTime;

namespace ClimateLens.Analysis.Foliage;

/// <summary>The difference between a sensor in the canopy and the main sensor, fitted where both tell, for the steps in which the one in the canopy does not.</summary>
internal static class FittedCanopyAir
{
    /// <summary>Fewer hours in which both tell than this carry no fit. Choice of this project. [h]</summary>
    private const double FewestHours = 24;

    /// <summary>The fitted difference by step; null where there is no sensor in the canopy, it never fails, or too little tells.</summary>
    /// <param name="period">The house period, with the air's state.</param>
    /// <param name="cover">Ground cover by day.</param>
    /// <param name="day">Day of each step.</param>
    /// <param name="sunWm2">Radiation over the crop; NaN where not known. [W/m²]</param>
    public static CanopyAirOffset[]? Of(HousePeriod period, CoverCourse cover, int[] day, double[] sunWm2)
    {
        double[] air = [.. period.Frame.Values(Derived.TemperatureC)], humidity = [.. period.Frame.Values(Derived.HumidityPct)];
        if (UsedSeries.Of(period, "canopyTemperature") is not double[] canopyC || UsedSeries.Of(period, "canopyHumidity") is not double[] canopyPct)
        {
            return null;
        }

        int both = 0, missing = 0;
        for (int i = 0; i < air.Length; i++)
        {
            canopyPct[i] = Math.Min(100, canopyPct[i]);
            bool main = double.IsFinite(air[i] + humidity[i]), inside = double.IsFinite(canopyC[i] + canopyPct[i]);
            both += main && inside ? 1 : 0;
            missing += main && !inside ? 1 : 0;
        }

        if (missing == 0 || both < FewestHours * period.StepsPerHour)
        {
            return null;
        }

        RiskRules rules = period.Input.House.Rules;
        InCanopyAir before = rules.CanopyDifference
            ? new(rules.CanopyTemperatureK, rules.CanopyTemperatureErrorK, rules.CanopyHumidityPct, rules.CanopyHumidityErrorPct)
            : InCanopyAir.None;
        double[] covered = [.. day.Select(d => cover.Days[d].Value)], since = HoursSinceWatering(period);
        double[] sun = [.. sunWm2.Select((v, i) => double.IsNaN(v) && !period.Sun.IsNight(period.Frame.Axis.StartOf(i)) ? double.NaN : Math.Clamp(double.IsNaN(v) ? 0 : v, 0, 1500))];
        CanopyAirFit fit = CanopyAirFit.Of(before, new CanopyAirSample(air, humidity, canopyC, canopyPct, covered, sun, since));
        CanopyAirOffset[] offsets = new CanopyAirOffset[air.Length];
        for (int i = 0; i < offsets.Length; i++)
        {
            bool known = double.IsFinite(air[i] + humidity[i] + sun[i]) && air[i] is >= -30 and <= 60;
            offsets[i] = known ? fit.At(new(covered[i], sun[i], since[i]), new(air[i]), new(humidity[i])) : before.At(covered[i]);
        }

        return offsets;
    }

    private static double[] HoursSinceWatering(HousePeriod period)
    {
        TimeAxis axis = period.Frame.Axis;
        double[] hours = new double[axis.Count];
        Array.Fill(hours, double.PositiveInfinity);
        foreach (WateringEvent e in period.Events)
        {
            Instant end = e.End ?? e.Start;
            for (int i = Math.Max(0, axis.IndexOf(end)); i < axis.Count; i++)
            {
                hours[i] = Math.Min(hours[i], Math.Max(0, (axis.StartOf(i) - end).TotalHours));
            }
        }

        return hours;
    }
}
