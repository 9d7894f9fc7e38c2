using ClimateLens.Logs.Records;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Import;

/// <summary>A source of records: a part for each house that its rows speak of.</summary>
/// <param name="export">Its settings.</param>
/// <param name="kind">What it records.</param>
/// <param name="nursery">The nursery.</param>
/// <param name="parts">What the store holds.</param>
/// <param name="reader">Reads it; null where nothing is held.</param>
/// <param name="workshop">Where it is made.</param>
internal sealed class RecordSource(ExportSettings export, RecordKind kind, NurserySettings nursery, IReadOnlyList<LedgerPart> parts, PartReader? reader, Workshop workshop) : SourceContent
{
    private List<StoredRecord>? _records;
    private bool _changed;

    /// <inheritdoc/>
    public override List<string> StartFrom(IReadOnlyList<LedgerPart> old, Func<SourceFile, bool> from)
    {
        var damaged = new List<string>();
        _records ??= [];
        foreach (LedgerPart part in old)
        {
            try
            {
                _records.AddRange(Load(part, reader!).Where(r => from(Files[r.File])));
            }
            catch (DamagedPartException e)
            {
                damaged.Add(e.Path);
            }
        }

        _changed = _records.Count > 0;
        return damaged;
    }

    /// <inheritdoc/>
    public override Taken Take(FileBeingRead file)
    {
        _records ??= Held();
        int index = PlaceOf(file);
        List<StoredRecord>? read = new RecordFile(export, kind, nursery, index, file.Aside, file.Counts).Read(file.Opened, linesInQuotes: !HasOpenQuote(file.Opened));
        if (read is null)
        {
            return Taken.Nothing;
        }

        Files[index] = file.Source;
        if (read.Count > 0)
        {
            file.Counts.Cover(read.Min(r => r.Utc), read.Max(r => r.Utc));
        }

        var merge = new RecordMerge(file.Counts, file.Aside)
        {
            EarlierVersions = StoreStands ? [] : OtherVersions(file, index),
            Own = StoreStands ? index : null,
        };
        _changed |= merge.Merge(_records, read);
        return Taken.Whole;
    }

    /// <inheritdoc/>
    public override int CountRows(Func<SourceFile, bool> from) => _records?.Count(r => from(Files[r.File])) ?? 0;

    /// <inheritdoc/>
    public override List<LedgerPart> Save()
    {
        if (!_changed)
        {
            return [.. parts];
        }

        var saved = new List<LedgerPart>();
        foreach (IGrouping<string, StoredRecord> house in _records!.GroupBy(r => r.House).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            List<StoredRecord> rows = RecordMerge.Sorted(house);
            string path = StorePaths.Records(house.Key, kind, export.Name);
            using (Stream stream = workshop.Transaction!.Create(path))
            {
                RecordPart.Write(stream, rows, kind, new PartInfo(export.House, export.Name, export.Time.Zone.Id, export.StampSide, workshop.Settings, Units()), Files);
            }

            saved.Add(new LedgerPart(workshop.Transaction.SealPart(path, rows.Count), house.Key, 0, rows.Count, rows[0].Utc, rows[^1].Utc) { Trace = PartTracer.Of(rows, Files) });
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
        int[] place = FileIndex.PlacesOf(files, Files);
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
