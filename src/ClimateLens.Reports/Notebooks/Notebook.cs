using System.Collections.Immutable;

namespace ClimateLens.Reports.Notebooks;

/// <summary>A notebook: prose and cells in the order in which a page shows them.</summary>
/// <param name="Name">Its file's name without the ending: letters, digits, '-' and '_'.</param>
/// <param name="File">Its file, for messages.</param>
/// <param name="Title">What people read.</param>
/// <param name="For">What it is a page of.</param>
/// <param name="Parts">Prose and cells.</param>
public sealed record Notebook(string Name, string File, string Title, NotebookKind For, ImmutableArray<NotebookPart> Parts)
{
    /// <summary>Whether its page is the folder's own: the one that has the name of its kind.</summary>
    public bool IsMain => Name == For switch { NotebookKind.HouseWeek => "week", NotebookKind.HousesWeek => "compare", _ => "season" };

    /// <summary>Name of its page in a folder of its own.</summary>
    public string PageName => IsMain ? "index.html" : $"{Name}.html";

    /// <summary>Whether it came with the program.</summary>
    public bool BuiltIn { get; init; }

    /// <summary>Hash of its text: an unchanged notebook over an unchanged review is not rendered again.</summary>
    public string Hash { get; init; } = "";
}

/// <summary>What a notebook is a page of.</summary>
public enum NotebookKind
{
    /// <summary>One house over one period: <c>house week</c>.</summary>
    HouseWeek,

    /// <summary>Two houses, or one house in two periods: <c>houses week</c>.</summary>
    HousesWeek,

    /// <summary>One house over all its weeks: <c>house season</c>.</summary>
    HouseSeason,
}

/// <summary>A part of a notebook.</summary>
/// <param name="Line">1-based line in its file.</param>
public abstract record NotebookPart(int Line);

/// <summary>Markdown between cells, with <c>{{ … }}</c> for values.</summary>
/// <param name="Line">First line.</param>
/// <param name="Markdown">Its text.</param>
public sealed record ProsePart(int Line, string Markdown) : NotebookPart(Line);

/// <summary>A cell.</summary>
/// <param name="Line">Line of its fence.</param>
/// <param name="Cell">Name of the cell.</param>
/// <param name="Values">Its parameters.</param>
public sealed record CellPart(int Line, string Cell, CellValues Values) : NotebookPart(Line);
