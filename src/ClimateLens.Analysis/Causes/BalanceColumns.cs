using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Psychrometrics;
using NodaTime;

namespace ClimateLens.Analysis.Causes;

/// <summary>A house period as the vapour balance sees it.</summary>
/// <remarks>
/// <b>Assumed:</b> a watering that names a bench wets one part of as many as the log names benches; drip wets neither leaves nor floor; a house is 4 m high, which scales the parameters only.
/// </remarks>
internal static class BalanceColumns
{
    private static readonly LocalDate Epoch = new(1970, 1, 1);

    /// <summary>The columns of a period with air and cover, from a step on.</summary>
    public static BalanceInputs Of(HousePeriod period, int from)
    {
        TimeAxis axis = period.Frame.Axis;
        CoverCourse cover = period.Cover ?? throw new ArgumentException("The canopy stage comes first.", nameof(period));
        int[] day = cover.DaysOf(axis);
        double[] night = period.Sun.Nights(axis);
        double[] sun = LightOnLeaves.Of(period, cover, day, night, FoliageBasis.None).OverCropWm2;
        double[] above = CoverAbove.Of(period, [.. sun], FoliageBasis.None).AboveC;
        bool hasSun = sun.Any(double.IsFinite);
        for (int i = 0; i < sun.Length; i++)
        {
            sun[i] = double.IsNaN(sun[i]) && night[i] == 1 ? 0 : sun[i];
        }

        int first = Period.DaysBetween(Epoch, cover.First);
        BalanceInputs air = new()
        {
            StepHours = axis.Step.TotalHours,
            Day = Array.ConvertAll(day[from..], d => first + d),
            HumidityGm3 = period.Frame.Values(Derived.AbsoluteHumidityGm3).AsSpan()[from..].ToArray(),
            AirC = period.Frame.Values(Derived.TemperatureC).AsSpan()[from..].ToArray(),
            OutsideGm3 = Outside(period).AsMemory(from),
            SunWm2 = hasSun ? sun.AsMemory(from) : default(ReadOnlyMemory<double>),
            Vent = Share(period, "ventPosition", 100, from),
            WindMs = UsedSeries.Of(period, "windSpeed") is double[] wind ? wind.AsMemory(from) : default(ReadOnlyMemory<double>),
            Fan = Share(period, "fan", 1, from),
            CoverC = above.Any(double.IsFinite) ? above.AsMemory(from) : default(ReadOnlyMemory<double>),
        };
        return WithCropAndWater(air, period, from);
    }

    /// <summary>The same columns with the ground cover and the waterings of a period, which may be another way of doing the same one.</summary>
    /// <param name="inputs">Columns of the period as it was, from the same step on.</param>
    /// <param name="period">The period with its cover and waterings.</param>
    /// <param name="from">First step.</param>
    public static BalanceInputs WithCropAndWater(BalanceInputs inputs, HousePeriod period, int from)
    {
        CoverCourse cover = period.Cover!;
        (double[] leaf, double[] floor) = Wetted(period);
        return inputs with
        {
            Cover = cover.Known ? Array.ConvertAll(cover.DaysOf(period.Frame.Axis)[from..], d => cover.Days[d].Value) : default(ReadOnlyMemory<double>),
            LeafWetted = leaf.AsMemory(from),
            FloorWetted = floor.AsMemory(from),
        };
    }

    /// <summary>One stretch behind the other; both have the same step.</summary>
    public static BalanceInputs Joined(BalanceInputs first, BalanceInputs then) => first with
    {
        Day = Joined(first.Day, then.Day),
        HumidityGm3 = Joined(first.HumidityGm3, then.HumidityGm3),
        AirC = Joined(first.AirC, then.AirC),
        OutsideGm3 = Joined(first.OutsideGm3, then.OutsideGm3),
        SunWm2 = Known(first.SunWm2, first.Steps, then.SunWm2, then.Steps),
        Cover = Known(first.Cover, first.Steps, then.Cover, then.Steps),
        Vent = Known(first.Vent, first.Steps, then.Vent, then.Steps),
        WindMs = Known(first.WindMs, first.Steps, then.WindMs, then.Steps),
        Fan = Known(first.Fan, first.Steps, then.Fan, then.Steps),
        CoverC = Known(first.CoverC, first.Steps, then.CoverC, then.Steps),
        LeafWetted = Joined(first.LeafWetted, then.LeafWetted),
        FloorWetted = Joined(first.FloorWetted, then.FloorWetted),
    };

    /// <summary>Absolute humidity of the air outside by step. [g/m³]</summary>
    private static double[] Outside(HousePeriod period)
    {
        double[] outside = new double[period.Frame.Axis.Count];
        Array.Fill(outside, double.NaN);
        if (UsedSeries.Of(period, "outsideTemperature") is not double[] temperature || UsedSeries.Of(period, "outsideHumidity") is not double[] humidity)
        {
            return outside;
        }

        for (int i = 0; i < outside.Length; i++)
        {
            humidity[i] = Math.Min(100, humidity[i]);
        }

        MoistAirColumns.AbsoluteHumidityGm3(temperature, humidity, outside);
        return outside;
    }

    /// <summary>Mean over all series of a channel of those that are known, over a full scale; empty without one. [1]</summary>
    private static ReadOnlyMemory<double> Share(HousePeriod period, string channel, double full, int from)
    {
        double[][] all = [.. period.Series.Where(s => s.Channel.Name == channel).Select(s => Quality.Used(period.Frame, s.Key))];
        if (all.Length == 0)
        {
            return default;
        }

        double[] share = new double[period.Frame.Axis.Count - from];
        for (int i = 0; i < share.Length; i++)
        {
            double[] known = [.. all.Select(v => v[from + i]).Where(double.IsFinite)];
            share[i] = known.Length == 0 ? double.NaN : Math.Clamp(known.Average() / full, 0, 1);
        }

        return share;
    }

    private static (double[] Leaf, double[] Floor) Wetted(HousePeriod period)
    {
        TimeAxis axis = period.Frame.Axis;
        double[] leaf = new double[axis.Count], floor = new double[axis.Count];
        int benches = Math.Max(1, period.Events.Where(e => e.Bench.Length > 0).Select(e => e.Bench).Distinct().Count());
        foreach (WateringEvent e in period.Events)
        {
            double[]? column = CutOff.Wets(e) == true ? leaf : e.IsFlood ? floor : null;
            double start = (e.Start - axis.Start) / axis.Step, end = ((e.End ?? e.Start) - axis.Start) / axis.Step;
            if (column is not null && end >= start)
            {
                WettedShare.Add(column, start, end, e.Bench.Length == 0 ? 1 : 1.0 / benches);
            }
        }

        return (leaf, floor);
    }

    private static T[] Joined<T>(ReadOnlyMemory<T> first, ReadOnlyMemory<T> then) => [.. first.Span, .. then.Span];

    private static ReadOnlyMemory<double> Known(ReadOnlyMemory<double> first, int firstSteps, ReadOnlyMemory<double> then, int thenSteps)
        => first.IsEmpty && then.IsEmpty ? default : Joined<double>(Filled(first, firstSteps), Filled(then, thenSteps));

    private static ReadOnlyMemory<double> Filled(ReadOnlyMemory<double> column, int steps)
        => column.IsEmpty ? Enumerable.Repeat(double.NaN, steps).ToArray() : column;
}
