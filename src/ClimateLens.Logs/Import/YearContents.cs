using ClimateLens.Logs.Readings;
using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Import;

/// <summary>The years of a source that an import looked at, as many of them in memory as fit.</summary>
/// <param name="limits">How much fits.</param>
/// <param name="spill">Where the others go.</param>
internal sealed class YearContents(MemoryLimits limits, SpillFolder spill)
{
    private readonly SortedDictionary<int, YearContent> _years = [];
    private int _uses;

    /// <summary>Years that changed, in their order.</summary>
    public IEnumerable<(int Year, YearContent Content)> Changed => _years.Where(y => y.Value.IsChanged).Select(y => (y.Key, y.Value));

    /// <summary>A year; null when it was not looked at yet.</summary>
    public YearContent? Find(int year)
    {
        if (_years.TryGetValue(year, out YearContent? content))
        {
            content.LastUse = ++_uses;
        }

        return content;
    }

    /// <summary>Puts a year's rows in, or in place of those it had.</summary>
    public YearContent Put(int year, SortedRows rows, bool isChanged, bool isWritten = false)
    {
        if (Find(year) is not YearContent content)
        {
            _years.Add(year, content = new YearContent(rows) { LastUse = ++_uses });
        }

        content.Rows = rows;
        content.IsChanged |= isChanged;
        content.IsWritten = isWritten;
        return content;
    }

    /// <summary>All that changed is saved.</summary>
    public void Clear() => _years.Clear();

    /// <summary>Makes room: years not looked at for long are forgotten where they did not change, and put on disk where they did.</summary>
    public void Trim()
    {
        while (_years.Values.Sum(content => content.Rows.Bytes) > limits.SourceBytes)
        {
            (int year, YearContent oldest) = _years.Where(y => y.Value.Rows.Bytes > 0).MinBy(y => y.Value.LastUse);
            if (oldest.IsChanged)
            {
                oldest.Rows = OnDisk(oldest.Rows);
            }
            else
            {
                _years.Remove(year);
            }
        }
    }

    private SpilledRows OnDisk(SortedRows rows)
    {
        SpilledRows spilled = spill.Create(rows.Names);
        foreach (YearRows block in rows.Blocks())
        {
            spilled.Write(block);
        }

        spilled.Complete();
        return spilled;
    }
}
