using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Comparing;

/// <summary>How the comparison came about, for a sceptic.</summary>
public sealed class CompareMethodCell : ICompareCell
{
    /// <inheritdoc/>
    public string Name => "compareMethod";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("How was it compared?");

    /// <inheritdoc/>
    public CellContent Render(CompareContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        HtmlBuilder body = new();
        body.Line($"<ul>");
        body.Line($"<li>Means and differences are over the hours in which both sides have the quantity; nothing is filled in.</li>");
        body.Line($"<li>Range by chance: the mean differences of the days, drawn anew 2000 times in blocks (moving-block bootstrap, Künsch 1989); 5 to 95 %. With fewer than five days there is none, and nothing is called beyond chance. A week has seven days: such a range is rough.</li>");
        body.Line($"<li>What sensors may do: the stated accuracies of both, taken as unrelated and added as squares, carried over to VPD, water in the air and margin at the mean air. The margin's takes air and dew point from one sensor. A bias that both share cancels.</li>");
        body.Line($"<li>Risk hours: what sensors may do comes from the ranges of both pages, which also hold what is assumed of leaf, canopy and film; taken as unrelated, though some of it is shared.</li>");
        body.Line($"<li>Reviews: {Html.Name(context.FirstName)} from input {context.First.Provenance.InputHash[..12]}, {Html.Name(context.SecondName)} from input {context.Second.Provenance.InputHash[..12]}; {context.First.Provenance.Tool}.</li>");
        body.Line($"</ul>");
        return new CellContent(Phrase.Of("Each number stands beside what chance and what the sensors may have done to it."), body.ToHtml());
    }
}
