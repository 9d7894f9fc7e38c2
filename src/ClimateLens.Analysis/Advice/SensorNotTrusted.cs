using System.Collections.Immutable;
using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Moisture;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Advice;

/// <summary>
/// A sensor that the risk rests on failed its checks, was doubtful for long, or disagrees with another or with what
/// the computer logged beside it.
/// The shares are a choice of this project, no source.
/// </summary>
internal static class SensorNotTrusted
{
    public const string Id = "sensorNotTrusted";

    /// <summary>Failed share of the values there are from which on a sensor is named. [1]</summary>
    private const double FailedShare = 0.02;

    /// <summary>Doubtful share of the values there are from which on a sensor is named. [1]</summary>
    private const double DoubtfulShare = 0.1;

    public static Candidate? Of(Evidence evidence)
    {
        List<string> facts = [];
        List<string> names = [];
        List<string> kinds = [];
        double hours = 0;
        foreach (Series series in evidence.Main)
        {
            int failed = evidence.Steps(series, QualityFlag.Fail), doubtful = evidence.Steps(series, QualityFlag.Suspect);
            int there = failed + doubtful + evidence.Steps(series, QualityFlag.Pass) + evidence.Steps(series, QualityFlag.NotEvaluated);
            string? hint = UnitHints.Of(evidence.Period, series);
            if (failed > FailedShare * there || doubtful > DoubtfulShare * there || hint is not null)
            {
                Duration step = evidence.Period.Frame.Axis.Step;
                names.Add(Say.InSentence(series.Label));
                kinds.AddRange(hint is null ? FaultKinds.Of(evidence.Period, series) : [Phrase.Of($"it {hint}")]);
                hours = Math.Max(hours, (step * (hint is null ? failed + doubtful : there)).TotalHours);
                facts.Add(Phrase.Of($"{series.Label}: {Say.Hours(step * failed)} failed the checks and were not used, {Say.Hours(step * doubtful)} were doubtful and used."));
                facts.AddRange(evidence.Period.Notes.Of(series.Key).Select(note => $"{series.Label}: {note}"));
            }
        }

        foreach (LoggedComparison comparison in LoggedComparison.All(evidence.Period).Where(c => c.Disagrees))
        {
            names.Add(comparison.Logged.Label);
            kinds.Add(Phrase.Of("values contradict what was logged beside them"));
            hours = Math.Max(hours, (evidence.Period.Frame.Axis.Step * comparison.Steps).TotalHours / 2);
            facts.Add($"{comparison.Logged.Label}: {comparison.Sentence()}");
        }

        foreach (SensorPair pair in SensorPair.All(evidence.Period).Where(p => p.Disagrees || p.Parts))
        {
            names.Add(Say.InSentence(pair.Main.Label));
            kinds.Add(pair.Sentence());
            hours = Math.Max(hours, (evidence.Period.Frame.Axis.Step * pair.Steps).TotalHours / 2);
            facts.Add($"{pair.Main.Channel.Label}: {pair.Note(1, pair.Other)}");
            facts.Add($"{pair.Main.Channel.Label}: {pair.Note(-1, pair.Main)}");
        }

        return names.Count == 0 ? null : Candidate([.. names.Distinct(StringComparer.Ordinal)], [.. kinds.Distinct(StringComparer.Ordinal)], hours, [.. facts.Distinct(StringComparer.Ordinal)]);
    }

    private static Candidate Candidate(IReadOnlyList<string> names, IReadOnlyList<string> kinds, double hours, ImmutableArray<string> facts) => new(
        Id,
        hours,
        Phrase.Of($"Not all readings of {Say.List(names)} can be trusted: {Say.List(kinds)}."),
        Phrase.Of("Check the sensor against a second instrument, clean or replace it, and look at its cable and at the unit given in the nursery file."),
        Phrase.Of("The checks find values that cannot be; a sensor that reads steadily wrong by a few per cent passes them."),
        facts);
}
