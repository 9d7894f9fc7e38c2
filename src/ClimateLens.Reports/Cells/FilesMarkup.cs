using System.Globalization;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>What the import found in each file behind the page: one line a file, the rest folded.</summary>
internal static class FilesMarkup
{
    private const int LinesNamed = 8, GapsNamed = 5;

    /// <summary>The part, or nothing when no file is known.</summary>
    public static void Write(HtmlBuilder body, CellContext context)
    {
        if (context.Review.Imports.IsEmpty)
        {
            return;
        }

        body.Line($"<h3>Files read</h3><p>{Sentence(context.Review)}</p>");
        foreach (ImportedFile file in context.Review.Imports)
        {
            File(body, file, context);
        }

    }

    private static string Sentence(Review review)
    {
        int read = review.Imports.Sum(f => f.RowsRead), aside = review.Imports.Sum(f => f.SetAside);
        string kept = aside == 0
            ? Phrase.Of("None was set aside.")
            : Phrase.Of($"{Thousands(aside)} {(aside == 1 ? Phrase.Of("is") : Phrase.Of("are"))} set aside; the command \u201Cset-aside\u201D lists {(aside == 1 ? Phrase.Of("it with its reason") : Phrase.Of("them with their reasons"))}, and a new import takes up what was corrected.");
        return Phrase.Of($"{Words.Count(review.Imports.Length, "file", "files")} with {Thousands(read)} {(read == 1 ? Phrase.Of("row") : Phrase.Of("rows"))}. {kept}");
    }

    private static void File(HtmlBuilder body, ImportedFile file, CellContext context)
    {
        string aside = file.SetAside == 0 ? "" : Phrase.Of($", {Thousands(file.SetAside)} set aside");
        body.Line($"<details class=\"sheet\"><summary>{Html.Name(file.File)}: {Thousands(file.RowsRead)} {(file.RowsRead == 1 ? Phrase.Of("row") : Phrase.Of("rows"))} read{aside}</summary>");
        body.Line($"<ul>");
        body.Line($"<li>{Html.Name(file.Source)}: {Thousands(file.RowsRead)} rows read = {Thousands(file.Accepted)} accepted + {Thousands(file.SetAside)} set aside + {Thousands(file.Duplicates)} repeated + {Thousands(file.Blank)} blank</li>");
        if (file is { First: { } first, Last: { } last })
        {
            body.Line($"<li>from {LocalTimes.DayAndYear(first.Date)} {LocalTimes.Clock(first)} to {LocalTimes.DayAndYear(last.Date)} {LocalTimes.Clock(last)}{Step(file.Found)}</li>");
        }

        if (file.Found is { } found)
        {
            Found(body, found, context.Review);
        }
        else
        {
            body.Line($"<li>What else the import found is not known: the store has no sheet of this file.</li>");
        }

        body.Line($"</ul>");
        Values(body, file, context.Units);
        body.Line($"</details>");
    }

    private static void Found(HtmlBuilder body, FileFindings found, Review review)
    {
        foreach (SetAsideReason reason in found.Reasons)
        {
            body.Line($"<li>{ReasonWords.Of(reason)}: {Lines(reason)}</li>");
        }

        if (found is { GapCount: > 0 and { } gaps, GapHours: { } hours })
        {
            body.Line($"<li>{Words.Count(gaps, "gap", "gaps")} of {DisplayUnits.Number(hours, 1)} h in all: {Gaps(found)}</li>");
        }

        if (found.UnusedColumnCount > 0)
        {
            string more = found.UnusedColumnCount > found.UnusedColumns.Length ? Phrase.Of($" and {found.UnusedColumnCount - found.UnusedColumns.Length} more") : "";
            body.Line($"<li>columns not taken: {Html.Name(string.Join(", ", found.UnusedColumns))}{more}</li>");
        }

        ImportDialect d = found.Dialect;
        string formats = string.Join(", ", found.TimeFormats.Select(f => found.TimeFormats.Length == 1 ? f.Format : $"{f.Format} ({Words.Count(f.Rows, "row", "rows")})"));
        string group = d.GroupChar.Length > 0 ? Phrase.Of($", {Mark(d.GroupChar)} between thousands") : "";
        body.Line($"<li>read as {d.Encoding}, {Mark(d.Delimiter)} between fields, {Mark(d.DecimalChar)} as decimal mark{group}; times as {Html.Name(formats.Length > 0 ? formats : Phrase.Of("none"))}</li>");
        if (found.Clock is { } clock)
        {
            bool said = review.Clocks.Any(c => (c.Check.Verdict, c.Check.Channel, c.Check.Sensor, c.Check.Days) == (clock.Verdict, clock.Channel, clock.Sensor, clock.Days));
            body.Line($"<li>{(said ? Html.Text(Phrase.Of("its clock: see above")) : Html.English(clock.Sentence))}</li>");
        }
    }

    private static void Values(HtmlBuilder body, ImportedFile file, DisplayUnits units)
    {
        if (file.Found is not { Channels.IsEmpty: false } found)
        {
            return;
        }

        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Values of {file.File}, scrolls sideways\" tabindex=\"0\"><table class=\"data\"><caption>Values of the file</caption>");
        body.Line($"<thead><tr><th scope=\"col\">Channel</th><th scope=\"col\">Lowest</th><th scope=\"col\">Median</th><th scope=\"col\">Highest</th><th scope=\"col\">Unit</th><th scope=\"col\">Values</th><th scope=\"col\">Missing</th></tr></thead><tbody>");
        foreach (ChannelSummary channel in found.Channels)
        {
            ChannelNumbers numbers = new(channel, units);
            Html sensor = channel.Sensor.Length == 0 ? Html.Empty : HtmlBuilder.Of($", {Html.Name(channel.Sensor)}");
            body.Line($"<tr><th scope=\"row\">{PlainNames.Of(channel.Channel)}{sensor}</th><td>{numbers.Show(channel.Min)}</td><td>{numbers.Show(channel.Median)}</td><td>{numbers.Show(channel.Max)}</td><td>{numbers.Unit}</td><td>{Thousands(channel.Count)}</td><td>{Missing(channel.MissingShare)}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
    }

    private static string Step(FileFindings? found)
    {
        if (found is not { StepSeconds: { } seconds, StepShare: { } share })
        {
            return "";
        }

        string step = seconds % 60 == 0 ? Phrase.Of($"{Words.Whole(seconds / 60)} min") : $"{Words.Whole(seconds)} s";
        return share >= 0.9995 ? Phrase.Of($", a row every {step}") : Phrase.Of($", a row every {step} ({Percent(share)} of the steps)");
    }

    private static string Lines(SetAsideReason reason)
    {
        string lines = string.Join(", ", reason.Lines.Take(LinesNamed).Select(Words.Whole));
        string more = reason.Count > Math.Min(LinesNamed, reason.Lines.Length) ? Phrase.Of(" and more") : "";
        return $"{(reason.Count == 1 ? Phrase.Of("line") : Phrase.Of("lines"))} {lines}{more}";
    }

    private static string Gaps(FileFindings found)
    {
        FoundGap[] longest = [.. found.LongestGaps.OrderByDescending(g => g.Hours).Take(GapsNamed).OrderBy(g => g.After.ToInstant())];
        string named = string.Join("; ", longest.Select(g => Phrase.Of($"{LocalTimes.Moment(g.After)} to {LocalTimes.Moment(g.Before)}")));
        return found.GapCount > longest.Length ? Phrase.Of($"the longest {named}") : named;
    }

    private static string Missing(double share) => share == 0 ? Phrase.Of("none") : Percent(share);

    /// <summary>A share in per cent; one that is nearly none or nearly all is not rounded to it.</summary>
    private static string Percent(double share) => share switch
    {
        1 => "100\u00A0%",
        < 0.001 => Phrase.Of("under 0.1\u00A0%"),
        > 0.999 => Phrase.Of("all but 0.1\u00A0%"),
        _ => $"{DisplayUnits.Number(share * 100, share is < 0.1 or > 0.9 ? 1 : 0)}\u00A0%",
    };

    private static string Mark(string mark) => mark switch
    {
        "\t" => Phrase.Of("tab"),
        " " => Phrase.Of("blank"),
        ";" => Phrase.Of("semicolon"),
        "," => Phrase.Of("comma"),
        "." => Phrase.Of("point"),
        "|" => Phrase.Of("bar"),
        "" => Phrase.Of("none"),
        _ => mark,
    };

    private static string Thousands(int number) => number.ToString("#,0", CultureInfo.InvariantCulture).Replace(",", Language.Current.GroupMark, StringComparison.Ordinal);
}
