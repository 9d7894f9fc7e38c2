using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using ClimateLens.Science.Statistics;
using NodaTime;
using Interval = ClimateLens.Science.Statistics.Interval;

namespace ClimateLens.Analysis.Comparison;

/// <summary>Holds two reviews side by side. Pure: it works from the reviews alone.</summary>
/// <remarks>
/// <para><b>Chance:</b> means of differences, day by day, by the moving-block bootstrap ([KUNSCH89]): what the difference would have been with other days alike. With fewer than five days there is no range, and nothing is called beyond chance.</para>
/// <para><b>Sensors:</b> the stated accuracies of both, taken as unrelated and added as squares, carried over to the quantity at its mean (<see cref="SensorError"/>). A difference counts as beyond both where its range leaves zero out and its value is larger than that.</para>
/// </remarks>
public static class HousesCompared
{
    private const int Draws = 2000, FewestNights = 3;
    private const double AlikeK = 1, DryHours = 12;
    private const ulong Seed = 20250901;

    /// <summary>Whether two reviews can be held side by side: their periods have as many hours.</summary>
    public static bool CanBe(Review first, Review second) => first.Hours.Length == second.Hours.Length && first.Hours.Length > 0;

    /// <summary>Compares.</summary>
    /// <exception cref="ArgumentException">Their periods differ in length.</exception>
    public static ComparisonReport Of(Review first, Review second)
    {
        if (!CanBe(first, second))
        {
            throw new ArgumentException("Both periods must have as many hours.", nameof(second));
        }

        ImmutableArray<MeanDifference> differences =
        [
            .. new[]
            {
                Difference("airTemperatureC", first, second, h => h.AirTemperatureC),
                Difference("relativeHumidityPct", first, second, h => h.RelativeHumidityPct),
                Difference("vpdKPa", first, second, h => h.VpdKPa),
                Difference("absoluteHumidityGm3", first, second, h => h.AbsoluteHumidityGm3),
                Difference("dewPointMarginK", first, second, h => h.DewPointMarginK),
            }.OfType<MeanDifference>(),
        ];
        SensorMatch[] sensors = [.. Sensors(first, second, differences)];
        return new ComparisonReport(
            Side(first),
            Side(second),
            first.Period.From == second.Period.From,
            Pairs(first, second, h => h.RelativeHumidityPct).Count(),
            [.. differences.Select(d => WithOffsets(d, sensors))],
            Risk(first, second, first.Period.From == second.Period.From ? sensors : []),
            [.. sensors],
            [.. Nights(first, second)],
            [.. first.Hours.Zip(second.Hours, (a, b) => a.RelativeHumidityPct - b.RelativeHumidityPct)]);
    }

    private static ComparedSide Side(Review review) => new(
        review.House.Id,
        review.House.Name,
        review.Period,
        review.RiskHours,
        review.Waterings?.Length,
        review.Waterings?.Count(w => w.WetsLeaves == true) ?? 0,
        review.Waterings?.Count(w => w is { WetsLeaves: true, AfterCutOff: true }) ?? 0,
        review.Waterings is { Length: > 0 } waterings && waterings.All(w => w.Litres is not null) ? waterings.Sum(w => w.Litres) : null,
        review.Canopy?.Cover,
        review.Causes,
        review.Causes is null ? review.NotKnown.FirstOrDefault(u => u.What == "causes")?.Why ?? "" : "");

    private static IEnumerable<(int Hour, double First, double Second)> Pairs(Review first, Review second, Func<ReviewHour, double?> value)
    {
        for (int i = 0; i < first.Hours.Length; i++)
        {
            if (value(first.Hours[i]) is double a && value(second.Hours[i]) is double b)
            {
                yield return (i, a, b);
            }
        }
    }

    private static MeanDifference? Difference(string name, Review first, Review second, Func<ReviewHour, double?> value)
    {
        (int Hour, double First, double Second)[] pairs = [.. Pairs(first, second, value)];
        if (pairs.Length == 0)
        {
            return null;
        }

        double[] days = [.. pairs.GroupBy(p => first.Hours[p.Hour].Start.Date).Select(day => day.Average(p => p.First - p.Second))];
        Interval range = MovingBlockBootstrap.MeanRange(days, Draws, Seed);
        double mean = pairs.Average(p => p.First - p.Second);
        Estimate difference = double.IsNaN(range.Low) ? new Estimate(mean, mean, mean) : new Estimate(mean, Math.Min(mean, range.Low), Math.Max(mean, range.High));
        double? sensors = Joint(Error(name, first), Error(name, second));
        return new MeanDifference(name, pairs.Average(p => p.First), pairs.Average(p => p.Second), difference, sensors, Verdict(difference, sensors));
    }

    /// <summary>What a review's sensors may put a mean off by; null where they do not carry over.</summary>
    private static double? Error(string name, Review review)
    {
        double? kelvin = Accuracy(review, "airTemperatureAccuracy"), percent = Accuracy(review, "relativeHumidityAccuracy");
        ReviewHour[] known = [.. review.Hours.Where(h => h is { AirTemperatureC: not null, RelativeHumidityPct: not null })];
        if (kelvin is not double dt || percent is not double drh || known.Length == 0)
        {
            return null;
        }

        Celsius air = new(known.Average(h => h.AirTemperatureC!.Value));
        double humidity = Math.Clamp(known.Average(h => h.RelativeHumidityPct!.Value), 1, 100);
        double perKPa = VapourDensity.GramKelvinPerCubicMetreKPa / (air.Value + Limits.ZeroCelsiusK);
        return name switch
        {
            "airTemperatureC" => dt,
            "relativeHumidityPct" => drh,
            "vpdKPa" => SensorError.OfDeficit(air, new(humidity), new(dt), new(drh)).Combined,
            "absoluteHumidityGm3" => Together(perKPa * SaturationVapourPressure.OverWater(air).Value * drh / 100, perKPa * humidity / 100 * SaturationVapourPressure.Slope(air).Value * dt),
            "dewPointMarginK" => SensorError.OfMargin(air, new(humidity), new(dt), new(drh)).Combined,
            _ => null,
        };
    }

    private static double? Accuracy(Review review, string name) => review.Provenance.Thresholds.FirstOrDefault(t => t.Name == name)?.Value;

    private static double Together(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private static double? Joint(double? a, double? b) => a is double one && b is double other ? Together(one, other) : null;

    private static string Verdict(Estimate difference, double? sensors)
        => difference.Low == difference.High ? "notKnown"
            : difference.Low <= 0 && difference.High >= 0 ? "none"
            : sensors is not double joint ? "notKnown"
            : Math.Abs(difference.Value) <= joint ? "withinSensors" : "beyondSensors";

    private static RiskDifference? Risk(Review first, Review second, IReadOnlyList<SensorMatch> sensors)
    {
        if (first.RiskHours is not { } a || second.RiskHours is not { } b)
        {
            return null;
        }

        int[] common = [.. Enumerable.Range(0, first.Hours.Length).Where(i => first.Hours[i].Risk is not null && second.Hours[i].Risk is not null)];
        if (common.Length == 0)
        {
            return null;
        }

        double[] days = [.. common.GroupBy(i => first.Hours[i].Start.Date).Select(day => (double)day.Sum(i => Hour(first.Hours[i]) - Hour(second.Hours[i])))];
        Interval chance = MovingBlockBootstrap.MeanRange(days, Draws, Seed);
        int one = common.Sum(i => Hour(first.Hours[i])), other = common.Sum(i => Hour(second.Hours[i]));
        double difference = one - other;
        Estimate byChance = double.IsNaN(chance.Low) ? new Estimate(difference, difference, difference)
            : new Estimate(difference, Math.Min(difference, chance.Low * days.Length), Math.Max(difference, chance.High * days.Length));
        double down = Together(a.Value - a.Low, b.High - b.Value), up = Together(a.High - a.Value, b.Value - b.Low);
        Estimate bySensors = new(difference, difference - down, difference + up);
        string verdict = Verdict(byChance, difference > 0 ? down : up);
        bool offset = verdict == BeyondSensors && sensors.Any(s => IsOff(s));
        return new RiskDifference(difference, byChance, bySensors, offset ? MaybeOffset : verdict) { Hours = common.Length, First = one, Second = other };
    }

    private const string BeyondSensors = "beyondSensors", MaybeOffset = "maybeOffset";

    /// <summary>Whether two sensors part on nights alike by more than they may.</summary>
    private static bool IsOff(SensorMatch match) => match.Offset is { } offset && Math.Abs(offset.Value) > match.JointAccuracy;

    /// <summary>A difference that an offset between the sensors could make by itself: what is left of it after the offset is no more than two such sensors may part by.</summary>
    private static MeanDifference WithOffsets(MeanDifference d, IReadOnlyList<SensorMatch> sensors)
    {
        string channel = d.Name == "airTemperatureC" ? "airTemperature" : "relativeHumidity";
        return d.Verdict == BeyondSensors && sensors.FirstOrDefault(s => s.Channel == channel) is { } match && IsOff(match) && Math.Abs(match.Corrected ?? double.PositiveInfinity) <= match.JointAccuracy
            ? d with { Verdict = MaybeOffset } : d;
    }

    private static int Hour(ReviewHour hour) => hour.Risk == true ? 1 : 0;

    /// <summary>Nights in which the air of both is within a kelvin and no leaves were watered for half a day: there the sensors should agree, as far as the houses do.</summary>
    private static IEnumerable<SensorMatch> Sensors(Review first, Review second, ImmutableArray<MeanDifference> differences)
    {
        foreach ((string channel, string name, Func<ReviewHour, double?> value) in ((string, string, Func<ReviewHour, double?>)[])
                 [("airTemperature", "airTemperatureC", h => h.AirTemperatureC), ("relativeHumidity", "relativeHumidityPct", h => h.RelativeHumidityPct)])
        {
            if (Joint(Accuracy(first, channel + "Accuracy"), Accuracy(second, channel + "Accuracy")) is not double joint)
            {
                continue;
            }

            double[] nights =
            [
                .. Pairs(first, second, value)
                    .Where(p => first.Hours[p.Hour].Night && second.Hours[p.Hour].Night && IsAlike(first, second, p.Hour))
                    .GroupBy(p => Evening(first.Hours[p.Hour])).Where(night => night.Count() >= 3).Select(night => night.Average(p => p.First - p.Second)),
            ];
            Interval range = MovingBlockBootstrap.MeanRange(nights, Draws, Seed);
            Estimate? offset = nights.Length < FewestNights ? null : double.IsNaN(range.Low) ? new Estimate(range.Value, nights.Min(), nights.Max()) : new Estimate(range.Value, range.Low, range.High);
            double? whole = differences.FirstOrDefault(d => d.Name == name)?.Difference.Value;
            yield return new SensorMatch(channel, nights.Length, offset, joint, offset is null ? null : whole - offset.Value);
        }
    }

    private static bool IsAlike(Review first, Review second, int hour)
        => Math.Abs((first.Hours[hour].AirTemperatureC - second.Hours[hour].AirTemperatureC) ?? double.PositiveInfinity) <= AlikeK
            && IsDry(first, hour) && IsDry(second, hour);

    private static bool IsDry(Review review, int hour)
    {
        Instant at = review.Hours[hour].Start.ToInstant();
        return !(review.Waterings ?? []).Any(w => w.WetsLeaves != false && w.Start.ToInstant() <= at && at - (w.End ?? w.Start).ToInstant() < Duration.FromHours(DryHours));
    }

    private static LocalDate Evening(ReviewHour hour) => hour.Start.Hour < 12 ? hour.Start.Date.PlusDays(-1) : hour.Start.Date;

    private static IEnumerable<NightPair> Nights(Review first, Review second)
        => Enumerable.Range(0, first.Hours.Length).Where(i => first.Hours[i].Night).GroupBy(i => Evening(first.Hours[i])).Select(night =>
        {
            int[] hours = [.. night], common = [.. hours.Where(i => first.Hours[i].Risk is not null && second.Hours[i].Risk is not null)];
            bool told = 2 * common.Length >= hours.Length;
            return new NightPair(
                night.Key,
                told ? common.Sum(i => Hour(first.Hours[i])) : null,
                told ? common.Sum(i => Hour(second.Hours[i])) : null,
                common.Select(i => first.Hours[i].RelativeHumidityPct).Average(),
                common.Select(i => second.Hours[i].RelativeHumidityPct).Average(),
                common.Select(i => first.Hours[i].DewPointMarginK).Min(),
                common.Select(i => second.Hours[i].DewPointMarginK).Min()) { Hours = hours.Length, CommonHours = common.Length };
        });
}
