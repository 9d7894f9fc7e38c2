using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Logs.Health;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;
using ClimateLens.Reports;

namespace ClimateLens.Cli.Commands;

/// <summary>What a command did, for people and for machines.</summary>
/// <param name="ExitCode">Exit code.</param>
/// <param name="Problems">All problems met.</param>
/// <param name="Imports">Files read in this run.</param>
/// <param name="HouseWeeks">Every house and period that has a page, with what this run did to it.</param>
/// <param name="SiteIndex">Path of the index page, or null when no pages were asked for.</param>
internal sealed record CommandResult(
    int ExitCode,
    ImmutableArray<Problem> Problems,
    ImmutableArray<ImportSheet> Imports,
    ImmutableArray<HouseWeekLine> HouseWeeks,
    string? SiteIndex)
{
    /// <summary>The one review that was asked for, with <c>review</c>.</summary>
    public Review? Review { get; init; }

    /// <summary>Houses and weeks whose review failed.</summary>
    public ImmutableArray<(string House, string Period)> FailedWeeks { get; init; } = [];

    /// <summary>What was set aside, with <c>set-aside</c>.</summary>
    public SetAsideListing? SetAside { get; init; }

    /// <summary>What was looked at, with <c>doctor</c>.</summary>
    public ImmutableArray<CheckupLine> Checkup { get; init; } = [];

    /// <summary>House-weeks that are to be reviewed, with <c>plan</c> and <c>finish</c>.</summary>
    public ImmutableArray<PlannedWeek>? Plan { get; init; }

    /// <summary>Closing words for people.</summary>
    public string Summary { get; init; } = "";

    /// <summary>A command that did nothing.</summary>
    public static CommandResult Failed(int exitCode, IEnumerable<Problem> problems) => new(exitCode, [.. problems], [], [], null);
}

/// <summary>One house and period.</summary>
/// <param name="Summary">Its numbers.</param>
/// <param name="Status"><c>new</c>, <c>unchanged</c> or <c>withFailedCells</c>.</param>
internal sealed record HouseWeekLine(HouseWeekSummary Summary, string Status);
