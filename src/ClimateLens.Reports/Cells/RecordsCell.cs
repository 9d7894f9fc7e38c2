using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;

namespace ClimateLens.Reports.Cells;

/// <summary>The records that protect a crop, and their gaps.</summary>
public sealed class RecordsCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "records";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("Which records were kept, and what do they say?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["resistanceGroups"], Files = [DataFiles.Treatments, DataFiles.Groups, DataFiles.ScoutedBenches], Records = [RecordKind.Treatments] };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["records"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Review.Records is not { } records)
        {
            return CellContent.Unanswered(Phrase.Of("No record of the crop was read for this period."));
        }

        HtmlBuilder body = new();
        Kinds(body, records);
        body.Line($"<div class=\"screen\">"); // paper has the findings; the lists stand beside the page
        CareMarkup.Treatments(body, records);
        CareMarkup.Groups(body, records);
        CareMarkup.Floors(body, records);
        CareMarkup.Tanks(body, records);
        body.Line($"</div>");
        int rows = records.Kinds.Values.Sum(r => r.Count), kinds = records.Kinds.Values.Count(r => r.Count > 0);
        string inside = records.Reentry.IsEmpty ? "" : Phrase.Of($" {Words.Count(records.Reentry.Length, "row lies", "rows lie")} inside a re-entry time.");
        return new CellContent(
            Phrase.Of($"{Words.Count(rows, "row", "rows")} of {Words.Count(kinds, "kind of record", "kinds of record")} fall into this period.{inside}"),
            body.ToHtml(),
            Phrase.Of("Groups are counted as codes; this page recommends no product and no rate. The label, local codes and licensed practice rule."));
    }

    private static void Kinds(HtmlBuilder body, RecordsReport records)
    {
        PotTablesMarkup.Open(body, Phrase.Of("Records"), Phrase.Of("Records of the period"), Phrase.Of("Record"), Phrase.Of("Rows"), Phrase.Of("Gap"));
        foreach ((string kind, RecordCount record) in records.Kinds)
        {
            body.Line($"<tr><th scope=\"row\">{PlainNames.Of(kind)}</th><td>{record.Count}</td><td class=\"words\">{record.Note}</td></tr>");
        }

        PotTablesMarkup.Close(body);
    }
}
