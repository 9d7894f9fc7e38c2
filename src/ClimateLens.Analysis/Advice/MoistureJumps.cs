using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Pots;

namespace ClimateLens.Analysis.Advice;

/// <summary>Benches that swung by two levels or more from one day to the next.</summary>
internal static class MoistureJumps
{
    public const string Id = "moistureJumps";

    private const int MostFacts = 5;

    public static Candidate? Of(Evidence evidence)
    {
        if (evidence.Pots.Pots is not { Jumps: { IsEmpty: false } jumps })
        {
            return null;
        }

        string benches = Say.List([.. jumps.Select(j => RootSignals.BenchName(j.Bench)).Distinct().Select(Say.InSentence)]);
        return new Candidate(
            Id,
            Standing.Habit + jumps.Length,
            Phrase.Of($"{Say.Count(jumps.Length, "jump")} of {Say.Number(SwingIndex.Jump)} levels or more from one day to the next on {benches}."),
            Phrase.Of("Water these benches more often and less at a time, or by weight, so that they stay within the band."),
            Phrase.Of("Wide swings cost roots (Pacific Northwest handbook); two levels are a choice of this project. Two people who grade unlike can make a jump as well: see how alike they grade."),
            [.. jumps.Take(MostFacts).Select(j => Phrase.Of($"{RootSignals.BenchName(j.Bench)}: {Say.Number(j.FromLevel, 1)} on {TimeWords.Moment(j.From)}, {Say.Number(j.ToLevel, 1)} on {TimeWords.Moment(j.To)}."))]);
    }
}
