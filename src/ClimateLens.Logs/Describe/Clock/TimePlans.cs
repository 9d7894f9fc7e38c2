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
        plans.AddRange(columns.Where(i => _holds[i].HasFlag(StampHolds.Both)).Take(MostPlans).Select(i => TimePlan.Of(new TimeSource(i), rows, h => h.HasFlag(StampHolds.Date))));
        plans.AddRange(columns.Where(i => _holds[i] == StampHolds.Nothing && IsPackedStamp(i)).Take(MostPlans).Select(i => TimePlan.Of(new TimeSource(i), rows, h => h.HasFlag(StampHolds.Both))));
        foreach (int date in columns.Where(i => _holds[i] == StampHolds.Date || (_holds[i] == StampHolds.Nothing && IsPackedDate(i))).Take(MostPlans))
        {
            plans.Add(Partner(date) is int time ? TimePlan.Of(new TimeSource(date, time), rows, h => h.HasFlag(StampHolds.TimeOfDay)) : null);
            plans.Add(TimePlan.Of(new TimeSource(date), rows, h => h == StampHolds.Date));
        }

        plans.AddRange(columns.Where(i => headers[i].Has(Idea.DayOfYear)).Select(DayOfYear));
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

    private TimePlan? DayOfYear(int column)
    {
        int? clock = Partner(column) ?? (column + 1 < headers.Count && sorts[column + 1] == CellSort.Number && IsClock(column + 1) ? column + 1 : null);
        if (clock is not int time)
        {
            return null;
        }

        var source = new TimeSource(column, time);
        string[] stamps = [.. rows.Select(source.Text).Where(text => text.Length > 0)];
        StampFormat[] formats = [.. ((string[])["D Hmm", "D H:mm", "D H:mm:ss", "D H"]).Select(p => new StampFormat(p, "D", StampHolds.Both | StampHolds.Yearless))];
        return TimePlan.Of(source, formats, stamps);
    }
}
