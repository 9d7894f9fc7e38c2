using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Import;

/// <summary>A source of readings: a part for each UTC year, read from the store only where a file reaches into it.</summary>
/// <param name="export">Its settings.</param>
/// <param name="parts">What the store holds.</param>
/// <param name="reader">Reads it.</param>
internal sealed class ReadingSource(ExportSettings export, IReadOnlyList<LedgerPart> parts, PartReader? reader) : SourceContent
{
    private readonly Dictionary<int, YearRows> _years = [];
    private readonly SortedSet<int> _changed = [];
    private readonly HashSet<string> _told = [];

    /// <inheritdoc/>
    public override bool IsChanged => _changed.Count > 0;

    /// <inheritdoc/>
    public override bool Take(OpenedExport opened, SourceFile file, SetAsideLog aside, RowCounts counts)
    {
        SortedDictionary<int, YearRows>? years = new ReadingFile(export, IndexOf(file), aside, counts).Read(opened);
        if (years is null)
        {
            return false;
        }

        foreach ((int year, YearRows rows) in years)
        {
            YearRows? held = Held(year);
            YearRows merged = YearMerge.Merge(held, rows, counts, aside);
            if (!ReferenceEquals(merged, held) && merged.Count > 0)
            {
                _years[year] = merged;
                _changed.Add(year);
                UnitWatch.Report(export, merged, rows, aside, _told);
            }
        }

        return true;
    }

    /// <inheritdoc/>
    public override int KeepOld(IReadOnlyList<LedgerPart> oldParts, IReadOnlySet<string> goneHashes, PartReader reader, ICollection<string> damaged)
    {
        int kept = 0;
        foreach (LedgerPart part in oldParts)
        {
            try
            {
                YearRows? old = Gone(part, goneHashes, reader);
                YearRows rows = _years.GetValueOrDefault(part.Year) ?? new YearRows(ReadingColumns.NamesOf(export));
                YearRows filled = old is null ? rows : YearMerge.Fill(rows, old);
                if (filled.Count > rows.Count)
                {
                    kept += filled.Count - rows.Count;
                    _years[part.Year] = filled;
                    _changed.Add(part.Year);
                }
            }
            catch (DamagedPartException e)
            {
                damaged.Add(e.Path);
            }
        }

        return kept;
    }

    /// <inheritdoc/>
    public override List<LedgerPart> Save(StoreTransaction transaction)
    {
        var saved = parts.Where(p => !_changed.Contains(p.Year)).ToList();
        foreach (int year in _changed)
        {
            YearRows rows = _years[year];
            string path = StorePaths.Readings(export.House, export.Name, year);
            PartInfo info = PartInfo.OfReadings(export, rows.Names);
            StoredFile stored = PartWriter.Write(transaction, path, rows.Count, stream => ReadingPart.Write(stream, rows, info, Files));
            saved.Add(new LedgerPart(stored, export.House, year, rows.Count, rows.Utc[0], rows.Utc[rows.Count - 1]));
        }

        _changed.Clear();
        return [.. saved.OrderBy(p => p.Year)];
    }

    private YearRows? Held(int year)
    {
        if (_years.TryGetValue(year, out YearRows? rows) || reader is null)
        {
            return rows;
        }

        LedgerPart? part = parts.FirstOrDefault(p => p.Year == year);
        return part is null ? null : _years[year] = Load(part, reader);
    }

    private YearRows Load(LedgerPart part, PartReader from)
    {
        (YearRows rows, List<SourceFile> files) = from.Readings(part);
        FileIndex.Expand(rows.File.AsSpan(0, rows.Count), files, Files);
        return rows;
    }

    /// <summary>The rows of a part that came from files which are gone.</summary>
    private YearRows? Gone(LedgerPart part, IReadOnlySet<string> goneHashes, PartReader from)
    {
        YearRows rows = Load(part, from);
        int kept = 0;
        for (int i = 0; i < rows.Count; i++)
        {
            if (goneHashes.Contains(Files[rows.File[i]].Sha256))
            {
                rows.Move(i, kept++);
            }
        }

        rows.Count = kept;
        return kept == 0 ? null : rows;
    }
}
