using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>decimalChar and groupChar, of an export or of one of its columns.</summary>
internal static class MarkKeys
{
    /// <summary>The decimal mark, and whether '.' and ',' both are one; null when the key is left out.</summary>
    public static (char Mark, bool Either)? DecimalChar(TableReader table)
    {
        switch (table.Text("decimalChar", mayBeEmpty: true))
        {
            case null:
                return null;
            case "." or ",":
                return (table.Text("decimalChar")![0], false);
            case ".," or ",.":
                return ('.', true);
            case { } other:
                table.Faults.Error(FaultCodes.Dialect, table.PlaceOf("decimalChar"), $"decimalChar = {Excerpt.Quoted(other)}", "\".\" or \",\", or \".,\" where both occur", "look at a number in the export.");
                return ('.', false);
        }
    }

    /// <summary>The marks of a column, where it has its own.</summary>
    public static NumberMarks? OfColumn(TableReader column, DialectSettings dialect)
    {
        if (!column.Has("decimalChar") && !column.Has("groupChar"))
        {
            return null;
        }

        (char mark, bool either) = DecimalChar(column) ?? (dialect.DecimalChar, dialect.EitherDecimalChar);
        char? group = column.Mark("groupChar", "\".\"") ?? (Clash(mark, either, dialect.GroupChar) ? null : dialect.GroupChar);
        CheckGroup(column, mark, either, group);
        return new NumberMarks(mark, either, group);
    }

    /// <summary>Groups and fraction need different marks.</summary>
    public static void CheckGroup(TableReader table, char mark, bool either, char? group)
    {
        if (Clash(mark, either, group))
        {
            Place one = table.PlaceOf("groupChar"), two = table.PlaceOf("decimalChar");
            table.Faults.Error(FaultCodes.Dialect, (one.Line, one.Column).CompareTo((two.Line, two.Column)) >= 0 ? one : two, $"groupChar and decimalChar are both {Excerpt.Quoted(group!.Value.ToString())}", "two different marks", either ? "take groupChar out: with decimalChar = \".,\" groups are told by the numbers that have both marks." : "give groupChar and decimalChar as the export has them.");
        }
    }

    /// <summary>A decimal mark that is also the delimiter works only between quotes, so the nursery file has to name both.</summary>
    public static void CheckDelimiter(TableReader export, char mark, bool either, char delimiter)
    {
        if (!export.Has("decimalChar") || !(mark == delimiter || (either && delimiter == ',')))
        {
            return;
        }

        string both = $"decimalChar and delimiter are both {Excerpt.Quoted(delimiter.ToString())}";
        if (export.Has("delimiter"))
        {
            export.Faults.Warning(FaultCodes.Dialect, export.PlaceOf("decimalChar"), both, "", "this works only where such numbers stand in quotes, as in \"21,5\"; else look at a row of the export again.");
        }
        else
        {
            export.Faults.Error(FaultCodes.Dialect, export.PlaceOf("decimalChar"), $"{both} (delimiter is left out and has its usual value)", "two different marks", $"give delimiter as the export has it; where numbers stand in quotes, write delimiter = {Excerpt.Quoted(delimiter.ToString())} too.");
        }
    }

    private static bool Clash(char mark, bool either, char? group) => group == mark || (either && group is '.' or ',');
}
