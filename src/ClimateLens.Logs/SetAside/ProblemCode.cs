using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.SetAside;

/// <summary>A kind of problem that the import reports; docs/problems.md lists them all.</summary>
/// <param name="Code">Stable code.</param>
/// <param name="Severity">What it takes away.</param>
/// <param name="Meaning">What it means, as a sentence.</param>
/// <param name="Mend">What the user can do, as a sentence.</param>
public sealed record ProblemCode(string Code, Severity Severity, string Meaning, string Mend)
{
    /// <summary>A problem of this kind.</summary>
    internal Problem In(string? file, int? line, int? column, string found, string expected, string? mend = null)
        => new(Code, Severity, file, line, column, found, expected, mend ?? Mend);
}
