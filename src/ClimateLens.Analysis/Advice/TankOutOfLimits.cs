using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Advice;

/// <summary>Waterings that ran while a tank was out of its limits, or had no reading that still stood.</summary>
internal static class TankOutOfLimits
{
    public const string Id = "tankOutOfLimits";

    private const int MostFacts = 5;

    public static Candidate? Of(Evidence evidence)
    {
        TankEntry[] open = [.. (evidence.Care.Records?.Tanks ?? []).Where(t => !t.Waterings.IsEmpty)];
        if (open.Length == 0)
        {
            return null;
        }

        (TankEntry Tank, TankWatering Watering)[] all = [.. open.SelectMany(t => t.Waterings.Select(w => (t, w)))];
        int outside = all.Count(w => w.Watering.Reading is not null);
        string benches = Say.List([.. all.Select(w => w.Watering.Bench).Where(b => b.Length > 0).Distinct().Order(StringComparer.Ordinal)]);
        return new Candidate(
            Id,
            outside > 0 ? Standing.Crop : Standing.Habit,
            Phrase.Of($"{Say.Count(all.Length, "watering")} ran while {Say.List([.. open.Select(t => t.What).Distinct()])} was out of limits ({outside}) or had no reading that still stood ({all.Length - outside}){(benches.Length > 0 ? Phrase.Of($"; benches {benches}") : "")}."),
            Phrase.Of("Read the tank before the first watering of the day; while it is out of limits hold floods back where the crop allows."),
            Phrase.Of("Limits and hours are the nursery file's. What disinfection reaches in a tank says little of what reaches the last emitter."),
            [.. all.Take(MostFacts).Select(w => $"{TimeWords.Moment(w.Watering.Start)}: {w.Tank.What} {(w.Watering.Reading is { } r ? $"{Say.Number(r)} {w.Tank.Unit}".TrimEnd() : Phrase.Of("not known"))}{(w.Watering.Bench.Length > 0 ? Phrase.Of($", bench {w.Watering.Bench}") : "")}.")]);
    }
}
