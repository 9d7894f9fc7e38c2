using ClimateLens.Logs.Text;
using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Readings;

/// <summary>A row that was read and waits until the rows behind it are seen.</summary>
/// <param name="columns">Number of columns of readings.</param>
internal sealed class HeldRow(int columns)
{
    private byte[] _raw = new byte[256];
    private int _length;

    /// <summary>Its instant; of a row that the clock showed twice, a provisional one. [µs since 1970-01-01T00:00Z]</summary>
    public long Utc { get; private set; }

    /// <summary>What its local time means.</summary>
    public LocalMeaning Meaning { get; private set; }

    /// <summary>1-based line.</summary>
    public int Line { get; private set; }

    /// <summary>Its values, NaN for missing.</summary>
    public double[] Values { get; } = new double[columns];

    /// <summary>0-based field whose cell has not the form that all others of its column have; -1 for none.</summary>
    public int OddField { get; set; }

    /// <summary>Length of the last cell that the header names. [bytes]</summary>
    public int EndLength { get; private set; }

    /// <summary>Whether its last cell cannot have lost its end.</summary>
    public bool EndIsWhole { get; set; }

    /// <summary>The row as it stands in the file.</summary>
    public ReadOnlySpan<byte> Raw => _raw.AsSpan(0, _length);

    /// <summary>Takes the current row of a table, but for its values.</summary>
    public void Take(ExportTable table, long utc, LocalMeaning meaning)
    {
        (Utc, Meaning, Line, EndLength) = (utc, meaning, table.Line, table.Field(table.FieldCount - 1).Length);
        ReadOnlySpan<byte> raw = table.Raw;
        if (raw.Length > _raw.Length)
        {
            _raw = new byte[Math.Max(raw.Length, 2 * _raw.Length)];
        }

        raw.CopyTo(_raw);
        _length = raw.Length;
    }
}
