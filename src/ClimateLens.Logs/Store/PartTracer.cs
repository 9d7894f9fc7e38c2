using System.Buffers;
using System.Buffers.Binary;
using System.Globalization;
using System.Runtime.InteropServices;
using ClimateLens.Logs.Readings;
using ClimateLens.Logs.Records;
using ClimateLens.Logs.Times;
using ClimateLens.Nursery;

namespace ClimateLens.Logs.Store;

/// <summary>Makes the trace of a part out of its rows, which come in ascending time.</summary>
internal sealed class PartTracer : IDisposable
{
    private const int HashBytes = 8;

    private readonly ArrayBufferWriter<byte> _halves = new();
    private readonly Digest _digest = new();
    private readonly StepVotes _steps = new();
    private readonly string[] _names;
    private readonly double[] _row;
    private int _half;
    private long _end = long.MinValue;
    private int _values;

    private PartTracer(string[] names) => (_names, _row) = (names, new double[names.Length + 1]);

    /// <summary>For readings of these columns.</summary>
    /// <param name="names">Names in ordinal order. They are part of every half week, since a column that is new to a part is new to all its weeks.</param>
    public static PartTracer OfReadings(string[] names) => new(names);

    /// <summary>The trace of readings.</summary>
    public static PartTrace Of(YearRows rows)
    {
        using PartTracer tracer = OfReadings(rows.Names);
        tracer.Add(rows);
        return tracer.Finish();
    }

    /// <summary>The trace of records in ascending time.</summary>
    /// <param name="records">The records.</param>
    /// <param name="files">The files that they point into.</param>
    public static PartTrace Of(IEnumerable<StoredRecord> records, IReadOnlyList<SourceFile> files)
    {
        using PartTracer tracer = new([]);
        foreach (StoredRecord record in records)
        {
            tracer.Reach(record.Utc);
            tracer._digest.Texts(record.House, record.Utc.ToString(CultureInfo.InvariantCulture), files[record.File].File);
            tracer._digest.Numbers(record.Line, record.Fields.Count);
            foreach ((string name, string text) in record.Fields)
            {
                tracer._digest.Texts(name, text);
            }

            tracer._values = Sum(tracer._values, record.Fields.Count);
        }

        return tracer.Finish();
    }

    /// <summary>Takes rows behind those before; how they are cut into blocks does not show.</summary>
    public void Add(YearRows rows)
    {
        for (int i = 0; i < rows.Count; i++)
        {
            Reach(rows.Utc[i]);
            _row[0] = BitConverter.Int64BitsToDouble(rows.Utc[i]);
            for (int c = 0; c < rows.Columns.Length; c++)
            {
                double value = rows.Columns[c][i];
                _row[c + 1] = double.IsNaN(value) ? double.NaN : value; // one missing value for all that mean it, as the part has
            }

            _digest.Add(MemoryMarshal.AsBytes(_row.AsSpan()));
            _values = Sum(_values, rows.Columns.Length);
        }
    }

    /// <summary>The trace of all rows.</summary>
    public PartTrace Finish()
    {
        Close();
        return new PartTrace(_halves.WrittenSpan.ToArray()) { StepMicros = _steps.Clear };
    }

    /// <inheritdoc/>
    public void Dispose() => _digest.Dispose();

    private static int Sum(int values, int more) => (int)Math.Min(int.MaxValue, (long)values + more);

    private void Reach(long utc)
    {
        _steps.Add(utc);
        if (utc < _end)
        {
            return;
        }

        Close();
        _half = PartTrace.HalfOf(utc);
        _end = PartTrace.StartOf(_half + 1);
        _values = 0;
        _digest.Texts(_names);
    }

    private void Close()
    {
        if (_end == long.MinValue)
        {
            return;
        }

        Span<byte> entry = _halves.GetSpan(PartTrace.EntryBytes);
        BinaryPrimitives.WriteInt32LittleEndian(entry, _half);
        BinaryPrimitives.WriteInt32LittleEndian(entry[sizeof(int)..], _values);
        _digest.FinishBytes().AsSpan(0, HashBytes).CopyTo(entry[(2 * sizeof(int))..]);
        _halves.Advance(PartTrace.EntryBytes);
    }
}
