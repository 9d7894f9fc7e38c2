using System.Collections.Immutable;
using System.Text.Json;
using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Reviews;

/// <summary>The values of a series that a check put in doubt or failed, as stretches: so the flag of each value leaves the review with it.</summary>
internal static class FlaggedStretches
{
    public static ImmutableArray<FlaggedStretch> Of(HousePeriod period, Series series)
    {
        SeriesFlags flags = period.Checks[series.Key];
        TimeAxis axis = period.Frame.Axis;
        ImmutableArray<FlaggedStretch>.Builder stretches = ImmutableArray.CreateBuilder<FlaggedStretch>();
        for (int first = period.FirstStep; first < axis.Count;)
        {
            QualityFlag flag = flags.RolledUp[first];
            QualityCheck[] checks = flag is QualityFlag.Suspect or QualityFlag.Fail ? [.. flags.At(first)] : [];
            int end = first + 1;
            while (checks.Length > 0 && end < axis.Count && flags.RolledUp[end] == flag && flags.At(end).SequenceEqual(checks))
            {
                end++;
            }

            if (checks.Length > 0)
            {
                stretches.Add(new FlaggedStretch(
                    axis.StartOf(first).InZone(axis.Zone).ToOffsetDateTime(),
                    axis.StartOf(end).InZone(axis.Zone).ToOffsetDateTime(),
                    NameOf(flag.ToString()),
                    [.. checks.Select(check => NameOf(check.ToString()))]));
            }

            first = end;
        }

        return stretches.ToImmutable();
    }

    private static string NameOf(string word) => JsonNamingPolicy.CamelCase.ConvertName(word);
}
