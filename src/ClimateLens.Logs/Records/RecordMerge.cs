using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;

namespace ClimateLens.Logs.Records;

/// <summary>
/// Lays the records of a file over those of the store. Like records may stand several times in one file (ten pots
/// of level 3 on one day); a record is a duplicate only as far as the store already holds it as often.
/// </summary>
/// <param name="counts">What became of the file's rows.</param>
/// <param name="aside">Where replaced records go.</param>
internal sealed class RecordMerge(RowCounts counts, SetAsideLog aside)
{
    /// <summary>Indexes of earlier versions of the same file: their records that the newer one no longer holds, within its span of time, are set aside.</summary>
    public HashSet<int> EarlierVersions { get; init; } = [];

    /// <summary>Set after the ledger was lost: the index of the file, whose records in the store are no duplicates.</summary>
    public int? Own { get; init; }

    /// <summary>Merges; returns whether anything changed.</summary>
    /// <param name="held">The store's records; changed in place.</param>
    /// <param name="file">The file's records.</param>
    public bool Merge(List<StoredRecord> held, List<StoredRecord> file)
    {
        Dictionary<string, int> left = Count(held);
        Dictionary<string, int> own = Count(held.Where(r => r.File == Own));
        var news = new List<StoredRecord>();
        foreach (StoredRecord record in file)
        {
            if (!Take(left, record.Key))
            {
                news.Add(record);
                counts.Accept(record.Utc);
            }
            else if (Take(own, record.Key))
            {
                counts.Accept(record.Utc);
            }
            else
            {
                counts.Duplicates++;
            }
        }

        bool replaced = file.Count > 0 && Replace(held, left);
        held.AddRange(news);
        return replaced || news.Count > 0;
    }

    /// <summary>Orders records by house, time and content, so that the store does not depend on the order of files.</summary>
    public static List<StoredRecord> Sorted(IEnumerable<StoredRecord> records)
        => [.. records.OrderBy(r => r.Utc).ThenBy(r => r.Key, StringComparer.Ordinal).ThenBy(r => r.Line)];

    private bool Replace(List<StoredRecord> held, Dictionary<string, int> left)
    {
        int removed = held.RemoveAll(record =>
        {
            if (!EarlierVersions.Contains(record.File) || record.Utc < counts.From || record.Utc > counts.To || !Take(left, record.Key))
            {
                return false;
            }

            counts.Conflicts++;
            aside.Add(ProblemCodes.Replaced, record.Line, null, record.Text(), "the record in the newer version of the file");
            return true;
        });
        return removed > 0;
    }

    private static bool Take(Dictionary<string, int> counted, string key)
    {
        if (counted.GetValueOrDefault(key) == 0)
        {
            return false;
        }

        counted[key]--;
        return true;
    }

    private static Dictionary<string, int> Count(IEnumerable<StoredRecord> records)
        => records.GroupBy(r => r.Key).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
}
