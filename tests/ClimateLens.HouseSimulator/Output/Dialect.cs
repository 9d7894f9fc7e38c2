using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.HouseSimulator.Output;

/// <summary>How one maker of exports writes a table.</summary>
/// <param name="Delimiter">Between fields.</param>
/// <param name="DecimalMark">Decimal mark.</param>
/// <param name="StampPattern">Pattern of the stamp.</param>
/// <param name="Utc">Whether the clock runs on UTC instead of local time.</param>
/// <param name="TitleLines">Lines before the header.</param>
public sealed record Dialect(char Delimiter, char DecimalMark, string StampPattern, bool Utc, IReadOnlyList<string> TitleLines)
{
    private readonly LocalDateTimePattern _pattern = LocalDateTimePattern.CreateWithInvariantCulture(StampPattern);

    /// <summary>Writes the rows of a table that a test picks.</summary>
    public string Write(LogTable table, DateTimeZone zone, Func<int, bool> pick)
    {
        var text = new StringBuilder();
        foreach (string line in TitleLines)
        {
            text.Append(line).Append('\n');
        }

        text.AppendJoin(Delimiter, [table.StampHeader, .. table.Columns.Select(c => c.Header)]).Append('\n');
        for (int row = 0; row < table.At.Length; row++)
        {
            if (!table.Removed[row] && pick(row))
            {
                AppendRow(text, table, row, Utc ? DateTimeZone.Utc : zone);
            }
        }

        return text.ToString();
    }

    private void AppendRow(StringBuilder text, LogTable table, int row, DateTimeZone zone)
    {
        text.Append(_pattern.Format(table.At[row].InZone(zone).LocalDateTime));
        foreach (LogColumn column in table.Columns)
        {
            text.Append(Delimiter).Append(Number(column.Values[row], column.Decimals));
        }

        text.Append('\n');
    }

    private string Number(double value, int decimals)
    {
        if (value == Defect.MissingCode)
        {
            return "-999";
        }

        string number = value.ToString(decimals == 0 ? "0" : "0.0", CultureInfo.InvariantCulture);
        return (number is "-0" or "-0.0" ? number[1..] : number).Replace('.', DecimalMark);
    }
}
