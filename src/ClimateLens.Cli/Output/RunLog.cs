using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using ClimateLens.Cli.Commands;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Cli.Output;

/// <summary>
/// A log file of JSON lines: one at the start, one for each house-week that a run made or failed to make, then one that sums the run up. All but the first are
/// written together at the end, so that runs side by side may share a file. They hold no time of day: the program looks at no clock.
/// </summary>
/// <param name="path">The file; lines are put behind those that it holds.</param>
internal sealed class RunLog(string path)
{
    private const int Tries = 200;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(25);

    private readonly Stopwatch _watch = Stopwatch.StartNew();

    /// <summary>Tells that a run starts: where nothing sums it up later, it was killed. Shows before the work that the file can be written.</summary>
    /// <exception cref="LogUnavailableException">It cannot.</exception>
    public void Open(Request request) => Append(Encoding.UTF8.GetBytes(Line(json =>
    {
        json.WriteString("event", "started");
        json.WriteString("command", request.Command);
        json.WriteString("nursery", request.NurseryPath);
    })));

    /// <summary>Writes the lines of a run.</summary>
    /// <exception cref="LogUnavailableException">The file cannot be written.</exception>
    public void Write(Request request, CommandResult result)
    {
        StringBuilder lines = new();
        foreach (HouseWeekLine line in result.HouseWeeks.Where(l => l.Status != "unchanged"))
        {
            lines.Append(Line(json =>
            {
                json.WriteString("event", "houseWeek");
                json.WriteString("house", line.Summary.House);
                json.WriteString("period", line.Summary.Period);
                json.WriteString("status", line.Status);
                WriteNumber(json, "riskHours", line.Summary.RiskHours);
                json.WriteNumber("hoursWithData", line.Summary.HoursWithData);
                json.WriteNumber("setAside", line.Summary.SetAside);
            }));
        }

        foreach ((string house, string period) in result.FailedWeeks)
        {
            lines.Append(Line(json =>
            {
                json.WriteString("event", "houseWeek");
                json.WriteString("house", house);
                json.WriteString("period", period);
                json.WriteString("status", "failed");
            }));
        }

        lines.Append(Line(json => Summarise(json, request, result)));
        Append(Encoding.UTF8.GetBytes(lines.ToString()));
    }

    private void Summarise(Utf8JsonWriter json, Request request, CommandResult result)
    {
        json.WriteString("event", "run");
        json.WriteString("command", request.Command);
        json.WriteString("nursery", request.NurseryPath);
        json.WriteNumber("exitCode", result.ExitCode);
        json.WriteNumber("made", result.HouseWeeks.Count(l => l.Status != "unchanged"));
        json.WriteNumber("unchanged", result.HouseWeeks.Count(l => l.Status == "unchanged"));
        json.WriteNumber("failed", result.FailedWeeks.Length);
        json.WriteNumber("filesRead", result.Imports.Length);
        json.WriteNumber("rowsSetAside", result.Imports.Sum(i => i.SetAside));
        json.WriteNumber("seconds", Math.Round(_watch.Elapsed.TotalSeconds, 1));
        json.WriteStartObject("problems");
        foreach (IGrouping<string, Problem> code in result.Problems.Where(p => p.Severity != Severity.Note).GroupBy(p => p.Code, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            json.WriteNumber(code.Key, code.Sum(p => p.Count));
        }

        json.WriteEndObject();
    }

    private static string Line(Action<Utf8JsonWriter> write)
    {
        using MemoryStream bytes = new();
        using (Utf8JsonWriter json = new(bytes))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private void Append(ReadOnlySpan<byte> lines)
    {
        for (int left = Tries; ; left--)
        {
            try
            {
                using FileStream file = new(path, FileMode.OpenOrCreate, FileAccess.Write, FileShare.None);
                file.Seek(0, SeekOrigin.End);
                file.Write(lines);
                return;
            }
            catch (IOException) when (left > 1 && File.Exists(path))
            {
                Thread.Sleep(Pause); // another run writes its lines
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
            {
                throw new LogUnavailableException(string.Create(CultureInfo.InvariantCulture, $"The log file {path} cannot be written: {e.Message}"), e);
            }
        }
    }
}

/// <summary>The log file cannot be written; exit code 73.</summary>
/// <param name="message">Which file, and why.</param>
/// <param name="cause">The system's own error.</param>
internal sealed class LogUnavailableException(string message, Exception cause) : Exception(message, cause);
