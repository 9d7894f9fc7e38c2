using ClimateLens.Analysis.Reviews;
using ClimateLens.Science.Pots;
using ClimateLens.Science.Statistics;
using NodaTime;
using Interval = ClimateLens.Science.Statistics.Interval;

namespace ClimateLens.Analysis.Pots;

/// <summary>Forecasts of past days, each from what was known at its midnight, against "same as yesterday": the level of the visit nearest to a day before.</summary>
/// <param name="data">What was seen.</param>
/// <param name="power">Drying power of the air.</param>
/// <param name="stretches">What rates are learned from.</param>
internal sealed class DryingScores(PotData data, DryingPower power, DryingStretches stretches)
{
    /// <summary>Fewer forecasts show nothing. Choice of this project.</summary>
    public const int FewestForecasts = 10;

    private static readonly Duration Fresh = Duration.FromHours(24);

    /// <summary>The level to come of a bench; null where its last visit is a day old, the air to come is not known, or it was watered since.</summary>
    /// <param name="rates">Rates by bench.</param>
    /// <param name="bench">Number of the bench.</param>
    /// <param name="target">When.</param>
    /// <param name="asOf">What is known ends here.</param>
    public Interval? Forecast(DryingRates rates, int bench, Instant target, Instant asOf)
    {
        string name = stretches.Benches[bench];
        BenchVisit last = data.Visits[name].LastOrDefault(v => v.At < asOf);
        if (last.Checks == 0 || asOf - last.At > Fresh || data.Waterings.Any(name, last.At, asOf))
        {
            return null;
        }

        double past = power.Between(last.At, asOf);
        (double mean, double deviation) = power.Expected(asOf, target, asOf);
        return double.IsFinite(past + mean) ? rates.After(bench, last.Level, past + mean, deviation) : null;
    }

    /// <summary>The score; null below <see cref="FewestForecasts"/>.</summary>
    public DryingScore? Score()
    {
        (double Truth, Interval Forecast, double Yesterday)[] tried = [.. Days().SelectMany(Tried)];
        if (tried.Length < FewestForecasts)
        {
            return null;
        }

        var skill = ForecastSkill.Of([.. tried.Select(t => t.Truth)], [.. tried.Select(t => t.Forecast.Value)], [.. tried.Select(t => t.Yesterday)]);
        double held = tried.Count(t => t.Forecast.Low <= t.Truth && t.Truth <= t.Forecast.High) / (double)tried.Length;
        return new(skill.Count, double.IsFinite(skill.Skill) ? skill.Skill : null, skill.Rmse, Math.Sqrt(skill.ReferenceMeanSquare), held);
    }

    private IEnumerable<LocalDate> Days()
        => data.Visits.Values.SelectMany(v => v).Select(v => data.DayOf(v.At)).Distinct().Order();

    private IEnumerable<(double, Interval, double)> Tried(LocalDate day)
    {
        Instant midnight = day.AtStartOfDayInZone(data.Zone).ToInstant();
        if (DryingRates.Fit(stretches.Until(midnight), stretches.Benches.Length) is not { } rates)
        {
            yield break;
        }

        for (int bench = 0; bench < stretches.Benches.Length; bench++)
        {
            var visits = data.Visits[stretches.Benches[bench]];
            foreach (BenchVisit seen in visits.Where(v => data.DayOf(v.At) == day))
            {
                BenchVisit before = Swings.DayBefore(visits, seen.At);
                if (before.Checks > 0 && !data.Waterings.Any(seen.Bench, midnight, seen.At) && Forecast(rates, bench, seen.At, midnight) is { } forecast)
                {
                    yield return (seen.Level, forecast, before.Level);
                }
            }
        }
    }
}
