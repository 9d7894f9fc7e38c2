using System.Collections.Immutable;

namespace ClimateLens.Logs.Describe.Cutting;

/// <summary>How the lines of a file are cut.</summary>
/// <param name="Cutter">Cuts them.</param>
/// <param name="Delimiter">Between cells; a blank stands for one or more; null where widths cut.</param>
/// <param name="Widths">Width of each cell, or empty. [characters]</param>
/// <param name="Quote">Around cells.</param>
/// <param name="Fields">Cells of most lines.</param>
/// <param name="Sureness">How sure.</param>
/// <param name="Evidence">Why.</param>
internal sealed record CutGuess(Cutter Cutter, char? Delimiter, ImmutableArray<int> Widths, char Quote, int Fields, Sureness Sureness, string Evidence);
