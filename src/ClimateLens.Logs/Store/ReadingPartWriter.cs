using System.Buffers;
using ClimateLens.Logs.Readings;
using Parquet;
using Parquet.Schema;

namespace ClimateLens.Logs.Store;

/// <summary>
/// Writes a year of readings as a Parquet file, row group by row group: <c>utc</c>, <c>file</c> and a column of doubles for
/// each series. The same rows make the same bytes, however they are handed over.
/// </summary>
internal sealed class ReadingPartWriter : IDisposable
{
    private readonly Stream _stream;
    private readonly StampFooter _footer;
    private readonly DataField _utc = ParquetColumns.UtcField();
    private readonly DataField _file = new DataField<int>(ParquetColumns.File, false);
    private readonly DataField[] _values;
    private readonly ParquetWriter _writer;
    private readonly PartTracer _tracer;
    private readonly BlockPool _buffers;
    private readonly int _groupRows;
    private readonly int[]? _fileMap;
    private YearRows _group;
    private bool _anyGroup;
    private bool _closed;

    /// <summary>Starts a part.</summary>
    /// <param name="stream">Where to; closed with this.</param>
    /// <param name="names">Column names in ordinal order.</param>
    /// <param name="groupRows">Rows of a row group.</param>
    /// <param name="buffers">Room for row groups.</param>
    /// <param name="fileMap">For each file of the source its place in the part's list; null where all rows are of one file.</param>
    public ReadingPartWriter(Stream stream, string[] names, int groupRows, BlockPool buffers, int[]? fileMap = null)
    {
        _stream = stream;
        _footer = new StampFooter(stream);
        _values = [.. names.Select(name => new DataField<double>(name, true))];
        _writer = ParquetWriter.CreateAsync(new ParquetSchema([_utc, _file, .. _values]), _footer, ParquetColumns.Options()).GetAwaiter().GetResult();
        _tracer = PartTracer.OfReadings(names);
        (_buffers, _groupRows, _fileMap, _group) = (buffers, groupRows, fileMap, buffers.Rent());
    }

    /// <summary>Number of rows.</summary>
    public int Rows { get; private set; }

    /// <summary>Stamp of the first row. [µs since 1970-01-01T00:00Z]</summary>
    public long First { get; private set; }

    /// <summary>Stamp of the last row. [µs since 1970-01-01T00:00Z]</summary>
    public long Last { get; private set; }

    /// <summary>The trace of the rows, once the part is finished.</summary>
    public PartTrace? Trace { get; private set; }

    /// <summary>Whether no more rows may follow.</summary>
    public bool IsComplete { get; private set; }

    /// <summary>Adds rows in ascending time behind the others.</summary>
    public void Add(YearRows block)
    {
        for (int start = 0; start < block.Count;)
        {
            int count = Math.Min(block.Count - start, _groupRows - _group.Count);
            _group.Append(block, start, count, _groupRows);
            start += count;
            if (_group.Count == _groupRows)
            {
                WriteGroup().GetAwaiter().GetResult();
            }
        }

        _tracer.Add(block);
        First = Rows == 0 ? block.Utc[0] : First;
        Last = block.Utc[block.Count - 1];
        Rows += block.Count;
    }

    /// <summary>Writes the last row group.</summary>
    public void Complete()
    {
        if (IsComplete)
        {
            return;
        }

        if (_group.Count > 0 || !_anyGroup)
        {
            WriteGroup().GetAwaiter().GetResult();
        }

        _buffers.Return(_group);
        IsComplete = true;
    }

    /// <summary>Writes what the part says about itself and closes it.</summary>
    public void Finish(PartInfo info, List<SourceFile> files)
    {
        Complete();
        _writer.CustomMetadata = ParquetColumns.Metadata(info, files);
        Trace = _tracer.Finish();
        Dispose();
    }

    private async Task WriteGroup()
    {
        int count = _group.Count;
        using ParquetRowGroupWriter group = _writer.CreateRowGroup();
        await ParquetColumns.WriteStamps(group, _utc, _group.Utc.AsSpan(0, count)).ConfigureAwait(false);
        if (count > 0)
        {
            _footer.Note(_group.Utc[0], _group.Utc[count - 1]);
        }

        int[] index = ArrayPool<int>.Shared.Rent(count);
        for (int i = 0; i < count; i++)
        {
            index[i] = _fileMap is null ? 0 : _fileMap[_group.File[i]];
        }

        await group.WriteAsync<int>(_file, index.AsMemory(0, count), null, null, CancellationToken.None).ConfigureAwait(false);
        ArrayPool<int>.Shared.Return(index);
        for (int c = 0; c < _values.Length; c++)
        {
            await ParquetColumns.WriteNumbers(group, _values[c], _group.Columns[c].AsMemory(0, count)).ConfigureAwait(false);
        }

        _group.Count = 0;
        _anyGroup = true;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_closed)
        {
            return; // a second time would write a second footer
        }

        _closed = true;
        try
        {
            _footer.HoldBack();
            _writer.DisposeAsync().AsTask().GetAwaiter().GetResult();
            _footer.Release();
        }
        finally
        {
            _tracer.Dispose();
            _stream.Dispose();
        }
    }
}
