using ClimateLens.Logs.Readings;
using ClimateLens.Logs.Records;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Import;

/// <summary>A source of records: a part for each house that its rows speak of.</summary>
/// <param name="export">Its settings.</param>
/// <param name="kind">What it records.</param>
/// <param name="houses">Ids of the nursery's houses.</param>
/// <param name="parts">What the store holds.</param>
/// <param name="reader">Reads it.</param>
internal sealed class RecordSource(ExportSettings export, RecordKind kind, IReadOnlyCollection<string> houses, IReadOnlyList<LedgerPart> parts, PartReader? reader) : SourceContent
{
    private readonly Dictionary<string, (long First, long Last)> _spans = [];
    private List<StoredRecord>? _records;
    private bool _changed;

    /// <inheritdoc/>
    public override bool IsChanged => _changed;

    /// <inheritdoc/>
    public override bool Take(OpenedExport opened, SourceFile file, SetAsideLog aside, RowCounts counts)
    {
        int index = IndexOf(file);
        List<StoredRecord>? read = new RecordFile(export, kind, houses, index, aside, counts).Read(opened, linesInQuotes: !HasOpenQuote(opened));
        if (read is null)
        {
            return false;
        }

        _records ??= Held();
        HashSet<int> earlier = [.. Enumerable.Range(0, Files.Count).Where(i => i != index && Files[i].File == file.File)];
        _changed |= RecordMerge.Merge(_records, read, earlier, counts, aside);
        if (read.Count > 0)
        {
            _spans[file.File] = (read.Min(r => r.Utc), read.Max(r => r.Utc));
        }

        return true;
    }

    /// <inheritdoc/>
    public override int KeepOld(IReadOnlyList<LedgerPart> oldParts, IReadOnlySet<string> goneHashes, PartReader reader, ICollection<string> damaged)
    {
        _records ??= [];
        int before = _records.Count;
        foreach (LedgerPart part in oldParts)
        {
            try
            {
                List<StoredRecord> gone = [.. Load(part, reader).Where(r => goneHashes.Contains(Files[r.File].Sha256))];
                RecordMerge.Fill(_records, gone, _spans, r => Files[r.File].File);
            }
            catch (DamagedPartException e)
            {
                damaged.Add(e.Path);
            }
        }

        _changed |= _records.Count > before;
        return _records.Count - before;
    }

    /// <inheritdoc/>
    public override List<LedgerPart> Save(StoreTransaction transaction)
    {
        if (!_changed)
        {
            return [.. parts];
        }

        var saved = new List<LedgerPart>();
        foreach (IGrouping<string, StoredRecord> house in _records!.GroupBy(r => r.House).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            List<StoredRecord> rows = RecordMerge.Sorted(house);
            var info = new PartInfo(export.House, export.Name, export.Time.Zone.Id, export.StampSide, Units());
            StoredFile stored = PartWriter.Write(transaction, StorePaths.Records(house.Key, kind, export.Name), rows.Count, stream => RecordPart.Write(stream, rows, kind, info, Files));
            saved.Add(new LedgerPart(stored, house.Key, 0, rows.Count, rows[0].Utc, rows[^1].Utc));
        }

        _changed = false;
        return saved;
    }

    /// <summary>
    /// Notes may run over several lines. Where a quote is never closed, that would swallow the rest of the file: then
    /// each line is a row, and the one with the open quote is set aside alone.
    /// </summary>
    private bool HasOpenQuote(OpenedExport opened)
    {
        bool open = false;
        using (var rows = new RowReader(opened.Stream, export.Dialect, opened.Encoding, linesInQuotes: true))
        {
            while (rows.Next())
            {
                open |= rows.RunsToTheEnd;
            }
        }

        opened.Stream.Position = 0;
        return open;
    }

    private List<StoredRecord> Held() => reader is null ? [] : [.. parts.SelectMany(part => Load(part, reader))];

    private IEnumerable<StoredRecord> Load(LedgerPart part, PartReader from)
    {
        (List<StoredRecord> records, List<SourceFile> files) = from.Records(part, kind);
        int[] place = [.. Enumerable.Range(0, files.Count)];
        FileIndex.Expand(place, files, Files);
        return records.Select(r => r with { File = place[r.File] });
    }

    private SortedDictionary<string, string> Units()
    {
        var units = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (RecordField field in RecordFields.Of(kind))
        {
            if (field.Quantity is Quantity quantity)
            {
                units[field.Name] = UnitCatalogue.SiOf(quantity).Code;
            }
        }

        return units;
    }
}
