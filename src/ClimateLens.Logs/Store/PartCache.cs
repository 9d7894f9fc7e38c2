using ClimateLens.Logs.Readings;

namespace ClimateLens.Logs.Store;

/// <summary>Keeps the years of readings that were read last: the weeks of a house come from the same ones.</summary>
/// <param name="reader">Reads parts.</param>
internal sealed class PartCache(PartReader reader)
{
    private const long MostBytes = 96L << 20;

    private readonly Dictionary<string, YearRows> _parts = [];
    private long _bytes;

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

    /// <summary>The records of a part.</summary>
    /// <exception cref="DamagedPartException">It is not what the ledger says.</exception>
    public (List<Records.StoredRecord> Records, List<SourceFile> Files) Records(LedgerPart part, Nursery.Records.RecordKind kind)
        => reader.Records(part, kind);

    /// <summary>Forgets all.</summary>
    public void Clear()
    {
        _parts.Clear();
        _bytes = 0;
    }
}
