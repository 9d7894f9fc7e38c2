using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Pots;
using MathNet.Numerics.Distributions;
using NodaTime;
using Interval = ClimateLens.Science.Statistics.Interval;

namespace ClimateLens.Analysis.Pots;

/// <summary>How fast each bench dries, and its level tomorrow morning and afternoon where such forecasts were shown to beat "same as yesterday".</summary>
/// <remarks>Method, sources and error: <see cref="DryingRates"/> and docs/science/pots.md.</remarks>
internal static class DryingOf
{
    private static readonly Duration ADay = Duration.FromHours(24);

    /// <summary>The drying; null where too little was seen.</summary>
    public static DryingReport? Of(PotData data)
    {
        DryingPower power = new(data.House, data.Past);
        DryingStretches stretches = new(data, power);
        Instant now = data.House.Input.Period.End;
        if (DryingRates.Fit(stretches.Until(now), stretches.Benches.Length) is not { } rates)
        {
            return null;
        }

        DryingScores scores = new(data, power, stretches);
        DryingScore? score = scores.Score();
        double day = power.Expected(now, now + ADay, now).Mean;
        return new(rates.Stretches, rates.Noise, [.. stretches.Benches.Select((_, bench) => Bench(data, stretches.Benches[bench], bench, rates, score?.Skill > 0 ? scores : null, day))], score);
    }

    private static BenchDrying Bench(PotData data, string name, int bench, DryingRates rates, DryingScores? scores, double powerADay)
    {
        PotRules rules = data.House.Input.House.Pots;
        Instant now = data.House.Input.Period.End;
        LevelForecast? morning = rules.Rounds.IsEmpty ? null : At(data, rules.Rounds[0], bench, rates, scores);
        LevelForecast? afternoon = rules.Rounds.IsEmpty ? null : At(data, rules.Rounds[^1], bench, rates, scores);
        BenchVisit last = data.Visits[name].LastOrDefault(v => v.At < now && v.At >= now - ADay);
        (double rate, double variance) = rates.Rates.Groups[bench];
        double reach = Normal.InvCDF(0, 1, 0.95) * Math.Sqrt(variance);
        return new(
            name,
            new(rate, rate - reach, rate + reach),
            double.IsFinite(powerADay) ? rate * powerADay : null,
            last.Checks > 0 ? new(last.At.InZone(data.Zone).ToOffsetDateTime(), last.Level, last.Checks) : null,
            morning,
            afternoon,
            afternoon?.Level.Value < rules.BandLow);
    }

    private static LevelForecast? At(PotData data, PotRound round, int bench, DryingRates rates, DryingScores? scores)
    {
        LocalTime middle = LocalTime.FromTicksSinceMidnight((round.From.TickOfDay + round.To.TickOfDay) / 2);
        Instant now = data.House.Input.Period.End;
        ZonedDateTime at = data.DayOf(now).At(new LocalTime(middle.Hour, middle.Minute)).InZoneLeniently(data.Zone);
        return scores?.Forecast(rates, bench, at.ToInstant(), now) is Interval level ? new(at.ToOffsetDateTime(), new(level.Value, level.Low, level.High)) : null;
    }
}
