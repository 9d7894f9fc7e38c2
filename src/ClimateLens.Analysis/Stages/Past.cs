using ClimateLens.Nursery;
using NodaTime;

namespace ClimateLens.Analysis.Stages;

/// <summary>The weeks before a period as a house period of their own, from which what is fitted or learned of a house comes.</summary>
public static class Past
{
    /// <summary>How far back it reaches; choice of this project. [d]</summary>
    public const int HistoryDays = 28;

    /// <summary>The readings before the period, aligned and checked as the period's are, with air and cover; null where there are none, or none at its step.</summary>
    /// <param name="period">The house period.</param>
    public static HousePeriod? Of(HousePeriod period)
    {
        ArgumentNullException.ThrowIfNull(period);
        HouseInput input = period.Input;
        Duration step = period.Frame.Axis.Step;
        long? first = input.History.Where(b => b.UtcMicros.Length > 0 && b.House == input.House.Id).Min(b => (long?)b.UtcMicros[0]);
        Instant start = input.Period.Start - Duration.FromDays(HistoryDays);
        Instant from = first is long micros ? Instant.Max(start, Instant.FromUnixTimeTicks(micros * 10)) : input.Period.Start;
        if (from >= input.Period.Start)
        {
            return null;
        }

        // Steps and hours of the history fall on those of the period.
        from = input.Period.Start - Duration.FromHours((long)Math.Ceiling((input.Period.Start - from).TotalHours));
        HousePeriod aligned = Alignment.Align(input with
        {
            Batches = input.History,
            History = [],
            Period = new Interval(from, input.Period.Start),
            RunIn = new Interval(from, from),
            Records = [.. input.EarlierWaterings, .. input.Records.Where(r => r.At < input.Period.Start)],
        });
        return aligned.Frame.Axis.Step == step ? CanopyCover.Add(AirStates.Add(Quality.Check(aligned))) : null;
    }
}
