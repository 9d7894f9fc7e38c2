using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;

namespace ClimateLens.Logs.Records;

/// <summary>
/// Lays the records of a file over those of the store. Like records may stand several times in one file (ten pots
/// of level 3 on one day); a record is a duplicate only as far as the store already holds it as often.
/// </summary>
internal static class RecordMerge
{
    /// <summary>Merges; returns whether anything changed.</summary>
    /// <param name="held">The store's records; changed in place.</param>
    /// <param name="file">The file's records.</param>
    /// <param name="earlierVersions">Indexes of earlier versions of the same file: their records that the newer one no longer holds, within its span of time, are set aside.</param>
    /// <param name="counts">What became of the file's rows.</param>
    /// <param name="aside">Where replaced records go.</param>
    public static bool Merge(List<StoredRecord> held, List<StoredRecord> file, IReadOnlySet<int> earlierVersions, RowCounts counts, SetAsideLog aside)
    {
        Dictionary<string, int> left = Count(held);
        var news = new List<StoredRecord>();
        foreach (StoredRecord record in file)
        {
            if (left.TryGetValue(record.Key, out int times) && times > 0)
            {
                left[record.Key] = times - 1;
                counts.Duplicates++;
            }
            else
            {
                news.Add(record);
                counts.Accept(record.Utc);
            }
        }

        bool replaced = file.Count > 0 && Replace(held, file, left, earlierVersions, counts, aside);
        held.AddRange(news);
        return replaced || news.Count > 0;
    }

    /// <summary>Records of files that are gone, kept where what was read again does not speak of them.</summary>
    /// <param name="records">Records that were read again; changed in place.</param>
    /// <param name="old">Records of files that are gone.</param>
    /// <param name="spans">Span of time of each file read again, by name.</param>
    /// <param name="nameOf">Name of an old record's file.</param>
    public static void Fill(List<StoredRecord> records, IEnumerable<StoredRecord> old, IReadOnlyDictionary<string, (long First, long Last)> spans, Func<StoredRecord, string> nameOf)
    {
        Dictionary<string, int> known = Count(records);
        foreach (StoredRecord record in old)
        {
            bool rewritten = spans.TryGetValue(nameOf(record), out (long First, long Last) span) && record.Utc >= span.First && record.Utc <= span.Last;
            if (!rewritten && !known.ContainsKey(record.Key))
            {
                records.Add(record);
            }
        }
    }

    /// <summary>Orders records by house, time and content, so that the store does not depend on the order of files.</summary>
    public static List<StoredRecord> Sorted(IEnumerable<StoredRecord> records)
        => [.. records.OrderBy(r => r.Utc).ThenBy(r => r.Key, StringComparer.Ordinal).ThenBy(r => r.Line)];

    private static bool Replace(List<StoredRecord> held, List<StoredRecord> file, Dictionary<string, int> left, IReadOnlySet<int> earlier, RowCounts counts, SetAsideLog aside)
    {
        long first = file.Min(r => r.Utc);
        long last = file.Max(r => r.Utc);
        int removed = held.RemoveAll(record =>
        {
            if (!earlier.Contains(record.File) || record.Utc < first || record.Utc > last || left[record.Key] == 0)
            {
                return false;
            }

            left[record.Key]--;
            counts.Conflicts++;
            aside.Add(ProblemCodes.Replaced, record.Line, null, record.Text(), "the record in the newer version of the file");
            return true;
        });
        return removed > 0;
    }

    private static Dictionary<string, int> Count(List<StoredRecord> records)
        => records.GroupBy(r => r.Key).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
}
