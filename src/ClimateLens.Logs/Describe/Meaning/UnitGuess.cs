using System.Collections.Immutable;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>The unit of a column.</summary>
/// <param name="Codes">The code; several where the user is asked.</param>
/// <param name="Sureness">How sure.</param>
/// <param name="Evidence">Why.</param>
internal sealed record UnitGuess(ImmutableArray<string> Codes, Sureness Sureness, string Evidence)
{
    /// <summary>A unit.</summary>
    public static UnitGuess Is(string code, Sureness sureness, string evidence) => new([code], sureness, evidence);

    /// <summary>A question.</summary>
    public static UnitGuess Ask(string evidence, params string[] codes) => new([.. codes], Sureness.Unsure, evidence);
}
