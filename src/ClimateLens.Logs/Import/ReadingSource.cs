using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Sheets;
using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Import;

/// <summary>A source of readings: a part for each UTC year, read from the store only where a file reaches into it.</summary>
/// <param name="export">Its settings.</param>
/// <param name="parts">What the store holds.</param>
/// <param name="reader">Reads it; null where nothing is held.</param>
/// <param name="workshop">Where it is made.</param>
internal sealed class ReadingSource(ExportSettings export, IReadOnlyList<LedgerPart> parts, PartReader? reader, Workshop workshop) : SourceContent
{
    private readonly string[] _names = ReadingColumns.NamesOf(export);
    private readonly YearContents _years = new(workshop.Limits, workshop.Spill);
    private readonly ReadingParts _writer = new(export, workshop);
    private readonly HashSet<string> _told = [];

    /// <inheritdoc/>
    public override List<string> StartFrom(IReadOnlyList<LedgerPart> old, Func<SourceFile, bool> from)
    {
        var damaged = new List<string>();
        foreach (LedgerPart part in old)
        {
            try
            {
                SortedRows rows = reader!.Rows(part, Files, workshop.Limits.SourceBytes);
                bool[] wanted = [.. Files.Select(from)];
                if (Array.TrueForAll(wanted, w => !w))
                {
                    continue;
                }

                SortedRows kept = RowsOf(rows, wanted);
                if (kept.Count > 0)
                {
                    _years.Put(part.Year, kept, isChanged: true);
                    _years.Trim();
                }
            }
            catch (DamagedPartException e)
            {
                damaged.Add(e.Path);
            }
        }

        return damaged;
    }

    /// <inheritdoc/>
    public override Taken Take(FileBeingRead file)
    {
        int index = PlaceOf(file);
        Func<int, ReadingPartWriter?>? open = workshop.Transaction is null || !file.ExpectOrder ? null : year => IsHeld(year) ? null : _writer.Open(year, _names);
        var rows = new FileRows(_names, workshop.Limits, workshop.Spill, open);
        bool isTaken = false;
        try
        {
            if (!new ReadingFile(export, index, file.Aside, file.Counts).Read(file.Opened, rows, workshop.Limits.BlockRows))
            {
                return Taken.Nothing;
            }

            if (rows.MustSort)
            {
                return Taken.Again;
            }

            Files[index] = file.Source;
            file.Counts.Facts.Series = rows.Statistics;
            Take(rows, file, index);
            isTaken = true;
            return Taken.Whole;
        }
        finally
        {
            if (!isTaken)
            {
                _writer.Abandon();
            }
        }
    }

    /// <inheritdoc/>
    public override int CountRows(Func<SourceFile, bool> from)
    {
        bool[] wanted = [.. Files.Select(from)];
        return _years.Changed.SelectMany(y => y.Content.Rows.Blocks()).Sum(block => block.File.AsSpan(0, block.Count).ToArray().Count(file => wanted[file]));
    }

    /// <inheritdoc/>
    public override List<LedgerPart> Save()
    {
        Dictionary<int, LedgerPart> saved = parts.ToDictionary(p => p.Year);
        foreach ((int year, YearContent content) in _years.Changed)
        {
            if (content.Rows.Count == 0)
            {
                saved.Remove(year);
                continue;
            }

            saved[year] = _writer.Save(year, content, Files);
        }

        _years.Clear();
        return [.. saved.Values.OrderBy(p => p.Year)];
    }

    private void Take(FileRows rows, FileBeingRead file, int index)
    {
        foreach (FileYear year in rows.Years.Values)
        {
            file.Counts.Cover(year.First, year.Last);
        }

        var judge = new YearJudge(file.Counts, file.Aside)
        {
            EarlierVersions = StoreStands ? [] : EarlierVersions(file, index),
            IsElsewhere = file.IsElsewhere,
            StoreStandsOver = StoreStands ? index : null,
        };
        SortedSet<int> years = [.. rows.Years.Keys, .. judge.EarlierVersions.Count > 0 ? HeldYears(file.Counts) : []];
        foreach (int year in years)
        {
            if (rows.Years.GetValueOrDefault(year) is { Flow: ReadingPartWriter flow })
            {
                file.Counts.Accept(flow.Rows, flow.First, flow.Last);
                _years.Put(year, _writer.Close(year, flow, Files[index], index), isChanged: true, isWritten: true);
                UnitWatch.Report(export, rows.Statistics.Thin.Within(flow.First, flow.Last), (flow.First, flow.Last), file.Aside, _told);
            }
            else
            {
                Take(year, rows.Years.GetValueOrDefault(year), file, judge, rows.Statistics);
            }

            _years.Trim();
        }
    }

    private void Take(int year, FileYear? inFile, FileBeingRead file, YearJudge judge, SeriesStatistics statistics)
    {
        SortedRows fresh = inFile?.Tidy(workshop.Limits, workshop.Spill, file.Counts, file.Aside) ?? new MemoryRows(_names);
        foreach (YearRows block in fresh.Blocks())
        {
            statistics.Take(block);
        }

        SortedRows? held = Held(year);
        YearNews news = judge.Judge(held, fresh);
        if (news.Any)
        {
            Put(year, held, fresh, news);
            Watch(year, fresh, file.Aside);
        }
    }

    private void Watch(int year, SortedRows fresh, SetAsideLog aside)
    {
        if (fresh.Count == 0)
        {
            return;
        }

        var thin = new ThinRows(_names);
        foreach (YearRows block in _years.Find(year)!.Rows.Blocks())
        {
            thin.Add(block, fresh.First - UnitWatch.Beside, fresh.Last + UnitWatch.Beside);
        }

        UnitWatch.Report(export, thin, (fresh.First, fresh.Last), aside, _told);
    }

    private void Put(int year, SortedRows? held, SortedRows fresh, YearNews news)
    {
        if (held is null || held.Count == 0)
        {
            _years.Put(year, fresh, isChanged: true);
        }
        else if (held is MemoryRows memory && fresh is MemoryRows more && news.Replaced.Count == 0 && more.First > memory.Last && memory.Names.AsSpan().SequenceEqual(more.Names))
        {
            more.Blocks().ToList().ForEach(memory.Add);
            _years.Put(year, memory, isChanged: true);
        }
        else
        {
            var into = new RowCollector(YearMerge.Union(held.Names, fresh.Names), workshop.Limits, workshop.Limits.SourceBytes, workshop.Spill);
            _years.Put(year, YearMerge.Lay(held, fresh, news, into), isChanged: true);
        }
    }

    private HashSet<int> EarlierVersions(FileBeingRead file, int index)
    {
        if (!file.HasEarlierVersion)
        {
            return [];
        }

        foreach (int year in HeldYears(file.Counts))
        {
            _ = Held(year); // so that its files are listed
            _years.Trim();
        }

        return OtherVersions(file, index);
    }

    /// <summary>Years of the store within the span of a file.</summary>
    private IEnumerable<int> HeldYears(RowCounts counts)
        => parts.Where(p => p.First <= counts.To && p.Last >= counts.From).Select(p => p.Year);

    private bool IsHeld(int year) => _years.Find(year) is not null || parts.Any(p => p.Year == year);

    private SortedRows? Held(int year)
    {
        if (_years.Find(year) is YearContent content)
        {
            return content.Rows;
        }

        LedgerPart? part = reader is null ? null : parts.FirstOrDefault(p => p.Year == year);
        return part is null ? null : _years.Put(year, reader!.Rows(part, Files, workshop.Limits.SourceBytes / 2), isChanged: false).Rows;
    }

    private SortedRows RowsOf(SortedRows rows, bool[] wanted)
    {
        var kept = new RowCollector(rows.Names, workshop.Limits, workshop.Limits.SourceBytes, workshop.Spill);
        int[] places = [.. Enumerable.Range(0, rows.Names.Length)];
        using var cursor = new RowCursor(rows);
        while (cursor.MoveNext())
        {
            if (wanted[cursor.Block.File[cursor.Row]])
            {
                kept.Append(cursor.Block, cursor.Row, places);
            }
        }

        return kept.Finish();
    }
}
