using System.Collections.Immutable;
using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Records;
using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using NodaTime;

namespace ClimateLens.TestKit.Simulated;

/// <summary>Pot checks and waterings by bench of a simulated house, added to the input of a week.</summary>
public static class SimulatedPots
{
    /// <summary>A week of the house with its history and all pot checks since then; waterings name their benches.</summary>
    /// <param name="run">The nursery.</param>
    /// <param name="house">The house.</param>
    /// <param name="isoWeek">The week, 2025-W41 to 2025-W45.</param>
    public static HouseInput Of(NurseryRun run, HouseRun house, string isoWeek)
    {
        HouseInput input = SimulatedWeek.Of(run, house, isoWeek, null, Analysis.Stages.Past.HistoryDays);
        Instant past = input.Period.Start - Duration.FromDays(Analysis.Stages.Past.HistoryDays);
        RecordRow[] waterings = [.. house.Waterings.Select((w, i) => Watering(house, w, i)).Where(r => r.At >= past && r.At < input.Period.End)];
        return WithChecks(
            input with
            {
                EarlierWaterings = [.. waterings.Where(w => w.At < input.RunIn.Start)],
                Records = [.. input.Records.Where(r => r.Kind != RecordKind.Waterings), .. waterings.Where(w => w.At >= input.RunIn.Start)],
            },
            run,
            house);
    }

    /// <summary>The same with the checks that a run's seed draws, in place of those it has.</summary>
    public static HouseInput WithChecks(HouseInput input, NurseryRun run, HouseRun house)
    {
        Instant past = input.Period.Start - Duration.FromDays(Analysis.Stages.Past.HistoryDays);
        return input with
        {
            Records =
            [
                .. input.Records.Where(r => r.Kind != RecordKind.PotChecks),
                .. new PotCheckBook(run).Looks().Where(l => l.House == house.Options.Id).Select(Check).Where(r => r.At >= past && r.At < input.Period.End),
            ],
        };
    }

    private static RecordRow Watering(HouseRun house, HouseSimulator.Watering.WateringEvent watering, int number)
        => Row(RecordKind.Waterings, house.Calendar.At(watering.StartMinute), number, ("method", watering.Method), ("bench", watering.Bench), ("minutes", FormattableString.Invariant($"{watering.EndMinute - watering.StartMinute}")));

    private static RecordRow Check(PotLook look, int number)
    {
        (string, string)[] fields = [("bench", look.Bench), ("pot", FormattableString.Invariant($"{look.Pot}")), ("grader", look.Grader), ("level", FormattableString.Invariant($"{look.Grade}")), ("leafState", look.LeafState)];
        return Row(RecordKind.PotChecks, GannetRow.Zone.AtStrictly(look.Time).ToInstant(), number, fields);
    }

    private static RecordRow Row(RecordKind kind, Instant at, int number, params (string Field, string Text)[] fields)
        => new(kind, "1", "log", at, "exports/log.csv", number + 2, fields.ToImmutableSortedDictionary(f => f.Field, f => f.Text, StringComparer.Ordinal));
}
