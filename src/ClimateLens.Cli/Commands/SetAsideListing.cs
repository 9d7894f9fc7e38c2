using System.Collections.Immutable;
using ClimateLens.Logs.SetAside;

namespace ClimateLens.Cli.Commands;

/// <summary>What was set aside: counts by file and reason, and the rows that were asked for.</summary>
/// <param name="Files">Files that had anything set aside.</param>
/// <param name="Rows">Rows, up to the limit.</param>
/// <param name="LeftOff">Rows beyond the limit.</param>
/// <param name="OlderFiles">Older versions of files that were passed over.</param>
internal sealed record SetAsideListing(ImmutableArray<SetAsideCounts> Files, ImmutableArray<(SetAsideFile File, SetAsideRow Row)> Rows, int LeftOff, int OlderFiles)
{
    /// <summary>Reads the rows of the store, one file after the other.</summary>
    public static SetAsideListing Of(ImmutableArray<SetAsideFile> files, SetAsideQuery query)
    {
        var counts = ImmutableArray.CreateBuilder<SetAsideCounts>();
        var rows = ImmutableArray.CreateBuilder<(SetAsideFile, SetAsideRow)>();
        int left = 0, older = 0;
        foreach (SetAsideFile file in files.Where(f => query.File is null || SetAsideQuery.Names(query.File, f.File)))
        {
            if (file.IsOlder && !query.All)
            {
                older++;
                continue;
            }

            SortedDictionary<string, int> reasons = new(StringComparer.Ordinal);
            foreach (SetAsideRow row in file.Rows().Where(r => query.Code is null || r.Code == query.Code))
            {
                reasons[row.Code] = reasons.GetValueOrDefault(row.Code) + 1;
                if (query.Limit == 0 || rows.Count < query.Limit)
                {
                    rows.Add((file, row));
                }
                else
                {
                    left++;
                }
            }

            if (reasons.Count > 0 || file.IsLost)
            {
                counts.Add(new SetAsideCounts(file, [.. reasons.Select(r => (r.Key, r.Value))]));
            }
        }

        return new SetAsideListing(counts.ToImmutable(), rows.ToImmutable(), left, older);
    }
}

/// <summary>What was set aside of one file.</summary>
/// <param name="File">The file.</param>
/// <param name="Reasons">Rows by reason, in the order of their codes.</param>
internal sealed record SetAsideCounts(SetAsideFile File, ImmutableArray<(string Code, int Count)> Reasons)
{
    /// <summary>What a reason means and what to do, or null for a code of another version.</summary>
    public static ProblemCode? Explained(string code) => ProblemCodes.All.FirstOrDefault(c => c.Code == code);
}
