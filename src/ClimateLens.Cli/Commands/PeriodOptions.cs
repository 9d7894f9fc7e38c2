using System.CommandLine;
using ClimateLens.Nursery.Time;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Cli.Commands;

/// <summary>A week, or from one day to another (the last day included).</summary>
internal sealed class PeriodOptions
{
    // The years for which sunrise and sunset are worked out.
    private const int FirstYear = 1900, LastYear = 2100;

    private readonly Option<string?> _week = new("--week") { Description = "ISO week.", HelpName = "2025-W42" };
    private readonly Option<string?> _from = new("--from") { Description = "First day.", HelpName = "2025-10-13" };
    private readonly Option<string?> _to = new("--to") { Description = "Last day, included.", HelpName = "2025-10-19" };

    /// <summary>Adds the options, with their checks, to a command.</summary>
    /// <param name="command">The command.</param>
    /// <param name="instead">An option that takes their place where it is given, or null.</param>
    public PeriodOptions(Command command, Option<string?>? instead = null)
    {
        command.Options.Add(_week);
        command.Options.Add(_from);
        command.Options.Add(_to);
        command.Validators.Add(result =>
        {
            CommonOptions.Given(result, _week, out string? week);
            CommonOptions.Given(result, _from, out string? from);
            CommonOptions.Given(result, _to, out string? to);
            if (instead is not null && result.GetResult(instead) is not null)
            {
                if (week is not null || from is not null || to is not null)
                {
                    result.AddError($"Give {instead.Name}, or a period, not both.");
                }
            }
            else if (Fault(week, from, to) is { } fault)
            {
                result.AddError(fault);
            }
        });
    }

    /// <summary>The period that was asked for.</summary>
    public Interval Of(ParseResult parsed, DateTimeZone zone)
    {
        if (parsed.GetValue(_week) is string week)
        {
            return OfWeek(week, zone);
        }

        TryDay(parsed.GetValue(_from)!, out LocalDate first);
        TryDay(parsed.GetValue(_to)!, out LocalDate last);
        return new Interval(zone.AtStartOfDay(first).ToInstant(), zone.AtStartOfDay(last.PlusDays(1)).ToInstant());
    }

    /// <summary>As many days before a day as from it on.</summary>
    public static (Interval Before, Interval After) Around(string day, int days, DateTimeZone zone)
    {
        LocalDate middle = TryDay(day, out LocalDate read) ? read : throw new ArgumentException($"\"{day}\" is no day.", nameof(day));
        Instant from = zone.AtStartOfDay(middle.PlusDays(-days)).ToInstant(), at = zone.AtStartOfDay(middle).ToInstant(), to = zone.AtStartOfDay(middle.PlusDays(days)).ToInstant();
        return (new Interval(from, at), new Interval(at, to));
    }

    /// <summary>What is wrong with a day; null for nothing.</summary>
    public static string? FaultOfDay(string option, string day) => TryDay(day, out _) ? null : $"{option} \"{day}\" is not a day such as 2025-10-13.";

    /// <summary>It in the user's words.</summary>
    public string Words(ParseResult parsed) => parsed.GetValue(_week) ?? $"{parsed.GetValue(_from)} to {parsed.GetValue(_to)}";

    /// <summary>A week that was checked before.</summary>
    public static Interval OfWeek(string week, DateTimeZone zone)
        => IsoWeek.TryParse(week, out IsoWeek iso) ? iso.In(zone) : throw new ArgumentException($"\"{week}\" is no ISO week.", nameof(week));

    /// <summary>What is wrong with a week; null for nothing.</summary>
    public static string? FaultOfWeek(string option, string week)
        => IsoWeek.TryParse(week, out _) ? null : $"{option} \"{week}\" is not an ISO week such as 2025-W42.";

    private static string? Fault(string? week, string? from, string? to)
    {
        if (week is not null)
        {
            return from is not null || to is not null ? "Give --week, or --from and --to, not both." : FaultOfWeek("--week", week);
        }

        if (from is null || to is null)
        {
            return "Give --week 2025-W42, or both --from and --to.";
        }

        return !TryDay(from, out LocalDate first) ? $"--from \"{from}\" is not a day such as 2025-10-13."
            : !TryDay(to, out LocalDate last) ? $"--to \"{to}\" is not a day such as 2025-10-19."
            : last < first ? "--to lies before --from."
            : null;
    }

    private static bool TryDay(string text, out LocalDate day) => LocalDatePattern.Iso.Parse(text).TryGetValue(default, out day) && day.Year is >= FirstYear and <= LastYear;
}
