using ClimateLens.Logs.Readings;
using ClimateLens.Logs.Records;
using ClimateLens.Logs.Sheets;
using ClimateLens.Logs.Times;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Logs.Store;

/// <summary>Keeps the years of readings and the records that were read last: the weeks of a house come from the same ones.</summary>
/// <param name="reader">Reads parts.</param>
internal sealed class PartCache(PartReader reader)
{
    private const long MostBytes = 96L << 20;
    private const int MostRecords = 50_000; // of some 600 bytes each

    private readonly Dictionary<string, YearRows> _parts = [];
    private readonly Dictionary<(YearRows First, YearRows Last), int> _steps = [];
    private readonly Dictionary<string, RecordRow[]> _records = [];
    private readonly Dictionary<string, ImportDetails?> _sheets = [];
    private long _bytes;
    private int _recordCount;

    /// <summary>The rows of a part; not to be changed.</summary>
    /// <exception cref="DamagedPartException">It is not what the ledger says.</exception>
    public YearRows Readings(LedgerPart part)
    {
        if (_parts.TryGetValue(part.Stored.Path, out YearRows? rows))
        {
            return rows;
        }

        rows = reader.Readings(part).Rows;
        long bytes = (rows.Columns.Length + 2L) * sizeof(double) * rows.Count;
        if (_bytes + bytes > MostBytes)
        {
            Clear();
        }

        _bytes += bytes;
        _parts.Add(part.Stored.Path, rows);
        return rows;
    }

    /// <summary>The step of the years that a period touches. All of them count, since the last interval of a year may be the only row of the next. [s]</summary>
    /// <param name="years">One year, or more that follow one another, as <see cref="Readings"/> gave them.</param>
    public int StepOf(IReadOnlyList<YearRows> years)
    {
        if (!_steps.TryGetValue((years[0], years[^1]), out int seconds))
        {
            var finder = new StepFinder();
            foreach (YearRows rows in years)
            {
                finder.Add(rows.Utc.AsMemory(0, rows.Count));
            }

            _steps[(years[0], years[^1])] = seconds = finder.Find()?.Seconds ?? 0;
        }

        return seconds;
    }

    /// <summary>The records of a part in ascending time, each time as the same objects: what is worked out of them is then worked out once; not to be changed.</summary>
    /// <exception cref="DamagedPartException">It is not what the ledger says.</exception>
    public RecordRow[] Records(LedgerPart part, RecordKind kind, string source)
    {
        if (_records.TryGetValue(part.Stored.Path, out RecordRow[]? known))
        {
            return known;
        }

        (List<StoredRecord> records, List<SourceFile> files) = reader.Records(part, kind);
        known = [.. records.Select(r => new RecordRow(kind, r.House, source, Micros.ToInstant(r.Utc), files[r.File].File, r.Line, r.Fields))];
        if (_recordCount + known.Length > MostRecords)
        {
            ClearRecords();
        }

        _recordCount += known.Length;
        _records.Add(part.Stored.Path, known);
        return known;
    }

    /// <summary>What the sheet of a file tells; null where there is none, or it is damaged.</summary>
    public ImportDetails? Sheet(StoredFile? sheet)
    {
        if (sheet is null)
        {
            return null;
        }

        if (!_sheets.TryGetValue(sheet.Path, out ImportDetails? details))
        {
            details = reader.Whole(sheet) is byte[] bytes ? SheetJson.Read(bytes) : null;
            _sheets.Add(sheet.Path, details);
        }

        return details;
    }

    /// <summary>Forgets all.</summary>
    public void Clear()
    {
        _sheets.Clear();
        _parts.Clear();
        _steps.Clear();
        _bytes = 0;
        ClearRecords();
    }

    private void ClearRecords()
    {
        _records.Clear();
        _recordCount = 0;
    }
}
