namespace ClimateLens.Nursery.Problems;

/// <summary>How much a problem takes away.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing is lost.</summary>
    Note,

    /// <summary>Something was set aside, skipped or assumed; the rest stands. Exit code 1.</summary>
    Warning,

    /// <summary>What was asked cannot be done until this is mended.</summary>
    Error,
}

/// <summary>
/// One fault in what a user gave us: where it stands, what was found, what was expected and how to mend it.
/// Bad data and bad settings are problems, never exceptions.
/// </summary>
/// <param name="Code">Stable code, for example <c>import.number</c>; listed in docs/problems.md.</param>
/// <param name="Severity">What it takes away.</param>
/// <param name="File">File as the user named it, relative to the nursery file where it lies beneath it.</param>
/// <param name="Line">1-based line, or null where no single line is meant.</param>
/// <param name="Column">1-based column (for text: character; for tables: field), or null.</param>
/// <param name="Found">What stands there, shortened and without control characters.</param>
/// <param name="Expected">What would have been right.</param>
/// <param name="Mend">What the user can do, as a plain sentence.</param>
public sealed record Problem(
    string Code,
    Severity Severity,
    string? File,
    int? Line,
    int? Column,
    string Found,
    string Expected,
    string Mend)
{
    /// <summary>How many rows share this problem (same code, file and field); 1 for a single one.</summary>
    public int Count { get; init; } = 1;

    /// <summary>One line for people: <c>file:line:column: severity: found; expected … Mend.</c></summary>
    public override string ToString()
    {
        string where = (File, Line, Column) switch
        {
            (null, _, _) => "",
            (_, null, _) => $"{File}: ",
            (_, _, null) => $"{File}:{Line}: ",
            _ => $"{File}:{Line}:{Column}: ",
        };
        string severity = Severity switch { Severity.Error => "error", Severity.Warning => "warning", _ => "note" };
        string expected = Expected.Length > 0 ? $"; expected {Expected}" : "";
        string count = Count > 1 ? $" ({Count} times)" : "";
        string mend = Mend.Length > 0 ? $" Mend: {Mend}" : "";
        return $"{where}{severity}: {Found}{expected}{count}.{mend} [{Code}]";
    }
}
