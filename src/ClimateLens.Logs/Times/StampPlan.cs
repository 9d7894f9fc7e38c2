using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Times;

/// <summary>
/// What only all rows of a file together tell of each row's time: its format, where the export lists several, or its year, where
/// stamps name none. It takes a first pass over the file, which such files alone need.
/// </summary>
internal sealed class StampPlan
{
    private readonly List<int> _lines = [];
    private byte[] _formats = [];
    private int[]? _years;
    private int _at;

    private StampPlan()
    {
    }

    /// <summary>The plan of a file; null where each row's time stands by itself. The file is left at its start.</summary>
    /// <param name="export">Its settings.</param>
    /// <param name="opened">The file.</param>
    /// <param name="linesInQuotes">Whether a quoted field may hold line ends.</param>
    /// <param name="aside">Where notes go.</param>
    /// <param name="counts">Where the rows of each format are counted.</param>
    public static StampPlan? Of(ExportSettings export, OpenedExport opened, bool linesInQuotes, SetAsideLog aside, RowCounts counts)
    {
        if (export.Time.MoreFormats.IsEmpty && export.Time.Year is null)
        {
            return null;
        }

        var plan = new StampPlan();
        using var silent = new SetAsideLog(aside.File, new ProblemList(), open: null);
        using (ExportTable? table = ExportTable.Open(opened, export, linesInQuotes, silent, new RowCounts()))
        {
            if (table is not null && TimeColumns.Bind(export.Time, table.Columns, silent) is TimeColumns time)
            {
                plan.Read(table, time, export.Time, silent);
            }
        }

        opened.Stream.Position = 0;
        plan.Report(export.Time, aside, counts);
        return plan;
    }

    /// <summary>Format (or <see cref="StampVerdict.Undecided"/>, <see cref="StampVerdict.Unreadable"/>) and year of a row; to be asked in the order of the lines.</summary>
    public (byte Format, int? Year) At(int line)
    {
        while (_at < _lines.Count && _lines[_at] < line)
        {
            _at++;
        }

        return _at < _lines.Count && _lines[_at] == line ? (_formats[_at], _years?[_at]) : (StampVerdict.Unreadable, null);
    }

    private void Read(ExportTable table, TimeColumns time, TimeSettings settings, SetAsideLog silent)
    {
        foreach (StampParser format in time.Formats.Where(format => format.LacksYear))
        {
            format.Year = YearRoll.AnyLeapYear;
        }

        var order = new StampOrder(time.Formats);
        int headers = 0;
        while (table.Next())
        {
            if (headers != table.HeadersTaken)
            {
                headers = table.HeadersTaken;
                time = TimeColumns.Bind(settings, table.Columns, silent)!; // a new header is taken only where the time is in it
            }

            _lines.Add(table.Line);
            if (!order.Add(time.TryText(table, out ReadOnlySpan<byte> text) ? text : []))
            {
                table.SetTimeAside(time.Fault, time.Column, [], ""); // it may be a new header
            }
        }

        _formats = time.Formats.Count > 1 ? order.Decide().Choices.ToArray() : new byte[_lines.Count];
        _years = settings.Year is int first ? YearRoll.YearsOf(Places(order), first) : null;
    }

    private long[] Places(StampOrder order)
        => [.. Enumerable.Range(0, order.Count).Select(row => _formats[row] < StampOrder.MostFormats && order.Meanings(row)[_formats[row]] is var meaning && StampOrder.IsRead(meaning) ? meaning : YearRoll.Unread)];

    private void Report(TimeSettings settings, SetAsideLog aside, RowCounts counts)
    {
        if (settings.MoreFormats.Length > 0 && _lines.Count > 0)
        {
            (string Format, int Rows)[] formats = [.. settings.Formats.Select((format, i) => (format, _formats.AsSpan().Count((byte)i)))];
            counts.Facts.TimeFormats(formats);
            string found = string.Join("; ", formats.Select(f => $"{f.Rows} rows {f.Format}"));
            int undecided = _formats.AsSpan().Count(StampVerdict.Undecided);
            aside.Problems.Add(ProblemCodes.TimeFormats.In(aside.File, null, null, undecided == 0 ? found : $"{found}; {undecided} rows undecided", ""));
        }

        IGrouping<int, int>[] years = [.. (_years ?? []).Where(year => year > 0).GroupBy(year => year).OrderBy(year => year.Key)];
        if (years.Length > 1)
        {
            aside.Problems.Add(ProblemCodes.TimeYears.In(aside.File, null, null, string.Join("; ", years.Select(y => $"{y.Count()} rows of {y.Key}")), ""));
        }
    }
}
