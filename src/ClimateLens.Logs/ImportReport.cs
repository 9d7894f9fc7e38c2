using System.Collections.Immutable;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs;

/// <summary>What an import did.</summary>
/// <param name="Sheets">A sheet for each file read in this run.</param>
/// <param name="Problems">All problems; those of rows and cells that share code, file and column are one with a count.</param>
/// <param name="FilesRead">Files read.</param>
/// <param name="FilesKnown">Files that changed nothing, since the same bytes were read before with the same settings.</param>
public sealed record ImportReport(ImmutableArray<ImportSheet> Sheets, ImmutableArray<Problem> Problems, int FilesRead, int FilesKnown);
