using ClimateLens.Logs.Describe.Cutting;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>Finds the columns that may hold the time.</summary>
/// <param name="headers">Headers of the columns.</param>
/// <param name="sorts">Usual sort of each column.</param>
/// <param name="rows">Rows of data spread over the file.</param>
internal sealed class TimePlans(IReadOnlyList<HeaderText> headers, IReadOnlyList<CellSort> sorts, IReadOnlyList<string[]> rows)
{
    private const double Mostly = 0.6;
    private const int MostPlans = 8;
    private const int FirstSerial = 25_000;
    private const int LastSerial = 73_000;

    private readonly StampHolds[] _holds = [.. Enumerable.Range(0, headers.Count).Select(i => HoldsOf(i, sorts, rows))];

    /// <summary>The plans, those that name the time best first.</summary>
    public List<TimePlan> All()
    {
        var plans = new List<TimePlan?>();
        int[] columns = [.. Enumerable.Range(0, headers.Count)];
        plans.AddRange(columns.Where(i => _holds[i] == StampHolds.Both).Take(MostPlans).Select(i => TimePlan.Of(new TimeSource(i), rows, h => h.HasFlag(StampHolds.Date))));
        plans.AddRange(columns.Where(i => _holds[i] == StampHolds.Nothing && IsPackedStamp(i)).Take(MostPlans).Select(i => TimePlan.Of(new TimeSource(i), rows, h => h.HasFlag(StampHolds.Both))));
        foreach (int date in columns.Where(i => _holds[i] == StampHolds.Date || (_holds[i] == StampHolds.Nothing && IsPackedDate(i))).Take(MostPlans))
        {
            plans.Add(Partner(date) is int time ? TimePlan.Of(new TimeSource(date, time), rows, h => h.HasFlag(StampHolds.TimeOfDay)) : null);
            plans.Add(TimePlan.Of(new TimeSource(date), rows, h => h == StampHolds.Date));
        }

        plans.AddRange(columns.Where(i => headers[i].Has(Idea.DayOfYear) || IsDayOfYear(i)).Take(2).Select(DayOfYear));
        plans.Add(Parts());
        plans.AddRange(columns.Where(i => _holds[i] == (StampHolds.Both | StampHolds.Yearless)).Take(2).Select(WithYear));
        return [.. plans.OfType<TimePlan>().Take(MostPlans)];
    }

    private static StampHolds HoldsOf(int column, IReadOnlyList<CellSort> sorts, IReadOnlyList<string[]> rows)
    {
        if (sorts[column] != CellSort.Stamp)
        {
            return StampHolds.Nothing;
        }

        StampHolds[] holds = [.. rows.Where(r => column < r.Length && r[column].Length > 0).Select(r => StampShape.Of(r[column]).Holds).Where(h => h != StampHolds.Nothing)];
        foreach (StampHolds held in (StampHolds[])[StampHolds.Both, StampHolds.Both | StampHolds.Yearless, StampHolds.TimeOfDay, StampHolds.Date, StampHolds.Date | StampHolds.Yearless])
        {
            if (holds.Length > 0 && holds.Count(h => h == held) >= Mostly * holds.Length)
            {
                return held;
            }
        }

        return StampHolds.Nothing;
    }

    /// <summary>The column with the time of day for a date: its neighbour, or one that is called so.</summary>
    private int? Partner(int date)
    {
        int[] near = [.. Enumerable.Range(0, headers.Count).Where(i => i != date).OrderBy(i => Math.Abs(i - date)).ThenByDescending(i => i)];
        int[] clocks = [.. near.Where(i => _holds[i] == StampHolds.TimeOfDay)];
        int[] starts = [.. clocks.Where(i => !headers[i].Has(Idea.End))];
        if (starts.Length > 0)
        {
            return starts[0];
        }

        int[] numbers = [.. near.Where(i => sorts[i] == CellSort.Number && headers[i].HasAny(Idea.Time, Idea.Hour) && !headers[i].HasAny(Idea.Date, Idea.Temperature) && IsClock(i))];
        return numbers.Length > 0 ? numbers[0] : null;
    }

    /// <summary>830, 1405, 14, 14.05 or 0.5875 of a day.</summary>
    private bool IsClock(int column) => Share(column, cell => double.TryParse(cell.Replace(',', '.'), System.Globalization.CultureInfo.InvariantCulture, out double v) && v is >= 0 and <= 240_000) > 0.95;

    private bool IsPackedDate(int column) => sorts[column] == CellSort.Number && Named(column) is var named
        && Share(column, cell => cell.All(char.IsAsciiDigit) && ((cell.Length is 8 or 7 && IsYear(cell)) || (cell.Length is 6 or 8 && named) || (cell.Length == 5 && IsSerial(cell) && named))) > 0.95;

    private bool IsPackedStamp(int column)
    {
        if (sorts[column] != CellSort.Number)
        {
            return false;
        }

        bool named = Named(column);
        return Share(column, cell => IsPackedStamp(cell, named)) > 0.95 && IsMoving(column);
    }

    private static bool IsPackedStamp(string cell, bool named)
    {
        int digits = 0;
        while (digits < cell.Length && char.IsAsciiDigit(cell[digits]))
        {
            digits++;
        }

        return digits switch
        {
            5 => IsSerial(cell) && (named || digits < cell.Length),
            9 or 10 or 13 or 16 => named || (cell[0] == '1' && digits == cell.Length) || IsYear(cell),
            12 or 14 => digits == cell.Length,
            _ => false,
        };
    }

    private static bool IsYear(string cell) => cell.StartsWith("19", StringComparison.Ordinal) || cell.StartsWith("20", StringComparison.Ordinal);

    private static bool IsSerial(string cell) => int.TryParse(cell.AsSpan(0, 5), out int days) && days is >= FirstSerial and <= LastSerial;

    private bool Named(int column) => column == 0 || headers[column].HasAny(Idea.Date, Idea.Time, Idea.Start);

    /// <summary>A time changes from row to row; a code does not.</summary>
    private bool IsMoving(int column)
    {
        string[] cells = [.. rows.Where(r => column < r.Length).Select(r => r[column])];
        return cells.Distinct().Count() > Math.Max(1, cells.Length / 20);
    }

    private double Share(int column, Func<string, bool> test)
    {
        string[] cells = [.. rows.Where(r => column < r.Length && r[column].Length > 0).Select(r => r[column])];
        return cells.Length == 0 ? 0 : cells.Count(test) / (double)cells.Length;
    }

    /// <summary>The column with the year, or -1.</summary>
    private int YearColumn() => Array.FindIndex([.. headers], h => h.Has(Idea.Year)) is int named and >= 0 ? named
        : Enumerable.Range(0, headers.Count).FirstOrDefault(i => sorts[i] == CellSort.Number && headers[i].Raw.Length == 0 && Share(i, c => c.Length == 4 && IsYear(c)) > 0.95, -1);

    /// <summary>Without names: whole numbers to 366 between a year and a time of day.</summary>
    private bool IsDayOfYear(int column) => column > 0 && column == YearColumn() + 1 && headers[column].Raw.Length == 0 && Share(column, c => c.Length <= 3 && int.TryParse(c, out int day) && day is >= 1 and <= 366) > 0.95;

    private TimePlan? DayOfYear(int column)
    {
        int? clock = Partner(column) ?? (column + 1 < headers.Count && sorts[column + 1] == CellSort.Number && IsClock(column + 1) ? column + 1 : null);
        if (clock is not int time)
        {
            return null;
        }

        int year = YearColumn();
        string[] patterns = ["D Hmm", "D H:mm", "D H:mm:ss", "D H"];
        return year >= 0 ? Given(new TimeSource(year, column, time), "yD", false, [.. patterns.Select(p => $"yyyy {p}")]) : Given(new TimeSource(column, time), "D", true, patterns);
    }

    /// <summary>Columns for year, month, day and hour, perhaps minutes.</summary>
    private TimePlan? Parts()
    {
        int Find(Idea idea) => Array.FindIndex([.. headers], h => h.Has(idea) && !h.HasAny(Idea.Temperature, Idea.Sum, Idea.Average));

        (int year, int month, int day) = (Find(Idea.Year), Find(Idea.Month), Find(Idea.Day));
        int hour = Find(Idea.Hour) is int named and >= 0 ? named : Find(Idea.Time);
        int minute = Array.FindIndex([.. headers], h => h.HasAny(Idea.Minute, Idea.Minutes) || h.Text is " min " or " minutes ");
        if (year < 0 || month < 0 || day < 0 || hour < 0 || new[] { year, month, day, hour }.Distinct().Count() < 4)
        {
            return null;
        }

        return minute >= 0 && minute != hour
            ? Given(new TimeSource(year, month, day, hour, minute), "yMd", false, "yyyy M d H m")
            : Given(new TimeSource(year, month, day, hour), "yMd", false, "yyyy M d H", "yyyy M d Hmm", "yyyy M d H:mm", "yyyy M d H:mm:ss");
    }

    /// <summary>A stamp without a year beside a column with it.</summary>
    private TimePlan? WithYear(int column)
    {
        int year = YearColumn();
        return year < 0 ? TimePlan.Of(new TimeSource(column), rows, h => h.HasFlag(StampHolds.Date))
            : TimePlan.Of(new TimeSource(column), rows, h => h.HasFlag(StampHolds.Yearless)) is { } plan
            ? Given(new TimeSource(year, column), "y", false, [.. plan.Formats.Select(f => $"yyyy {f.Text}")]) : null;
    }

    private TimePlan? Given(TimeSource source, string order, bool yearless, params string[] patterns)
    {
        string[] stamps = [.. rows.Select(source.Text).Where(text => text.Length > 0)];
        StampHolds holds = yearless ? StampHolds.Both | StampHolds.Yearless : StampHolds.Both;
        return TimePlan.Of(source, patterns.Select(p => new StampFormat(p, order == "y" ? string.Concat(p.Where(c => c is 'y' or 'M' or 'd').Distinct()) : order, holds)), stamps);
    }
}
