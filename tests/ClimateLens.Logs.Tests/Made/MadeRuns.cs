using System.Globalization;

namespace ClimateLens.Logs.Tests.Made;

/// <summary>
/// How many made exports a test tries: few in CI; by hand MADE_EXPORTS says how many, MADE_SEED which is the first, MADE_LOG where to write what
/// became of them, and MADE_KEEP the folder for those that did not come back whole.
/// </summary>
internal static class MadeRuns
{
    private const int InCi = 60;

    /// <summary>How many.</summary>
    public static int Count => Number("MADE_EXPORTS", InCi);

    /// <summary>The first.</summary>
    public static int First => Number("MADE_SEED", 1);

    /// <summary>Writes what became of them, where that is asked for.</summary>
    public static void Log(IEnumerable<string> parts)
    {
        if (Environment.GetEnvironmentVariable("MADE_LOG") is { } log)
        {
            File.WriteAllText(log, string.Join("\n\n", parts));
        }
    }

    /// <summary>Keeps an export, where that is asked for.</summary>
    public static void Keep(int seed, MadeExport made)
    {
        if (Environment.GetEnvironmentVariable("MADE_KEEP") is { } folder)
        {
            Directory.CreateDirectory(folder);
            File.WriteAllBytes(Path.Combine(folder, $"{seed}-{made.FileName}"), made.Bytes);
        }
    }

    private static int Number(string variable, int usual)
        => int.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out int number) ? number : usual;
}
