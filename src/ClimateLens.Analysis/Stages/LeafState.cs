using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Canopy;
using ClimateLens.Science.Leaf;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// Fourth stage: the weather of the leaves. The air is that of a canopy sensor where one works, else the main sensor's. The leaf
/// temperature is measured where a leaf sensor works; else it follows from the leaf's energy balance where the weather outside is
/// logged; else it is the air's, less a stated difference between sunset and sunrise, which is an assumption and named as one.
/// </summary>
public static class LeafState
{
    /// <summary>The rule that makes the assumed night difference rule over the balance.</summary>
    public const string OffsetRule = "leafNightOffsetK";

    /// <summary>Adds the weather of the leaves to a house period.</summary>
    public static HousePeriod Add(HousePeriod period)
    {
        CoverCourse cover = period.Cover ?? throw new ArgumentException("The canopy stage comes first.", nameof(period));
        TimeAxis axis = period.Frame.Axis;
        (double[] air, bool[] airInside) = InCanopy(period, Derived.TemperatureC, "canopyTemperature");
        (double[] humidity, bool[] humidityInside) = InCanopy(period, Derived.HumidityPct, "canopyHumidity");
        double[] night = period.Sun.Nights(axis);
        int[] day = cover.DaysOf(axis);
        double[] measured = period.Leaf is Series leaf ? Quality.Used(period.Frame, leaf.Key) : Enumerable.Repeat(double.NaN, axis.Count).ToArray();
        (double[] absorbed, double[] overCrop, FoliageBasis basis) = LightOnLeaves.Of(period, cover, day, night, FoliageBasis.None);
        (double[] above, basis) = CoverAbove.Of(period, overCrop, basis);
        (double[] water, basis) = WaterOnLeaves.Of(period, basis);
        double[] openByDay = [.. cover.Days.Select(d => MeanLeaf.OpenShare(LightInterception.LeafArea(d.Value)))];
        for (int i = 0; i < above.Length; i++)
        {
            // By day a cover is about as warm as the house; only at night does it decide.
            above[i] = double.IsNaN(above[i]) && night[i] == 0 ? air[i] : above[i];
        }

        bool offsetRules = period.Input.House.Rules.SetByUser.Contains(OffsetRule);
        CanopyAirOffset[]? fitted = FittedCanopyAir.Of(period, cover, day, overCrop);
        basis = fitted is null ? basis : basis.AndModelled(Phrase.Of("The air among the leaves where the canopy sensor is silent: its difference to the main sensor, fitted to the hours in which both tell."));
        LeafFrom[] from = new LeafFrom[axis.Count], blind = new LeafFrom[axis.Count];
        double[] open = new double[axis.Count];
        for (int i = 0; i < from.Length; i++)
        {
            blind[i] = double.IsNaN(air[i] + humidity[i]) ? LeafFrom.Unknown
                : offsetRules || double.IsNaN(above[i] + absorbed[i]) ? LeafFrom.NightOffset
                : LeafFrom.Balance;
            open[i] = blind[i] == LeafFrom.NightOffset ? 1 : openByDay[day[i]]; // the assumed difference is that of a leaf by itself
            from[i] = blind[i] != LeafFrom.Unknown && double.IsFinite(measured[i]) ? LeafFrom.Sensor : blind[i];
        }

        return period with
        {
            Foliage = new FoliageWeather
            {
                AirC = air,
                HumidityPct = humidity,
                TemperatureInCanopy = airInside,
                HumidityInCanopy = humidityInside,
                LeafFrom = from,
                LeafWithoutSensor = blind,
                FittedDifference = fitted,
                MeasuredLeafC = measured,
                Night = night,
                AbsorbedWm2 = absorbed,
                OverCropWm2 = overCrop,
                AboveC = above,
                OpenShare = open,
                WaterMm = water,
                Day = day,
                Basis = basis,
            },
        };
    }

    /// <summary>The main sensor's column with a canopy sensor's values in its place where they passed their checks.</summary>
    private static (double[] Values, bool[] FromCanopy) InCanopy(HousePeriod period, ColumnKey main, string channel)
    {
        double[] values = [.. period.Frame.Values(main)];
        bool[] inside = new bool[values.Length];
        if (UsedSeries.Of(period, channel) is double[] canopy)
        {
            for (int i = 0; i < values.Length; i++)
            {
                inside[i] = double.IsFinite(canopy[i]) && double.IsFinite(values[i]);
                values[i] = inside[i] ? canopy[i] : values[i];
            }
        }

        return (channel == "canopyHumidity" ? [.. values.Select(v => Math.Min(100, v))] : values, inside);
    }
}
