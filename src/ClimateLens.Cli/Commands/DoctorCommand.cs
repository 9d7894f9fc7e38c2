using System.Collections.Immutable;
using System.CommandLine;
using ClimateLens.Logs;
using ClimateLens.Logs.Health;
using ClimateLens.Nursery.Settings;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Cli.Commands;

/// <summary><c>doctor NURSERY</c>: what a run that nobody watches depends on. The only command that looks at the clock.</summary>
internal static class DoctorCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        Command command = new("doctor", """
            Look at what a run that nobody watches depends on: disk and rights, clock and time zones, the lock, houses that have sent nothing,
            growth of what is set aside, exports without a file, weeks without a page, letters that wait. Changes nothing. Ends with 1 when someone should look.

            Example: climatelens doctor sample-logs/nursery.toml --stale 8
            """);
        CommonOptions common = new(command);
        Option<int> stale = NumberOption.Whole("--stale", Checkup.UsualStaleDays, 1, int.MaxValue, "--stale is a number of days, 1 or more.");
        (stale.Description, stale.HelpName) = ("Days without a reading after which a house counts as silent; 8 or more where exports come weekly.", "DAYS");
        Option<string?> now = new("--now") { Description = "Time to take for the clock's, in UTC.", HelpName = "2025-10-27T06:00:00Z", Hidden = true };
        command.Options.Add(stale);
        command.Options.Add(now);
        command.Validators.Add(result =>
        {
            if (CommonOptions.Given(result, now, out string? time) && !InstantPattern.General.Parse(time!).Success)
            {
                result.AddError($"--now \"{time}\" is not a time such as 2025-10-27T06:00:00Z.");
            }
        });
        command.SetAction(parsed =>
        {
            Request request = common.Read(parsed);
            Instant time = parsed.GetValue(now) is { } given ? InstantPattern.General.Parse(given).Value : SystemClock.Instance.GetCurrentInstant();
            return Guard.Run(request, output, error, _ => Run(request, Machine.Here(time), parsed.GetValue(stale)));
        });
        return command;
    }

    private static CommandResult Run(Request request, Machine machine, int staleDays)
    {
        NurserySettings nursery = NurseryFileReader.Read(request.NurseryPath);
        string site = Session.SiteFolderOf(request, nursery);
        ImmutableArray<CheckupLine> lines = [.. Checkup.Of(nursery, Session.FolderOf(request.NurseryPath), site, machine, staleDays), .. PagesCheck.Of(request, site, staleDays), .. LastRun.Of(nursery, Session.FolderOf(request.NurseryPath))];
        int faults = lines.Count(l => !l.IsFine);
        return new CommandResult(faults == 0 ? ExitCode.Done : ExitCode.DoneWithLoss, [], [], [], null)
        {
            Checkup = lines,
            Summary = faults == 0 ? "All is well." : $"{(faults == 1 ? "1 thing" : $"{faults} things")} to look at.",
        };
    }
}
