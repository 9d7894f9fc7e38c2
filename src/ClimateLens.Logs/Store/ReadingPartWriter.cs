using System.Buffers;
using ClimateLens.Logs.Readings;
using ClimateLens.Logs.Store.PartFile;

namespace ClimateLens.Logs.Store;

/// <summary>
/// Writes a year of readings as a Parquet file, row group by row group: <c>utc</c>, <c>file</c> and a column of doubles for
/// each series. The same rows make the same bytes, however they are handed over.
/// </summary>
internal sealed class ReadingPartWriter : IDisposable
{
    private readonly Stream _stream;
    private readonly PartColumn[] _columns;
    private readonly PageWriter _pages;
    private readonly ColumnWriter _writer;
    private readonly List<ColumnChunk[]> _groups = [];
    private readonly BlockPool _buffers;
    private readonly int _groupRows;
    private readonly int[]? _fileMap;
    private readonly YearRows _group;

    /// <summary>Starts a part.</summary>
    /// <param name="stream">Where to; closed with this.</param>
    /// <param name="names">Column names in ordinal order.</param>
    /// <param name="groupRows">Rows of a row group.</param>
    /// <param name="writer">Writes columns.</param>
    /// <param name="buffers">Room for row groups.</param>
    /// <param name="fileMap">For each file of the source its place in the part's list; null where all rows are of one file.</param>
    public ReadingPartWriter(Stream stream, string[] names, int groupRows, ColumnWriter writer, BlockPool buffers, int[]? fileMap = null)
    {
        _stream = stream;
        _columns = [new(ParquetColumns.Utc, PartColumnType.Stamp), new(ParquetColumns.File, PartColumnType.Index), .. names.Select(name => new PartColumn(name, PartColumnType.Number))];
        _pages = new PageWriter(stream);
        (_writer, _buffers, _groupRows, _fileMap, _group) = (writer, buffers, groupRows, fileMap, buffers.Rent());
        _pages.Raw(PartEnd.Mark);
    }

    /// <summary>Number of rows.</summary>
    public int Rows { get; private set; }

    /// <summary>Stamp of the first row. [µs since 1970-01-01T00:00Z]</summary>
    public long First { get; private set; }

    /// <summary>Stamp of the last row. [µs since 1970-01-01T00:00Z]</summary>
    public long Last { get; private set; }

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
                WriteGroup();
            }
        }

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

        if (_group.Count > 0)
        {
            WriteGroup();
        }

        _buffers.Return(_group);
        _pages.Dispose();
        IsComplete = true;
    }

    /// <summary>Writes what the part says about itself and closes it.</summary>
    public void Finish(PartInfo info, List<SourceFile> files)
    {
        Complete();
        PartEnd.Write(_pages, _columns, _groups, ParquetColumns.Metadata(info, files));
        Dispose();
    }

    private void WriteGroup()
    {
        int count = _group.Count;
        var chunks = new ColumnChunk[_columns.Length];
        chunks[0] = ColumnWriter.Stamps(_pages, _columns[0], _group.Utc.AsSpan(0, count));
        int[] index = ArrayPool<int>.Shared.Rent(count);
        for (int i = 0; i < count; i++)
        {
            index[i] = _fileMap is null ? 0 : _fileMap[_group.File[i]];
        }

        chunks[1] = ColumnWriter.Indexes(_pages, _columns[1], index.AsSpan(0, count));
        ArrayPool<int>.Shared.Return(index);
        for (int c = 2; c < _columns.Length; c++)
        {
            chunks[c] = _writer.Numbers(_pages, _columns[c], _group.Columns[c - 2].AsSpan(0, count));
        }

        _groups.Add(chunks);
        _group.Count = 0;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _pages.Dispose();
        _stream.Dispose();
    }
}
