using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Cells;

/// <summary>What a cell answers.</summary>
/// <param name="Sentence">The answer in one sentence, made from the numbers; empty only when <paramref name="Body"/> is plain words itself.</param>
/// <param name="Body">Figure, table or list.</param>
/// <param name="Method">How the numbers came about, in a sentence or two, or empty.</param>
public sealed record CellContent(string Sentence, Html Body, string Method = "")
{
    /// <summary>What stands folded below it.</summary>
    public Html Fold { get; init; }

    /// <summary>Nothing to say: the part is left out of the page.</summary>
    public static CellContent Nothing { get; } = new("", Html.Empty);

    /// <summary>The data do not carry an answer; says why in the part's place.</summary>
    public static CellContent Unanswered(string why) => new(why, Html.Empty);

    /// <summary>Whether the part is left out.</summary>
    public bool IsNothing => Sentence.Length == 0 && Body.IsEmpty;
}
