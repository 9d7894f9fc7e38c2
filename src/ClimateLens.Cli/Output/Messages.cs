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

    private readonly List<Problem> _told = [];

    /// <summary>Writes problems: errors always, warnings unless quiet, notes when verbose.</summary>
    public void Problems(IReadOnlyList<Problem> problems, bool all = false)
    {
        _told.AddRange(problems);
        Problem[] shown = [.. problems.Where(p => p.Severity == Severity.Error || (!request.Quiet && (p.Severity == Severity.Warning || request.Verbose || all)))];
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

    /// <summary>Text from files without control characters, so that no export can steer a terminal.</summary>
    public static string Plain(string text)
    {
        text = text.Replace('\t', ' ');
        if (!text.Any(c => char.IsControl(c) && c is not '\n'))
        {
            return text;
        }

        StringBuilder plain = new(text.Length);
        foreach (char c in text)
        {
            plain.Append(char.IsControl(c) && c is not '\n' ? '\uFFFD' : c);
        }

        return plain.ToString();
    }

    private void Line(string text)
    {
        EndProgress();
        error.WriteLine(text);
    }
}
