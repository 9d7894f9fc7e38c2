using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Advice;

/// <summary>A crop stands on a floor or bench that a growth regulator fell on before it came.</summary>
internal static class FloorRemembers
{
    public const string Id = "floorRemembers";

    public static Candidate? Of(Evidence evidence)
    {
        FloorEntry[] under = [.. (evidence.Care.Records?.Floors ?? []).Where(f => f.NextCrop is not null)];
        if (under.Length == 0)
        {
            return null;
        }

        bool sensitive = under.Any(f => f.Sensitive);
        string crops = Say.List([.. under.Select(f => f.NextCrop!).Distinct()]);
        return new Candidate(
            Id,
            sensitive ? Standing.Stop : Standing.Habit,
            sensitive ? Phrase.Of($"Stop and look: {crops} stands where a growth regulator was used before it came, and is named as sensitive to one.") : Phrase.Of($"{char.ToUpperInvariant(crops[0])}{crops[1..]} stands where a growth regulator was used before it came."),
            sensitive ? Phrase.Of("Stop flooding there until it is clear what is on the floor; look for plants that stay short; ask a licensed person.") : Phrase.Of("Look for plants that stay short, above all after floods."),
            Phrase.Of("A growth regulator can stay on a floor or bench and be taken up with flood water: common practice, no source. For how long is not known; the days are the nursery file's."),
            [.. under.Select(f => Phrase.Of($"{RootSignals.BenchName(f.Bench)}: {f.What}, {TimeWords.Moment(f.At)}, {Say.Count(f.DaysAgo, "day")} before the end of the period; {Say.Count(f.Floods, "flood")} over it in the period."))]);
    }
}
