using ClimateLens.Logs.Readings;
using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Import;

/// <summary>Writes the parts of a source of readings.</summary>
/// <param name="export">Its settings.</param>
/// <param name="workshop">Where they are made.</param>
internal sealed class ReadingParts(ExportSettings export, Workshop workshop)
{
    private readonly Dictionary<int, ReadingPartWriter> _open = [];
    private readonly Dictionary<int, PartTrace?> _traces = [];
    private readonly BlockPool _buffers = new(ReadingColumns.NamesOf(export), most: 2);

    private StoreTransaction Transaction => workshop.Transaction!;

    /// <summary>Opens a part for the rows of one file, before it is known whether they may stay there.</summary>
    public ReadingPartWriter Open(int year, string[] names)
    {
        var writer = new ReadingPartWriter(Transaction.Create(PathOf(year)), names, workshop.Limits.GroupRows, _buffers);
        _open.Add(year, writer);
        return writer;
    }

    /// <summary>Ends such a part; its rows are the year's.</summary>
    public PartRows Close(int year, ReadingPartWriter writer, SourceFile file, int index)
    {
        string[] names = ReadingColumns.NamesOf(export);
        writer.Finish(PartInfo.OfReadings(export, workshop.Settings, names), [file]);
        _open.Remove(year);
        _traces[year] = writer.Trace;
        return new PartRows(Transaction.StagedOf(PathOf(year)), names, writer.Rows, writer.First, writer.Last, [index]);
    }

    /// <summary>Drops the parts that are open.</summary>
    public void Abandon()
    {
        foreach ((int year, ReadingPartWriter writer) in _open)
        {
            writer.Dispose();
            Transaction.Discard(PathOf(year));
        }

        _open.Clear();
    }

    /// <summary>Writes a year, unless it is written, and makes it durable.</summary>
    public LedgerPart Save(int year, YearContent content, List<SourceFile> files)
    {
        SortedRows rows = content.Rows;
        if (!content.IsWritten)
        {
            Write(year, rows, files);
        }

        return new LedgerPart(Transaction.SealPart(PathOf(year), rows.Count), export.House, year, rows.Count, rows.First, rows.Last) { Trace = _traces[year] };
    }

    private void Write(int year, SortedRows rows, List<SourceFile> files)
    {
        (List<SourceFile> named, int[] map) = FileIndex.MapOf(rows, files);
        BlockPool buffers = rows.Names.AsSpan().SequenceEqual(ReadingColumns.NamesOf(export)) ? _buffers : new BlockPool(rows.Names, most: 1);
        using var writer = new ReadingPartWriter(Transaction.Create(PathOf(year)), rows.Names, workshop.Limits.GroupRows, buffers, map);
        foreach (YearRows block in rows.Blocks())
        {
            writer.Add(block);
        }

        writer.Finish(PartInfo.OfReadings(export, workshop.Settings, rows.Names), named);
        _traces[year] = writer.Trace;
    }

    private string PathOf(int year) => StorePaths.Readings(export.House, export.Name, year);
}
