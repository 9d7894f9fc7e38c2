using System.Collections.Immutable;
using System.CommandLine;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Cli.Mail;
using ClimateLens.Cli.Output;
using ClimateLens.Logs;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.Reports;
using MimeKit;
using NodaTime;

namespace ClimateLens.Cli.Commands;

/// <summary><c>run NURSERY</c>: import what is new, review what changed, publish.</summary>
internal static class RunCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        Command command = new("run", """
            Import what is new, review every whole week of each house that changed, and publish the pages. With --house and --week: make that
            one page out of what was imported, beside other runs that make others; plan lists them, and finish then makes the index.

            Example: climatelens run sample-logs/nursery.toml
            """);
        CommonOptions common = new(command);
        Option<string?> house = new("--house") { Description = "Only this house; with --week.", HelpName = "ID" };
        Option<string?> week = new("--week") { Description = "Only this ISO week; with --house.", HelpName = "2025-W42" };
        Option<int> jobs = NumberOption.Whole("--jobs", Environment.ProcessorCount, 1, int.MaxValue, "--jobs is a number of reviews, 1 or more.");
        (jobs.Description, jobs.HelpName) = ("Reviews worked out side by side (default: as many as the machine has processors); each holds its weeks in memory.", "N");
        command.Options.Add(house);
        command.Options.Add(week);
        Option<string?> log = new("--log") { Description = "Put a line of JSON for each page made or failed, and one that sums up the run, behind this file.", HelpName = "FILE" };
        command.Options.Add(jobs);
        Option<string?> mail = new("--mail")
        {
            Description = "Send the newest week of each house that this run made: its first screen, with the page attached. The server comes from the environment (docs/unattended.md).",
            HelpName = "ADDRESS,…",
        };
        command.Options.Add(log);
        command.Options.Add(mail);
        command.Validators.Add(result =>
        {
            if (CommonOptions.Given(result, log, out string? logFile) && logFile!.Trim().Length == 0)
            {
                result.AddError("--log needs a file name.");
            }

            if (CommonOptions.Given(result, mail, out string? addresses) && Postman.Parse(addresses!, out _) is { } mailFault)
            {
                result.AddError(mailFault);
            }

            bool ofHouse = CommonOptions.Given(result, house, out _), ofWeek = CommonOptions.Given(result, week, out string? weekText);
            if (ofHouse != ofWeek)
            {
                result.AddError("--house and --week go together.");
            }
            else if (ofHouse && result.GetResult(mail) is not null)
            {
                result.AddError("--mail goes with a whole run, not with --house and --week.");
            }
            else if (ofWeek && PeriodOptions.FaultOfWeek("--week", weekText!) is { } fault)
            {
                result.AddError(fault);
            }

            if (ofHouse && result.GetResult(jobs) is { Implicit: false })
            {
                result.AddError("--jobs is of no use with --house and --week, which make one page.");
            }
        });
        command.SetAction(parsed =>
        {
            Request request = common.Read(parsed);
            return Guard.Run(request, output, error, messages => parsed.GetValue(house) is { } id && IsoWeek.TryParse(parsed.GetValue(week), out IsoWeek one)
                ? OneHouseWeek.Run(request, messages, id, one)
                : Run(request, messages, parsed.GetValue(jobs), parsed.GetValue(mail)), log: parsed.GetValue(log) is { } file ? new RunLog(file) : null);
        });
        return command;
    }

    private static CommandResult Run(Request request, Messages messages, int jobs, string? mail)
    {
        using Session session = Session.OpenWithSite(request, messages);
        messages.AtEnd = result => LastRun.Keep(ReadingStore.FolderOf(session.Nursery, Session.FolderOf(request.NurseryPath)), result);
        ImportReport imported = session.Import();
        List<(string House, string Period)> failed = [];
        HashSet<string> renewed = [];
        messages.SoFar = stopped => stopped with { Imports = imported.Sheets, HouseWeeks = [.. LinesOf(session, renewed).Where(line => line.Status == "new")], FailedWeeks = [.. failed] };
        Outbox? outbox = mail is null ? null : new Outbox(session);
        if (session.Site.RunKey != session.RunKey)
        {
            foreach (HouseSettings house in session.Nursery.Houses.Where(h => WeeksOf(session, h).Count == 0))
            {
                session.Report([NoWeek(session, house)]);
            }

            while (!ReviewAll(session, messages, jobs, outbox, renewed, failed))
            {
            }

            session.Report(Unfinished.Of(session, messages));
            session.Report([.. LeftBehind.Of(session)]);
        }

        ImmutableArray<HouseWeekLine> lines = LinesOf(session, renewed);
        if (lines.IsEmpty)
        {
            throw new NoDataException("no house has a whole week of readings yet, so there is nothing to review. " + Extents(session));
        }

        int sent = 0;
        if (outbox is not null && Postman.Parse(mail!, out IReadOnlyList<MailboxAddress> to) is null)
        {
            sent = outbox.Send(to, renewed, Environment.GetEnvironmentVariable);
        }

        return new CommandResult(session.AnythingLost ? ExitCode.DoneWithLoss : ExitCode.Done, session.Problems, imported.Sheets, lines, session.SiteIndex)
        {
            FailedWeeks = [.. failed],
            Summary = (renewed.Count, sent) switch
            {
                (0, 0) when failed.Count > 0 => "",
                (0, 0) => "Nothing new: all pages are as they were.",
                (_, 0) => "",
                (_, 1) => "1 letter was sent.",
                _ => $"{sent} letters were sent.",
            },
        };
    }

    private static ImmutableArray<HouseWeekLine> LinesOf(Session session, HashSet<string> renewed)
        => [.. session.Site.Summaries.Select(s => new HouseWeekLine(s, renewed.Contains(s.Page) ? "new" : "unchanged"))];

    /// <summary>Looks at every week and makes what is to be made; false where a damaged part had to be built again meanwhile, which weeks that were passed before may look at too.</summary>
    private static bool ReviewAll(Session session, Messages messages, int jobs, Outbox? outbox, HashSet<string> renewed, List<(string House, string Period)> failed)
    {
        failed.Clear();
        string seen = session.Store.Version;
        bool complete = true;
        SemaphoreSlim slots = new(jobs);
        ThreadPool.GetMinThreads(out int threads, out int ports); // while reviews keep them all, the pool makes others at two a second: too few to flush files side by side
        ThreadPool.SetMinThreads(Math.Max(threads, jobs + SitePublisher.FilesAtOnce), ports);
        (HouseSettings House, IReadOnlyList<IsoWeek> Weeks)[] houses = [.. session.Nursery.Houses.Select(house => (house, WeeksOf(session, house)))];
        TimeLeft timeLeft = new(houses.Sum(h => h.Weeks.Count));
        int begun = 0;
        Queue<PendingPage> ahead = []; // pages are made side by side and told of in order
        try
        {
            foreach ((HouseSettings house, IReadOnlyList<IsoWeek> weeks) in houses)
            {
                IsoWeek? toSend = outbox is null ? null : WorkLeft.NewestOf(session, house);
                foreach (IsoWeek week in weeks)
                {
                    messages.Progress($"Reviewing {house.Name}, {week}{timeLeft.Of(++begun, begun - 1 - ahead.Count)}");
                    if (Begin(session, house, week, slots, week == toSend ? outbox : null) is not { } page)
                    {
                        continue; // weeks that stand must not push those at work out of the queue
                    }

                    ahead.Enqueue(new PendingPage(house, week, page));
                    while (ahead.Count > jobs + 1) // one is being written, one more waits, loaded
                    {
                        complete &= Finish(session, ahead.Dequeue(), renewed, failed);
                    }
                }
            }

            while (ahead.TryDequeue(out PendingPage? pending))
            {
                complete &= Finish(session, pending, renewed, failed);
            }
        }
        finally
        {
            // Where one page ends the run, no other may be at work on the site when its lock is given up.
            Task.WhenAll(ahead.Select(p => p.Page)).ContinueWith(_ => { }, TaskScheduler.Default).Wait();
            renewed.UnionWith(ahead.Where(p => p.Page.IsCompletedSuccessfully).Select(p => p.Page.Result.Summary.Page)); // they stand, and the log tells of them
        }

        messages.EndProgress();
        bool isSame = session.Store.Version == seen;
        if (session.Site.Summaries.Count > 0)
        {
            // A run with a failure has no key, so that the next run tries again.
            session.Site.Complete(complete && isSame ? session.RunKey : "");
        }

        return isSame;
    }

    /// <summary>Begins a page; null where there is nothing to do.</summary>
    private static Task<PublishedPage>? Begin(Session session, HouseSettings house, IsoWeek week, SemaphoreSlim slots, Outbox? outbox)
    {
        try
        {
            if (WorkLeft.Of(session, house, week) is not { } work)
            {
                return null;
            }

            outbox?.Owe(SitePublisher.PlaceOf(house.Id, week.ToString()));
            return session.Site.ReviewOf(house.Id, week.ToString(), work.Hash) is { } standing ? Task.Run(() => session.Site.Publish(standing, work.Trace.Hash)) // only its pages are to be made again
                : InSlot(session, slots, work.Input ?? WorkLeft.InputOf(session, house, week), work.Trace.Hash);
        }
        catch (Exception fault) when (IsOfOneReview(fault))
        {
            return Task.FromException<PublishedPage>(fault);
        }
    }

    private static Task<PublishedPage> InSlot(Session session, SemaphoreSlim slots, HouseInput input, string trace) => Task.Run(async () =>
    {
        await slots.WaitAsync();
        Review review;
        try
        {
            review = session.Review(input);
        }
        finally
        {
            slots.Release();
        }

        return session.Site.Publish(review, trace); // outside its slot: much of it is waiting for the disk
    });

    private static bool Finish(Session session, PendingPage pending, HashSet<string> renewed, List<(string House, string Period)> failed)
    {
        try
        {
            PublishedPage page = session.Told(pending.Page.GetAwaiter().GetResult());
            renewed.Add(page.Summary.Page);
            return page.FailedCells.IsEmpty;
        }
        catch (Exception fault) when (IsOfOneReview(fault))
        {
            // One house that fails must not take the others' Monday away; the message names it, the exit code is 1.
            failed.Add((pending.House.Id, pending.Week.ToString()));
            session.Report([new Problem("review.failed", Severity.Warning, null, null, null,
                $"{pending.House.Name}, {pending.Week}: the review failed: {fault.GetType().Name}: {fault.Message}", "", "Report this as a bug; the other pages are published.")]);
            return false;
        }
    }

    private static bool IsOfOneReview(Exception fault) => fault is not (StoreUnavailableException or SiteUnavailableException or IOException or UnauthorizedAccessException) && !Guard.IsOfMemory(fault);

    internal static IReadOnlyList<IsoWeek> WeeksOf(Session session, HouseSettings house)
        => session.Store.Extent(house.Id) is { } extent ? [.. IsoWeek.WholeWeeks(extent.Start, extent.End, session.Nursery.Zone)] : [];

    private static Problem NoWeek(Session session, HouseSettings house)
        => new("review.noWeek", Severity.Warning, session.Nursery.FileName, null, null,
            $"{house.Name} has no whole week of readings ({ExtentOf(session, house)})", "readings from a Monday to the next", "Export a whole week, or use the review command with --from and --to.");

    private static string Extents(Session session)
        => string.Join(" ", session.Nursery.Houses.Select(h => $"{h.Name}: {ExtentOf(session, h)}."));

    private static string ExtentOf(Session session, HouseSettings house) => Describe(session.Store.Extent(house.Id), session.Nursery.Zone);

    /// <summary>What a house has, in words.</summary>
    internal static string Describe(Interval? extent, DateTimeZone zone) => extent is not { } e
        ? "no readings"
        : $"readings from {e.Start.InZone(zone).Date:uuuu-MM-dd} to {e.End.InZone(zone).Date:uuuu-MM-dd}";

    private sealed record PendingPage(HouseSettings House, IsoWeek Week, Task<PublishedPage> Page);
}
