namespace ClimateLens.Logs.Describe.Clock;

/// <summary>The column, or the two, that may hold the time of a row.</summary>
/// <param name="Date">0-based column with the date, or with both.</param>
/// <param name="TimeOfDay">0-based column with the time of day where it stands apart; -1 where not.</param>
internal readonly record struct TimeSource(int Date, int TimeOfDay = -1)
{
    /// <summary>The stamp of a row; empty when the row has no such columns.</summary>
    public string Text(string[] cells)
    {
        if (Date >= cells.Length || TimeOfDay >= cells.Length)
        {
            return "";
        }

        return TimeOfDay < 0 ? cells[Date] : cells[Date].Length == 0 ? "" : $"{cells[Date]} {cells[TimeOfDay]}";
    }

    /// <summary>Whether a column is part of it.</summary>
    public bool Has(int column) => column >= 0 && (column == Date || column == TimeOfDay);
}
