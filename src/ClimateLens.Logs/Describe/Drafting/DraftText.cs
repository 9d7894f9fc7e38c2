using System.Text;

namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>Writes drafts as the text of a nursery file: keys with what they rest on as remarks, questions marked <c># ASK</c>.</summary>
internal static class DraftText
{
    private const int RemarkColumn = 44;

    /// <summary>The text; every line ends in LF.</summary>
    public static string Of(IEnumerable<DraftExport> exports) => string.Join('\n', exports.Select(One));

    private static string One(DraftExport export)
    {
        var text = new StringBuilder();
        Remark(text, "", $"Drafted by climatelens describe from {export.Summary}");
        Remark(text, "", export.Questions > 0
            ? "Lines marked ASK wait for you: read the question, take the \"# \" away from the lines that are right, delete the others."
            : "\"sure\" and \"likely\" say how far each guess can be trusted; correct what is wrong.");
        text.Append("[[export]]\n");
        Keys(text, "", export.Keys);
        text.Append("\n  [export.time]\n");
        Keys(text, "  ", export.Time);
        foreach (DraftColumn column in export.Columns)
        {
            text.Append('\n');
            Column(text, column);
        }

        Tail(text, export);
        return text.ToString();
    }

    private static void Tail(StringBuilder text, DraftExport export)
    {
        if (!export.Unused.IsEmpty)
        {
            text.Append('\n');
            Remark(text, "  ", "Not used:");
            foreach (UnusedColumn unused in export.Unused)
            {
                string header = unused.Header.Length == 0 ? "without a name" : $"\"{unused.Header}\"";
                Remark(text, "  ", $"  column {unused.Position} {header}: {unused.Reason}");
            }
        }

        if (!export.Notes.IsEmpty)
        {
            text.Append('\n');
            foreach (string note in export.Notes)
            {
                Remark(text, "  ", $"Note: {note}");
            }
        }
    }

    private static void Keys(StringBuilder text, string indent, IEnumerable<DraftKey> keys)
    {
        foreach (DraftKey key in keys)
        {
            if (!key.IsAsked)
            {
                Line(text, $"{indent}{key.Key} = {key.Values[0]}", Said(key));
                continue;
            }

            Remark(text, indent, $"ASK {key.Key}: {key.Evidence}");
            foreach (string value in key.Values)
            {
                Remark(text, indent, $"{key.Key} = {value}");
            }

            if (key.Placeholder is { } placeholder)
            {
                Line(text, $"{indent}{key.Key} = {placeholder}", "delete this line when you have chosen");
            }
        }
    }

    private static void Column(StringBuilder text, DraftColumn column)
    {
        if (column.Sureness != Sureness.Unsure)
        {
            text.Append("  [[export.column]]\n");
            Keys(text, "  ", column.Keys);
            return;
        }

        foreach (DraftKey key in column.Keys.Where(k => k.IsAsked))
        {
            Remark(text, "  ", $"ASK {key.Key} of column {column.Position} \"{column.Header}\": {key.Evidence}");
        }

        Remark(text, "  ", "[[export.column]]");
        foreach (DraftKey key in column.Keys)
        {
            foreach (string value in key.Values)
            {
                Line(text, TomlText.Remark($"  # {key.Key} = {value}"), key.IsAsked ? key.Values.Length > 1 ? "one of these" : "if so" : Said(key));
            }
        }
    }

    private static string Said(DraftKey key)
        => key.Sureness is not { } sureness ? key.Evidence : key.Evidence.Length == 0 ? SurenessWords.Of(sureness) : $"{SurenessWords.Of(sureness)}: {key.Evidence}";

    private static void Line(StringBuilder text, string line, string remark)
        => text.Append(remark.Length == 0 ? line : $"{line.PadRight(RemarkColumn)} # {TomlText.Remark(remark)}").Append('\n');

    private static void Remark(StringBuilder text, string indent, string remark) => text.Append(indent).Append("# ").Append(TomlText.Remark(remark)).Append('\n');
}
