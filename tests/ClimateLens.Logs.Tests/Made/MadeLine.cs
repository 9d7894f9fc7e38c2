namespace ClimateLens.Logs.Tests.Made;

/// <summary>A line of a made file.</summary>
/// <param name="Text">The line.</param>
/// <param name="Rows">Rows of data that stand in it, or what is left of them; none for titles and the like.</param>
/// <param name="IsTorn">Whether it is spoilt.</param>
internal sealed record MadeLine(string Text, int[] Rows, bool IsTorn = false);
