using ClimateLens.Logs.Cells;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Logs.Times;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Readings;

/// <summary>Reads one file of readings in a single pass.</summary>
/// <param name="export">Its settings.</param>
/// <param name="fileIndex">Its place in the source's list of files.</param>
/// <param name="aside">Where goes what can't be read.</param>
/// <param name="counts">What became of its rows.</param>
internal sealed class ReadingFile(ExportSettings export, int fileIndex, SetAsideLog aside, RowCounts counts)
{
    private readonly string[] _names = ReadingColumns.NamesOf(export);
    private readonly SortedDictionary<int, YearRows> _years = [];
    private readonly List<(YearRows Rows, int Row, int Line, byte[] Raw)> _waiting = [];
    private readonly StampSequence _sequence = new(new ZoneClock(export.Time.Zone), export.StepSeconds * CivilDate.SecondMicros);
    private readonly OddCells _odd = new(aside);
    private YearRows? _year;
    private long _yearFrom = 1;
    private long _yearTo;

    /// <summary>The rows by UTC year, tidied; null when nothing of the file can be taken, which is reported.</summary>
    public SortedDictionary<int, YearRows>? Read(OpenedExport opened)
    {
        StampPlan? plan = StampPlan.Of(export, opened, linesInQuotes: false, aside, counts);
        using ExportTable? table = ExportTable.Open(opened, export.Dialect, linesInQuotes: false, aside, counts);
        if (table is null)
        {
            return null;
        }

        if (TimeColumns.Bind(export.Time, table.Columns, aside, plan) is not TimeColumns time)
        {
            return null;
        }

        ReadingColumn[] columns = ReadingColumns.Bind(export, table.Columns, aside.Problems);
        ReadRows(table, time, columns);
        _odd.Report();
        ResolveWaiting();
        foreach (YearRows rows in _years.Values)
        {
            YearTidy.Tidy(rows, counts, aside);
        }

        NoteStep();
        return _years;
    }

    private void ReadRows(ExportTable table, TimeColumns time, ReadingColumn[] columns)
    {
        double[] values = new double[columns.Length];
        while (table.Next())
        {
            if (!time.TryRead(table, out LocalStamp stamp))
            {
                table.SetAside(time.Fault, time.Column, time.Found(table), time.Expected);
                continue;
            }

            LocalMeaning meaning = _sequence.Add(stamp, time.Pattern.IsDateOnly, out long utc);
            if (meaning == LocalMeaning.Skipped)
            {
                table.SetAside(ProblemCodes.TimeSkipped, time.Column, time.Found(table), $"a time that {export.Time.Zone.Id} has");
                continue;
            }

            ReadCells(table, columns, utc, values);
            YearRows rows = YearOf(utc);
            rows.Append(utc, fileIndex, table.Line, values);
            if (meaning == LocalMeaning.Twice)
            {
                _waiting.Add((rows, rows.Count - 1, table.Line, table.Raw.ToArray()));
            }
        }
    }

    private void ReadCells(ExportTable table, ReadingColumn[] columns, long utc, double[] values)
    {
        for (int c = 0; c < columns.Length; c++)
        {
            ref readonly ReadingColumn column = ref columns[c];
            if (column.Field < 0)
            {
                values[c] = double.NaN;
                continue;
            }

            ValueReader reader = column.Later.IsEmpty ? column.Reader : column.ReaderAt(utc);
            CellKind kind = reader.Read(table.Field(column.Field), out values[c]);
            if (kind > CellKind.Missing && _odd.Add(kind, column.Field + 1, column.Name, table.Field(column.Field), table.Line, reader))
            {
                counts.CellsNotRead++;
            }
        }
    }

    private YearRows YearOf(long utc)
    {
        if (utc >= _yearFrom && utc < _yearTo)
        {
            return _year!;
        }

        int year = CivilDate.YearOf(utc);
        (_yearFrom, _yearTo) = (CivilDate.YearStart(year), CivilDate.YearStart(year + 1));
        if (!_years.TryGetValue(year, out _year))
        {
            _years.Add(year, _year = new YearRows(_names));
        }

        return _year;
    }

    /// <summary>Finds the file's step and says so where the stamps stray around it.</summary>
    private void NoteStep()
    {
        var finder = new StepFinder();
        foreach (YearRows rows in _years.Values)
        {
            finder.Add(rows.Utc.AsMemory(0, rows.Count));
        }

        counts.Step = finder.Find();
        if (counts.Step is { Strays: true } step && export.StepSeconds is null)
        {
            aside.Problems.Add(ProblemCodes.TimeStep.In(aside.File, null, null, step.ToString(), ""));
        }
    }

    private void ResolveWaiting()
    {
        long?[] resolved = _sequence.Resolve();
        for (int i = 0; i < resolved.Length; i++)
        {
            (YearRows rows, int row, int line, byte[] raw) = _waiting[i];
            if (resolved[i] is long utc && CivilDate.YearOf(utc) == CivilDate.YearOf(rows.Utc[row]))
            {
                rows.Utc[row] = utc;
                continue;
            }

            rows.Utc[row] = YearTidy.Dropped;
            counts.SetAside++;
            aside.Add(ProblemCodes.TimeTwice, line, null, raw, "rows whose order shows the clock put back once");
        }
    }
}
