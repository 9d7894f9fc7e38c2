using System.Collections.Immutable;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Describe;

/// <summary>What was asked of a description.</summary>
/// <param name="House">House id that the user gave, or null.</param>
/// <param name="Name">Export name that the user gave, or null.</param>
/// <param name="Houses">Ids of the houses of the nursery file that the draft goes into; null without one.</param>
/// <param name="Folder">Folder against which the paths of the draft count, or null for paths as given.</param>
public sealed record DescribeOptions(string? House = null, string? Name = null, ImmutableArray<string>? Houses = null, string? Folder = null)
{
    /// <summary>Zone of the nursery file that the draft goes into, for the trial reading; null where it is not known.</summary>
    public string? TimeZone { get; init; }

    /// <summary>Opens the standard input, which the name <c>-</c> stands for; null where there is none.</summary>
    public Func<Stream>? Input { get; init; }
}

/// <summary>The drafts for the files that were described.</summary>
/// <param name="Exports">Drafts, one for each kind of file and house.</param>
/// <param name="Problems">Files that could not be described, and what else went wrong.</param>
/// <param name="Toml">The drafts as text for the nursery file.</param>
public sealed record Description(ImmutableArray<DraftExport> Exports, ImmutableArray<Problem> Problems, string Toml)
{
    /// <summary>Number of open questions.</summary>
    public int Questions => Exports.Sum(e => e.Questions);
}
