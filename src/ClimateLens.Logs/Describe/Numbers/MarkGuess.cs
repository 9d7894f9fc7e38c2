namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>The decimal and group marks of a file or of a column.</summary>
/// <param name="Decimal">"." or "," or, where both are decimal marks, ".,".</param>
/// <param name="Group">Mark between groups of three digits, or null.</param>
/// <param name="Sureness">How sure.</param>
/// <param name="Evidence">Why.</param>
internal sealed record MarkGuess(string Decimal, char? Group, Sureness Sureness, string Evidence);
