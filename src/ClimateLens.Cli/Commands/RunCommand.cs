using System.Collections.Immutable;
using System.CommandLine;
using ClimateLens.Analysis;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Cli.Output;
using ClimateLens.Logs;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.Reports;
using NodaTime;

namespace ClimateLens.Cli.Commands;

/// <summary><c>run NURSERY</c>: import what is new, review what changed, publish.</summary>
internal static class RunCommand
{
    public static Command Create(TextWriter output, TextWriter error) => CommonOptions.Command("run", """
        Import what is new, review every whole week of each house that changed, and publish the pages.

        Example: climatelens run sample-logs/nursery.toml
        """, output, error, Run);

    private static CommandResult Run(Request request, Messages messages)
    {
        using Session session = Session.OpenWithSite(request, messages);
        ImportReport imported = session.Import();
        HashSet<string> renewed = session.Site.RunKey == session.RunKey ? [] : ReviewAll(session, messages);
        ImmutableArray<HouseWeekLine> lines = [.. session.Site.Summaries.Select(s => new HouseWeekLine(s, renewed.Contains(s.Page) ? "new" : "unchanged"))];
        if (lines.IsEmpty)
        {
            throw new NoDataException("no house has a whole week of readings yet, so there is nothing to review. " + Extents(session));
        }

        return new CommandResult(session.AnythingLost ? ExitCode.DoneWithLoss : ExitCode.Done, session.Problems, imported.Sheets, lines, session.SiteIndex)
        {
            Summary = renewed.Count == 0 ? "Nothing new: all pages are as they were." : "",
        };
    }

    private static HashSet<string> ReviewAll(Session session, Messages messages)
    {
        HashSet<string> renewed = [];
        bool complete = true;
        Queue<PendingReview> ahead = []; // reviews are worked out side by side and published in order
        foreach (HouseSettings house in session.Nursery.Houses)
        {
            IReadOnlyList<IsoWeek> weeks = WeeksOf(session, house);
            if (weeks.Count == 0)
            {
                session.Report([NoWeek(session, house)]);
            }

            foreach (IsoWeek week in weeks)
            {
                messages.Progress($"Reviewing {house.Name}, {week}");
                ahead.Enqueue(new PendingReview(house, week, Begin(session, house, week)));
                while (ahead.Count > Environment.ProcessorCount)
                {
                    complete &= Finish(session, ahead.Dequeue(), renewed);
                }
            }
        }

        while (ahead.TryDequeue(out PendingReview? pending))
        {
            complete &= Finish(session, pending, renewed);
        }

        messages.EndProgress();
        session.Report(Unfinished.Of(session, messages));
        if (session.Site.Summaries.Count > 0)
        {
            // A run with a failure has no key, so that the next run tries again.
            session.Site.Complete(complete ? session.RunKey : "");
        }

        return renewed;
    }

    /// <summary>Begins a review; null where there is nothing to do.</summary>
    private static Task<Review>? Begin(Session session, HouseSettings house, IsoWeek week)
    {
        try
        {
            HouseInput input = session.Store.Load(house, week.In(session.Nursery.Zone), ReviewPipeline.RunIn, ReviewPipeline.History);
            return !input.HasReadings // a hole in the readings, or a stray stamp years away: no page of nothing
                || session.Site.IsCurrent(house.Id, week.ToString(), InputFingerprint.Of(input)) ? null : Task.Run(() => ReviewPipeline.Run(input));
        }
        catch (Exception fault) when (IsOfOneReview(fault))
        {
            return Task.FromException<Review>(fault);
        }
    }

    private static bool Finish(Session session, PendingReview pending, HashSet<string> renewed)
    {
        if (pending.Review is null)
        {
            return true;
        }

        try
        {
            PublishedPage page = session.Publish(pending.Review.GetAwaiter().GetResult());
            renewed.Add(page.Summary.Page);
            return page.FailedCells.IsEmpty;
        }
        catch (Exception fault) when (IsOfOneReview(fault))
        {
            // One house that fails must not take the others' Monday away; the message names it, the exit code is 1.
            session.Report([new Problem("review.failed", Severity.Warning, null, null, null,
                $"{pending.House.Name}, {pending.Week}: the review failed: {fault.GetType().Name}: {fault.Message}", "", "Report this as a bug; the other pages are published.")]);
            return false;
        }
    }

    private static bool IsOfOneReview(Exception fault) => fault is not (StoreUnavailableException or SiteUnavailableException or IOException or UnauthorizedAccessException);

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

    private sealed record PendingReview(HouseSettings House, IsoWeek Week, Task<Review>? Review);
}
