using ClimateLens.Cli.Output;
using ClimateLens.Logs;
using ClimateLens.Nursery.Problems;
using ClimateLens.Reports;

namespace ClimateLens.Cli.Commands;

/// <summary>Runs a command's work and turns what can go wrong into one clear message and an exit code.</summary>
internal static class Guard
{
    /// <summary>Runs the work and writes its result, whatever became of it.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="output">Where the result goes.</param>
    /// <param name="error">Where messages go.</param>
    /// <param name="work">The work.</param>
    /// <param name="write">Writes the result in a way of its own; null for the usual one.</param>
    /// <param name="log">Log file to write the result into as well, or null.</param>
    public static int Run(Request request, TextWriter output, TextWriter error, Func<Messages, CommandResult> work, Action<CommandResult>? write = null, RunLog? log = null)
    {
        Messages messages = new(error, request);
        CommandResult result = log is null ? Attempt(request, messages, work) : Logged(request, messages, work, log);
        messages.AtEnd(result);
        if (write is not null)
        {
            write(result);
        }
        else if (request.Json)
        {
            JsonResult.Write(output, request, result);
        }
        else if (!request.Quiet)
        {
            TextResult.Write(output, result);
        }

        return result.ExitCode;
    }

    private static CommandResult Logged(Request request, Messages messages, Func<Messages, CommandResult> work, RunLog log)
    {
        bool open = false;
        CommandResult result = Attempt(request, messages, m =>
        {
            log.Open(request);
            open = true;
            return work(m);
        });
        if (!open)
        {
            return result;
        }

        try
        {
            log.Write(request, result);
            return result;
        }
        catch (LogUnavailableException fault)
        {
            messages.Error(fault.Message);
            return result.ExitCode is ExitCode.Done or ExitCode.DoneWithLoss ? result with { ExitCode = ExitCode.CannotWrite } : result;
        }
    }

    private static CommandResult Attempt(Request request, Messages messages, Func<Messages, CommandResult> work)
    {
        try
        {
            return work(messages);
        }
        catch (NurseryFileException fault)
        {
            messages.Problems(fault.Problems);
            messages.Error($"{request.NurseryPath} cannot be used: {Count(fault.Problems, "fault")}. Nothing was imported or written.");
            return CommandResult.Failed(ExitCode.WrongNurseryFile, fault.Problems);
        }
        catch (Exception fault) when (IsOfMemory(fault))
        {
            const string Said = "There is not enough memory for this run. Give it more, or use --jobs 1; what was published stands, and the next run goes on from there.";
            messages.Error(Said);
            return Stopped(messages, ExitCode.NoMemory, new Problem("run.memory", Severity.Error, null, null, null, Said, "", ""));
        }
        catch (Exception fault) when (CodeOf(fault) is { } code)
        {
            messages.Error(fault.Message);
            return Stopped(messages, code, new Problem("run.stopped", Severity.Error, null, null, null, Messages.Plain(fault.Message), "", ""));
        }
#pragma warning disable CA1031 // The last resort of a program that nobody watches: say that it is a bug, and where.
        catch (Exception bug)
#pragma warning restore CA1031
        {
            messages.Error($"this is a bug in ClimateLens: {bug.GetType().Name}: {bug.Message}");
            messages.Detail(bug.ToString());
            return Stopped(messages, ExitCode.Bug, new Problem("run.bug", Severity.Error, null, null, null, Messages.Plain(bug.Message), "", "Report it with the output of --verbose."));
        }
    }

    /// <summary>The result of a command that stopped midway: what it did till then, and why it stopped.</summary>
    private static CommandResult Stopped(Messages messages, int code, Problem why) => messages.SoFar(CommandResult.Failed(code, [.. messages.Told, why]));

    /// <summary>Whether memory ran out, here or in work that was waited for.</summary>
    internal static bool IsOfMemory(Exception? fault)
        => fault is not null && (fault is OutOfMemoryException || (fault is AggregateException several ? several.InnerExceptions.Any(IsOfMemory) : IsOfMemory(fault.InnerException)));

    private static int? CodeOf(Exception fault) => fault switch
    {
        NoDataException or FileNotFoundException or DirectoryNotFoundException => ExitCode.NoData,
        StoreLockedException or PageHeldException => ExitCode.TryAgain,
        StoreUnavailableException or SiteUnavailableException or LogUnavailableException => ExitCode.CannotWrite,
        UnauthorizedAccessException or IOException => ExitCode.CannotRead,
        _ => null,
    };

    private static string Count(IReadOnlyList<Problem> problems, string noun)
    {
        int n = problems.Count(p => p.Severity == Severity.Error);
        return n == 1 ? $"1 {noun}" : $"{n} {noun}s";
    }
}

/// <summary>There is no data for what was asked; exit code 66.</summary>
/// <param name="message">What was asked, what there is, and what to do.</param>
internal sealed class NoDataException(string message) : Exception(message);
