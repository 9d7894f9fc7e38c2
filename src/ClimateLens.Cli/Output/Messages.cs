using System.Text;
using ClimateLens.Cli.Commands;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Cli.Output;

/// <summary>Messages to people, on stderr: problems, progress (on a terminal only) and details.</summary>
/// <param name="error">Where they go.</param>
/// <param name="request">How much is wanted.</param>
internal sealed class Messages(TextWriter error, Request request)
{
    // A file with a thousand bad rows has them all in its import sheet; a person needs the first few.
    private const int ProblemsShown = 20;

    private readonly bool _progress = !request.Quiet && !request.Json && !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb";

    /// <summary>Writes an error, always.</summary>
    public void Error(string text) => Line($"climatelens: {Plain(text)}");

    /// <summary>Writes a line unless quiet.</summary>
    public void Say(string text)
    {
        if (!request.Quiet)
        {
            Line(Plain(text));
        }
    }

    /// <summary>Writes a line when verbose.</summary>
    public void Detail(string text)
    {
        if (request.Verbose)
        {
            Line(text);
        }
    }

    /// <summary>All problems told so far, shown or not.</summary>
    public IReadOnlyList<Problem> Told => _told;

    /// <summary>What the command has done so far, for the result of one that stops midway.</summary>
    public Func<CommandResult, CommandResult> SoFar { get; set; } = result => result;

    /// <summary>What is to be done with the result of the command, also of one that stopped midway.</summary>
    public Action<CommandResult> AtEnd { get; set; } = _ => { };

    private readonly List<Problem> _told = [];

    // A run that nobody watches is quiet; what it says then reaches someone by mail of cron or the journal. These end in pages that lack something and mend by hand only.
    private static readonly HashSet<string> NeverQuiet = new(StringComparer.Ordinal) { "mail.failed", "import.noFiles", "import.empty", "import.headerOnly", "review.failed" };

    /// <summary>Writes problems: errors always, warnings unless quiet (but those that keep readings or letters from their place), notes when verbose.</summary>
    public void Problems(IReadOnlyList<Problem> problems, bool all = false)
    {
        _told.AddRange(problems);
        Problem[] shown = [.. problems.Where(p => p.Severity == Severity.Error || NeverQuiet.Contains(p.Code) || (!request.Quiet && (p.Severity == Severity.Warning || request.Verbose || all)))];
        int limit = all || request.Verbose ? int.MaxValue : ProblemsShown;
        foreach (Problem problem in shown.Take(limit))
        {
            Line(Plain(problem.ToString()));
        }

        if (shown.Length > limit)
        {
            Line($"… and {shown.Length - limit} more; --verbose or the check command lists them all.");
        }
    }

    /// <summary>Shows what goes on, on a terminal only; the next call or line takes its place.</summary>
    public void Progress(string text)
    {
        if (_progress)
        {
            error.Write($"\r\u001b[K{Plain(text)}");
            error.Flush();
            _progressShown = true;
        }
    }

    private bool _progressShown;

    /// <summary>Takes the progress line away.</summary>
    public void EndProgress()
    {
        if (_progressShown)
        {
            error.Write("\r\u001b[K");
            _progressShown = false;
        }
    }

    /// <summary>Text from files without control characters and those that turn the direction of text, so that no export can steer a terminal.</summary>
    public static string Plain(string text)
    {
        text = text.Replace('\t', ' ');
        if (!text.Any(Steers))
        {
            return text;
        }

        StringBuilder plain = new(text.Length);
        foreach (char c in text)
        {
            plain.Append(Steers(c) ? '\uFFFD' : c);
        }

        return plain.ToString();
    }

    // The explicit directional characters of the Unicode bidirectional algorithm (UAX 9, section 2).
    private static bool Steers(char c) => (char.IsControl(c) && c is not '\n') || c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u200E' or '\u200F' or '\u061C';

    private void Line(string text)
    {
        EndProgress();
        error.WriteLine(text);
    }
}
