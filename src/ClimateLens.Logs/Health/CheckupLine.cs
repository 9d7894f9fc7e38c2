namespace ClimateLens.Logs.Health;

/// <summary>One thing that was looked at, and how it stands.</summary>
/// <param name="Code">Stable code, for example <c>data.stale</c>; listed in docs/unattended.md.</param>
/// <param name="IsFine">False where someone should look.</param>
/// <param name="Text">What was found, as a plain sentence.</param>
/// <param name="Mend">What to do; empty where all is well.</param>
public sealed record CheckupLine(string Code, bool IsFine, string Text, string Mend)
{
    /// <summary>All is well.</summary>
    internal static CheckupLine Fine(string code, string text) => new(code, true, text, "");

    /// <summary>Someone should look.</summary>
    internal static CheckupLine Look(string code, string text, string mend) => new(code, false, text, mend);
}
