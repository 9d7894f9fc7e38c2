using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery;
using ClimateLens.Science.Treatments;
using NodaTime;

namespace ClimateLens.Analysis.Care;

/// <summary>Counts of resistance groups over the season. It counts codes and recommends nothing.</summary>
/// <remarks>
/// <b>Rules:</b> rows of one day with the same codes and purpose are one treatment, whatever benches they name. Runs are counted among treatments of one purpose, since what is sprayed
/// between against something else rests nobody. <b>Source:</b> [PNW] for alternating groups and limiting each; the counting is this project's.
/// </remarks>
internal static class Rotation
{
    /// <summary>A treatment against the same purpose within this time, with a group of the one before. Choice of this project. [d]</summary>
    public const int SoonDays = 28;

    /// <summary>The groups used in the season, most uses first.</summary>
    public static ImmutableArray<GroupUse> Groups(HouseInput input, ImmutableArray<Treatment> treatments)
    {
        Treatment[] season = [.. Season(input, treatments)];
        return
        [
            .. season.SelectMany(t => t.Codes).Distinct()
                .Select(code => Use(input, season, code))
                .OrderByDescending(g => g.Uses).ThenBy(g => g.Group, StringComparer.Ordinal),
        ];
    }

    /// <summary>Treatments of the period that shared a group with the one before them for the same purpose, with that one.</summary>
    public static IEnumerable<(Treatment Before, Treatment Again)> InARow(HouseInput input, ImmutableArray<Treatment> treatments)
    {
        foreach (var purpose in Season(input, treatments).GroupBy(t => t.Purpose))
        {
            Treatment[] row = [.. purpose];
            for (int i = 1; i < row.Length; i++)
            {
                if (row[i].At >= input.Period.Start && !row[i].Codes.Intersect(row[i - 1].Codes).IsEmpty)
                {
                    yield return (row[i - 1], row[i]);
                }
            }
        }
    }

    /// <summary>Treatments of the season, each once.</summary>
    private static IEnumerable<Treatment> Season(HouseInput input, ImmutableArray<Treatment> treatments)
    {
        LocalDate start = Treatments.SeasonStart(input);
        DateTimeZone zone = input.Nursery.Zone;
        return treatments
            .Where(t => !t.Codes.IsEmpty && t.At.InZone(zone).Date >= start)
            .DistinctBy(t => (t.At.InZone(zone).Date, t.Purpose, string.Join('+', t.Codes)));
    }

    private static GroupUse Use(HouseInput input, Treatment[] season, string code)
    {
        Treatment[] own = [.. season.Where(t => t.Codes.Contains(code))];
        int run = season.GroupBy(t => t.Purpose).Max(p => GroupRuns.Longest([.. p.Select(t => t.Codes.Contains(code) ? t.Codes.Intersect([code]) : [])]));
        ResistanceGroup? known = ResistanceGroups.Of(code);
        return new(
            code,
            known?.Name ?? "",
            own.Length,
            run,
            own[^1].At.InZone(input.Nursery.Zone).ToOffsetDateTime(),
            known?.Risk ?? ResistanceRisk.NotKnown,
            known?.Seen ?? false);
    }
}
