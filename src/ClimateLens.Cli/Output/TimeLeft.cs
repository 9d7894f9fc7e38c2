using System.Diagnostics;
using System.Globalization;

namespace ClimateLens.Cli.Output;

/// <summary>How long a run of many pages still takes, for its progress line: what is left at the pace so far, pages that stand counted with those that are made.</summary>
/// <param name="total">How many there are.</param>
internal sealed class TimeLeft(int total)
{
    private const int FewestDone = 3;
    private static readonly TimeSpan Shortest = TimeSpan.FromSeconds(3);

    private readonly Stopwatch _watch = Stopwatch.StartNew();

    /// <summary>Where the run is: <c> (12 of 520, about 4 min left)</c>, without a time until the pace is known.</summary>
    /// <param name="begun">How many are begun.</param>
    /// <param name="done">How many are done.</param>
    public string Of(int begun, int done) => string.Create(CultureInfo.InvariantCulture, $" ({begun} of {total}{Words(done, total, _watch.Elapsed)})");

    /// <summary>The time left in words, with a comma before them; empty until the pace is known.</summary>
    internal static string Words(int done, int total, TimeSpan elapsed)
    {
        if (done < FewestDone || elapsed < Shortest)
        {
            return "";
        }

        double seconds = elapsed.TotalSeconds * (total - done) / done;
        return seconds switch
        {
            < 10 => ", a few seconds left",
            < 95 => string.Create(CultureInfo.InvariantCulture, $", about {10 * Math.Round(seconds / 10):0} s left"),
            < 3570 => string.Create(CultureInfo.InvariantCulture, $", about {Math.Round(seconds / 60):0} min left"),
            _ => string.Create(CultureInfo.InvariantCulture, $", about {Math.Floor(Math.Round(seconds / 600) / 6):0} h {10 * (Math.Round(seconds / 600) % 6):0} min left"),
        };
    }
}
