namespace ClimateLens.Logs.Readings;

/// <summary>Rows at least half an hour apart, out of rows in ascending time: enough to see how a unit or a sensor changes, and small for any file.</summary>
/// <param name="names">Column names in ordinal order.</param>
internal sealed class ThinRows(string[] names)
{
    private const long BinMicros = 1_800_000_000;
    private const int Most = 200_000;

    private readonly List<double>[] _columns = [.. names.Select(_ => new List<double>())];
    private long _bin = long.MinValue;

    /// <summary>Place of a column; -1 for none.</summary>
    public int IndexOf(string name) => Array.IndexOf(names, name);

    /// <summary>Stamps in ascending order within each year. [µs since 1970-01-01T00:00Z]</summary>
    public List<long> Utc { get; } = [];

    /// <summary>Values of a column; NaN for missing.</summary>
    public List<double> Column(int index) => _columns[index];

    /// <summary>Takes the first row of each half hour of a block that lies within a span, both ends included. [µs]</summary>
    public void Add(YearRows block, long from, long to)
    {
        int[]? places = null;
        for (int row = 0; row < block.Count && Utc.Count < Most; row++)
        {
            long utc = block.Utc[row];
            if (utc < from || utc > to || utc / BinMicros == _bin)
            {
                continue;
            }

            _bin = utc / BinMicros;
            places ??= [.. names.Select(name => Array.IndexOf(block.Names, name))];
            Utc.Add(utc);
            for (int c = 0; c < _columns.Length; c++)
            {
                _columns[c].Add(places[c] < 0 ? double.NaN : block.Columns[places[c]][row]);
            }
        }
    }

    /// <summary>The rows within a span, both ends included. [µs]</summary>
    public ThinRows Within(long from, long to)
    {
        var within = new ThinRows(names);
        for (int i = 0; i < Utc.Count; i++)
        {
            if (Utc[i] >= from && Utc[i] <= to)
            {
                within.Utc.Add(Utc[i]);
                for (int c = 0; c < _columns.Length; c++)
                {
                    within._columns[c].Add(_columns[c][i]);
                }
            }
        }

        return within;
    }
}
