using NodaTime;

namespace ClimateLens.HouseSimulator.Output;

/// <summary>Something that goes wrong on purpose.</summary>
/// <param name="Kind"><c>gap</c>, <c>stuck</c>, <c>spike</c>, <c>missingCode</c> or <c>duplicateFile</c>.</param>
/// <param name="Source">Table: <c>house-1</c> or <c>house-2</c>.</param>
/// <param name="Channels">Channels hit; empty: all.</param>
/// <param name="From">First stamp hit, local time.</param>
/// <param name="Until">First stamp after it, local time.</param>
/// <param name="Value">What is read instead, where that is one value.</param>
/// <param name="Note">What happened, in words.</param>
/// <param name="Files">Files in which it stands.</param>
public sealed record Defect(
    string Kind,
    string Source,
    IReadOnlyList<string> Channels,
    LocalDateTime From,
    LocalDateTime Until,
    double? Value,
    string Note,
    IReadOnlyList<string> Files)
{
    /// <summary>What the sample writes for "no value".</summary>
    public const double MissingCode = -999;

    /// <summary>Spoils a table.</summary>
    public void Apply(LogTable table, DateTimeZone zone)
    {
        Instant from = zone.AtStrictly(From).ToInstant(), until = zone.AtStrictly(Until).ToInstant();
        int first = Array.FindIndex(table.At, at => at >= from);
        for (int row = first; row < table.At.Length && table.At[row] < until; row++)
        {
            if (Kind == "gap")
            {
                table.Removed[row] = true;
            }

            foreach (LogColumn column in table.Columns)
            {
                if (Channels.Count == 0 || Channels.Contains(column.Channel))
                {
                    Spoil(column.Values, row, first);
                }
            }
        }
    }

    private void Spoil(double[] values, int row, int first)
        => values[row] = Kind switch
        {
            "stuck" => values[first],
            "spike" => Value!.Value,
            "missingCode" => MissingCode,
            _ => values[row],
        };
}
