using System.Collections.Immutable;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>The keys of [[export]] that say how text is cut into fields.</summary>
internal static class DialectKeys
{
    public static readonly string[] Keys =
    [
        "encoding", "delimiter", "quoteChar", "decimalChar", "groupChar", "commentChar",
        "headerRow", "headerRows", "dataRow", "missingValues", "widths", "sheet", "entries",
    ];

    public static readonly string[] Encodings = ["utf-8", "utf-16le", "utf-16be", "windows-1252", "iso-8859-1"];

    private const int LastRow = 10_000;

    public static DialectSettings Read(TableReader export)
    {
        char delimiter = Plain(export, "delimiter", export.Mark("delimiter", "\";\"")) ?? ',';
        char quote = Plain(export, "quoteChar", export.Mark("quoteChar", "'\"'")) ?? '"';
        (char decimalMark, bool either) = MarkKeys.DecimalChar(export) ?? ('.', false);
        char? group = export.Mark("groupChar", "\".\"");
        char? comment = export.Mark("commentChar", "\"#\"");
        Distinct(export, "delimiter", delimiter, "quoteChar", quote);
        Distinct(export, "decimalChar", decimalMark, "quoteChar", quote);
        Distinct(export, "groupChar", group, "quoteChar", quote);
        Distinct(export, "commentChar", comment, "delimiter", delimiter);
        Distinct(export, "commentChar", comment, "quoteChar", quote);
        MarkKeys.CheckGroup(export, decimalMark, either, group);
        ImmutableArray<int> widths = ShapeKeys.Widths(export);
        if (widths.IsEmpty)
        {
            MarkKeys.CheckDelimiter(export, decimalMark, either, delimiter);
        }

        (ImmutableArray<int> headers, int data) = Rows(export);
        return new(Encoding(export), delimiter, quote, decimalMark, group, comment, headers is [.., int last] ? last : 0, data, MissingValues(export))
        {
            EitherDecimalChar = either,
            HeaderRows = headers.Length > 1 ? headers : [],
            Widths = widths,
            Sheet = ShapeKeys.Sheet(export),
            Entries = export.Texts("entries", "[\"*.csv\"]"),
        };
    }

    /// <summary>Texts that mean "no value"; a bare number is refused, since its text is what counts.</summary>
    public static ImmutableArray<string> MissingValues(TableReader table) => table.Texts("missingValues", "[\"-999\"]");

    private static string Encoding(TableReader export)
    {
        if (export.Text("encoding") is not { } name)
        {
            return Encodings[0];
        }

        if (Encodings.Contains(name.ToLowerInvariant()))
        {
            return name.ToLowerInvariant();
        }

        string all = string.Join(", ", Encodings);
        string mend = name.ToLowerInvariant() switch
        {
            "latin1" or "latin-1" => "did you mean \"iso-8859-1\"?",
            "ansi" or "cp1252" or "1252" => "did you mean \"windows-1252\"?",
            "utf16" or "utf-16" or "unicode" => "did you mean \"utf-16le\"?",
            var other => NearestName.Mend(other, Encodings, "take one of these; if unsure try windows-1252."),
        };
        export.Faults.Error(FaultCodes.Dialect, export.PlaceOf("encoding"), $"encoding {Excerpt.Quoted(name)} is not known", $"one of: {all}", mend);
        return Encodings[0];
    }

    /// <summary>Fields are cut byte by byte, so these marks must be of one byte.</summary>
    private static char? Plain(TableReader export, string key, char? mark)
    {
        if (mark is null || char.IsAscii(mark.Value))
        {
            return mark;
        }

        export.Faults.Error(FaultCodes.Dialect, export.PlaceOf(key), $"{key} = {Excerpt.Quoted(mark.Value.ToString())}", "a plain mark such as ; , | or a tab", "look at the export again; curly quotes are no quotes here.");
        return null;
    }

    /// <summary>Two marks may not be the same; shown at the later one that the file gives.</summary>
    private static void Distinct(TableReader export, string key, char? mark, string otherKey, char other)
    {
        if (mark != other)
        {
            return;
        }

        Place one = export.PlaceOf(key);
        Place two = export.PlaceOf(otherKey);
        Place at = (one.Line, one.Column).CompareTo((two.Line, two.Column)) >= 0 ? one : two;
        string usual = export.Has(key) && export.Has(otherKey) ? "" : $" ({(export.Has(key) ? otherKey : key)} is left out and has its usual value)";
        export.Faults.Error(FaultCodes.Dialect, at, $"{key} and {otherKey} are both {Excerpt.Quoted(other.ToString())}{usual}", "two different marks", $"give {key} and {otherKey} as the export has them.");
    }

    private static (ImmutableArray<int> Headers, int Data) Rows(TableReader export)
    {
        if (export.Has("headerRow"))
        {
            export.NotHere("headerRows", "stands beside headerRow", "keep one of them.");
        }

        ImmutableArray<int> headers = export.Whole("headerRow", 0, LastRow, "(row; 0 when there is no header)") is { } one ? [one] : ShapeKeys.HeaderRows(export, LastRow) ?? [1];
        int header = headers is [.., int last] ? last : 0;
        int data = export.Whole("dataRow", 1, LastRow, "(row, counted from 1)") ?? header + 1;
        if (data <= header)
        {
            export.Faults.Error(FaultCodes.Order, export.PlaceOf("dataRow"), $"dataRow = {NumberKeys.Show(data)} is not after the header in row {NumberKeys.Show(header)}", "", "count the rows of the export from 1; headerRow = 0 means no header.");
        }

        return (headers, data);
    }
}
