using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Advice;

/// <summary>Benches that would be below their band tomorrow afternoon: water them in the morning.</summary>
internal static class WaterInTheMorning
{
    public const string Id = "waterInTheMorning";

    public static Candidate? Of(Evidence evidence)
    {
        BenchDrying[] due = [.. (evidence.Pots.Pots?.Drying?.Benches ?? []).Where(b => b.WaterInTheMorning)];
        if (due.Length == 0 || evidence.Pots.Pots!.Drying!.Score is not { } score)
        {
            return null;
        }

        return new Candidate(
            Id,
            Standing.Tomorrow,
            Phrase.Of($"Water {Say.List([.. due.Select(b => Say.InSentence(RootSignals.BenchName(b.Bench)))])} on the morning after the period, or you will be tempted to water late in the afternoon."),
            Phrase.Of("Look at these benches first; water them before noon if their pots are as dry as foretold."),
            Phrase.Of($"Foretold from each bench's drying in the air of the last days; over {score.Forecasts} past forecasts the miss was {Say.Number(score.Rmse, 1)} levels, \"same as yesterday\" {Say.Number(score.RmseYesterday, 1)}. A day much brighter or duller than the last ones dries otherwise."),
            [.. due.Select(b => Phrase.Of($"{RootSignals.BenchName(b.Bench)}: level {Level(b.Afternoon!)} by {TimeWords.Moment(b.Afternoon!.At)} if it is not watered before."))]);
    }

    private static string Level(LevelForecast f) => Phrase.Of($"{Say.Number(f.Level.Value, 1)} ({Say.Number(f.Level.Low, 1)} to {Say.Number(f.Level.High, 1)})");
}
