using System.Globalization;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Cutting;
using ClimateLens.Logs.Describe.Numbers;

namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>The keys that say how the text is cut and how numbers are written.</summary>
internal static class DialectLines
{
    private const double MostlyRegular = 0.9;

    /// <summary>The keys, in the order of docs/nursery-file.md.</summary>
    public static IEnumerable<DraftKey> Of(Study study, FileNumbers numbers, FieldNames names)
    {
        Layout layout = study.Layout;
        foreach (DraftKey key in (DraftKey[])[.. study.File.IsWorkbook ? [] : Cut(study), .. Marks(numbers.Marks, layout.Cut.Delimiter)])
        {
            yield return key;
        }

        if (layout.Comment is char comment)
        {
            yield return DraftKey.Of("commentChar", TomlText.Quote($"{comment}"), Sureness.Likely, "lines of remarks begin with it");
        }

        foreach (DraftKey key in Rows(layout, names))
        {
            yield return key;
        }

        if (!numbers.Missing.Everywhere.IsEmpty)
        {
            yield return DraftKey.Of("missingValues", TomlText.List(numbers.Missing.Everywhere.Select(e => e.Text)), Sureness.Likely, numbers.Missing.Evidence());
        }
    }

    /// <summary>How text is cut; a workbook needs no such keys.</summary>
    private static IEnumerable<DraftKey> Cut(Study study)
    {
        CutGuess cut = study.Layout.Cut;
        yield return DraftKey.Of("encoding", TomlText.Quote(study.Encoding.Name), study.Encoding.Sureness, study.Encoding.Evidence);
        yield return cut.Widths.IsEmpty
            ? DraftKey.Of("delimiter", TomlText.Quote($"{cut.Delimiter}"), cut.Sureness, (cut.Delimiter == ' ' ? "one blank or more; " : "") + cut.Evidence)
            : DraftKey.Of("widths", $"[{string.Join(", ", cut.Widths)}]", cut.Sureness, cut.Evidence);
        if (cut.Quote != '"')
        {
            yield return DraftKey.Of("quoteChar", TomlText.Quote($"{cut.Quote}"), Sureness.Likely, "around most cells");
        }
    }

    private static IEnumerable<DraftKey> Marks(MarkGuess marks, char? delimiter)
    {
        if (marks.Decimal == "?")
        {
            string[] choices = [.. ((string[])[".", ","]).Where(mark => mark != $"{delimiter}").Select(TomlText.Quote)];
            yield return new DraftKey("decimalChar", [.. choices], Sureness.Unsure, $"which is the decimal mark? {marks.Evidence}") { Placeholder = "\"?\"" };
            yield break;
        }

        if (marks is { Sureness: Sureness.Unsure, Group: char unsure })
        {
            string mark = TomlText.Quote($"{unsure}");
            yield return new DraftKey("decimalChar", [TomlText.Quote(marks.Decimal), "\".,\""], Sureness.Unsure, $"does {mark} stand between thousands (then take groupChar too), or before decimals? {marks.Evidence}") { Placeholder = "\"?\"" };
            yield return new DraftKey("groupChar", [mark], Sureness.Unsure, "only if it stands between thousands");
            yield break;
        }

        yield return DraftKey.Of("decimalChar", TomlText.Quote(marks.Decimal), marks.Sureness, marks.Evidence);
        if (marks.Group is char group)
        {
            yield return DraftKey.Of("groupChar", TomlText.Quote($"{group}"), marks.Sureness, "between thousands");
        }
    }

    private static IEnumerable<DraftKey> Rows(Layout layout, FieldNames names)
    {
        if (layout.NamesLine == 0 || !layout.NamesFit)
        {
            yield return DraftKey.Of("headerRow", "0", layout.NamesLine == 0 ? Sureness.Likely : Sureness.Sure, layout.NamesLine == 0 ? "no line of names was found" : Invariant($"line {layout.NamesLine} has names, but not as many as the rows have cells"));
            yield return DraftKey.Of("dataRow", Invariant($"{layout.DataLine}"), Sureness.Sure, "the first row of data");
            yield break;
        }

        int last = Math.Max(layout.NamesLine, names.UsesGroups ? layout.GroupsLine : 0);
        yield return names.UsesGroups
            ? DraftKey.Of("headerRows", Invariant($"[{layout.GroupsLine}, {layout.NamesLine}]"), Sureness.Sure, "only both lines together tell the columns apart")
            : DraftKey.Of("headerRow", Invariant($"{layout.NamesLine}"), Sureness.Sure, layout.Titles.IsEmpty ? "" : Invariant($"{layout.Titles.Length} lines of titles above"));
        if (layout.DataLine != last + 1)
        {
            yield return DraftKey.Of("dataRow", Invariant($"{layout.DataLine}"), Sureness.Sure, layout.UnitsLine > 0 ? Invariant($"line {layout.UnitsLine} has the units") : "the first row of data");
        }
    }

    /// <summary>The step between readings, where the file keeps to one.</summary>
    public static DraftKey? Step(TimeGuess time)
    {
        (long micros, double share) = time.Order.UsualStep();
        bool regular = share >= MostlyRegular && micros % 1_000_000 == 0 && micros is > 0 and <= 86_400_000_000 && time.Order.Count > 3;
        return regular ? DraftKey.Of("stepMinutes", TomlText.Number(micros / 60e6), share > 0.98 ? Sureness.Sure : Sureness.Likely, Invariant($"{share * 100:0.#} % of the steps")) : null;
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
