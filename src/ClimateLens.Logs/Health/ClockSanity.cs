using System.Globalization;
using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Settings;
using NodaTime;

namespace ClimateLens.Logs.Health;

/// <summary>The system clock against the newest reading and against the age of the time-zone data.</summary>
internal static class ClockSanity
{
    /// <summary>A reading may lie this much ahead: a logger left on summer time, and a little drift. Common practice, no source.</summary>
    private static readonly Duration Ahead = Duration.FromMinutes(70);

    /// <summary>Time-zone data older than this many years are told of. Common practice, no source. [a]</summary>
    private const int OldYears = 3;

    public static IEnumerable<CheckupLine> Of(NurserySettings nursery, Ledger ledger, Machine machine)
    {
        string version = machine.ZoneData;
        int year = machine.Now.InUtc().Year;
        int? made = int.TryParse(version.AsSpan(0, Math.Min(4, version.Length)), NumberStyles.None, CultureInfo.InvariantCulture, out int of) ? of : null;
        string now = Freshness.Local(machine.Now, nursery);
        yield return Clock(nursery, ledger, machine, made, now);
        yield return made is { } old && year - old > OldYears
            ? CheckupLine.Look("zones.version", $"Time-zone data are version {version}; rules that changed since are not known.", "Install a newer version of the program if clock changes of your zone were altered since.")
            : CheckupLine.Fine("zones.version", $"Time-zone data are version {version}.");
    }

    private static CheckupLine Clock(NurserySettings nursery, Ledger ledger, Machine machine, int? made, string now)
    {
        if (made is { } zones && machine.Now.InUtc().Year < zones)
        {
            return CheckupLine.Look("clock", $"The system clock says {now}, which is before the program's time-zone data ({zones}) were made: it is far behind.", "Set the clock of the machine.");
        }

        (string house, Instant newest)? last = Freshness.Sources(ledger).Select(s => ((string, Instant)?)(s.House, s.Last)).MaxBy(s => s?.Item2);
        return last is { } reading && reading.newest > machine.Now + Ahead
            ? CheckupLine.Look("clock", $"The system clock says {now}, before the newest reading of {Freshness.NameOf(nursery, reading.house)} ({Freshness.Local(reading.newest, nursery)}).",
                "Set the clock of the machine if it is wrong; else look at the logger's clock and at timeZone and the date format of its export.")
            : CheckupLine.Fine("clock", $"The system clock says {now}.");
    }
}
