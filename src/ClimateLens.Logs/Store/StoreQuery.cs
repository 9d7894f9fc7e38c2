using System.Collections.Immutable;
using ClimateLens.Logs.Import;
using ClimateLens.Logs.Readings;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Logs.Store;

/// <summary>Takes the input of a review out of the store.</summary>
/// <param name="nursery">The nursery.</param>
/// <param name="ledger">What is imported.</param>
/// <param name="cache">Reads parts.</param>
/// <param name="earlier">Keeps the weeks that are looked back at.</param>
internal sealed class StoreQuery(NurserySettings nursery, LedgerIndex ledger, PartCache cache, EarlierWeeks earlier)
{
    /// <summary>
    /// How far before the run-in records are looked for that a season is judged by: a crop's growth is fitted to all widths, counts are held against the weeks before, a group's uses are counted,
    /// and a floor remembers what was sprayed over it.
    /// </summary>
    internal static readonly Duration CropTime = Duration.FromDays(366);

    /// <summary>Loads a house period, its run-in, the readings before it, and the earlier weeks that its scouting is held against.</summary>
    public HouseInput Load(HouseSettings house, Interval period, Duration runIn, Duration history)
    {
        HouseInput input = Alone(house, period, runIn, history);
        IReadOnlyList<IsoWeek> weeks = ScoutedWeeks.Before(input.Records, period, nursery.Zone);
        if (weeks.Count > 0)
        {
            earlier.ForgetBefore(weeks[0]);
        }

        return input with { Earlier = [.. weeks.Select(week => earlier.Get(house, runIn, week, () => Alone(house, week.In(nursery.Zone), runIn, Duration.Zero)))] };
    }

    private HouseInput Alone(HouseSettings house, Interval period, Duration runIn, Duration history)
    {
        Instant start = period.Start - runIn;
        long from = Micros.Of(start);
        long to = Micros.Of(period.End);
        var batches = new List<ReadingBatch>();
        var before = new List<ReadingBatch>();
        var records = new List<RecordRow>();
        var earlier = new List<RecordRow>();
        long past = Micros.Of(period.Start - history);
        var sheets = new List<ImportSheet>();
        foreach ((ExportSettings export, LedgerSource source) in ledger.Of(house.Id))
        {
            sheets.AddRange(source.Files.Select(file => SheetOf(file, source.Key, from, to)));
            if (export.Kind is RecordKind kind)
            {
                records.AddRange(RecordsOf(source, kind, house.Id, EarliestOf(kind, start, past), to));
                earlier.AddRange(kind == RecordKind.Waterings && past < from ? RecordsOf(source, kind, house.Id, past, from) : []);
            }
            else
            {
                batches.AddRange(BatchOf(export, source, from, to));
                before.AddRange(history > Duration.Zero ? BatchOf(export, source, past, Micros.Of(period.Start)) : []);
            }
        }

        return new HouseInput(
            nursery,
            house,
            period,
            new Interval(start, period.Start),
            InOrder(batches),
            InOrder(records),
            [.. sheets])
        {
            History = InOrder(before),
            EarlierWaterings = InOrder(earlier),
        };
    }

    private static long EarliestOf(RecordKind kind, Instant start, long past) => kind switch
    {
        RecordKind.PlantWidths or RecordKind.Scouting or RecordKind.Treatments or RecordKind.Floors => Micros.Of(start - CropTime),
        RecordKind.PotChecks => Math.Min(past, Micros.Of(start)), // drying is learned from the weeks of the history
        _ => Micros.Of(start),
    };

    private static ImmutableArray<RecordRow> InOrder(IEnumerable<RecordRow> records)
        => [.. records.OrderBy(r => r.At).ThenBy(r => r.Kind).ThenBy(r => r.Source, StringComparer.Ordinal).ThenBy(r => r.File, StringComparer.Ordinal).ThenBy(r => r.Line)];

    private static ImmutableArray<ReadingBatch> InOrder(IEnumerable<ReadingBatch> batches)
        => [.. batches.OrderBy(b => b.House == ReadingBatch.WholeNursery).ThenBy(b => b.Source, StringComparer.Ordinal)];

    /// <summary>A file's sheet, whole where its rows reach into the time that is looked at.</summary>
    private ImportSheet SheetOf(LedgerFile file, SourceKey key, long from, long to)
    {
        ImportSheet sheet = ImportSheets.Of(file, key);
        return sheet.TellsOf(Micros.ToInstant(from), Micros.ToInstant(to)) && sheet.Details is null ? sheet with { Details = cache.Sheet(file.Sheet) } : sheet;
    }

    private IEnumerable<RecordRow> RecordsOf(LedgerSource source, RecordKind kind, string house, long from, long to)
    {
        (Instant first, Instant end) = (Micros.ToInstant(from), Micros.ToInstant(to));
        foreach (LedgerPart part in source.PartsOf(house, from, to))
        {
            foreach (RecordRow row in cache.Records(part, kind, source.Source).Where(r => r.At >= first && r.At < end))
            {
                yield return row;
            }
        }
    }

    private ReadingBatch[] BatchOf(ExportSettings export, LedgerSource source, long from, long to)
    {
        long shift = Micros.ShiftOf(export);
        List<(YearRows Rows, int Start, int End)> slices = [];
        foreach (LedgerPart part in source.Parts.Where(p => p.First < to + shift && p.Last >= from + shift).OrderBy(p => p.Year))
        {
            YearRows rows = cache.Readings(part);
            int start = LowerBound(rows, from + shift);
            int end = LowerBound(rows, to + shift);
            if (end > start)
            {
                slices.Add((rows, start, end));
            }
        }

        return slices.Count == 0 ? [] : [Join(export, slices)];
    }

    private ReadingBatch Join(ExportSettings export, List<(YearRows Rows, int Start, int End)> slices)
    {
        int count = slices.Sum(s => s.End - s.Start);
        long[] utc = new long[count];
        var columns = slices.SelectMany(s => s.Rows.Names).Distinct().ToDictionary(name => name, _ => new double[count], StringComparer.Ordinal);
        int at = 0;
        foreach ((YearRows rows, int start, int end) in slices)
        {
            rows.Utc.AsSpan(start, end - start).CopyTo(utc.AsSpan(at));
            foreach ((string name, double[] values) in columns)
            {
                int c = Array.IndexOf(rows.Names, name);
                Span<double> into = values.AsSpan(at, end - start);
                if (c < 0)
                {
                    into.Fill(double.NaN);
                }
                else
                {
                    rows.Columns[c].AsSpan(start, end - start).CopyTo(into);
                }
            }

            at += end - start;
        }

        int step = export.StepSeconds ?? cache.StepOf([.. slices.Select(s => s.Rows)]);
        return new ReadingBatch(export.House, export.Name, export.StampSide, step, utc, columns.ToImmutableSortedDictionary(StringComparer.Ordinal));
    }

    private static int LowerBound(YearRows rows, long utc)
    {
        int at = rows.Utc.AsSpan(0, rows.Count).BinarySearch(utc);
        return at >= 0 ? at : ~at;
    }
}
