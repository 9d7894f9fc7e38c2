using System.Reflection;
using ClimateLens.Logs.Health;

namespace ClimateLens.Cli.Output;

/// <summary>What <c>--version</c> says.</summary>
internal static class ProgramVersion
{
    private static readonly string Whole = typeof(ProgramVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "not known";

    /// <summary>Version number.</summary>
    public static string Number => Whole.Split('+')[0];

    /// <summary>Commit that the program was built from; empty where the build did not know it.</summary>
    private static string Commit => Whole.Contains('+', StringComparison.Ordinal) ? Whole[(Whole.IndexOf('+', StringComparison.Ordinal) + 1)..] : "";

    /// <summary>Version, commit and time-zone data, a line each.</summary>
    public static string Text => $"climatelens {Number}\ncommit {(Commit.Length == 0 ? "not known" : Commit)}\ntime-zone data {Machine.ZoneVersion}";
}
