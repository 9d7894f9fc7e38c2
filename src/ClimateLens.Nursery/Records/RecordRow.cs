using System.Collections.Immutable;
using NodaTime;

namespace ClimateLens.Nursery.Records;

/// <summary>One row of a record, as stored: when, where, and every field of the row by its name.</summary>
/// <param name="Kind">What it records.</param>
/// <param name="House">House id; never empty.</param>
/// <param name="Source">Name of the export that it came from.</param>
/// <param name="At">When; for a watering its start.</param>
/// <param name="File">File that it came from, as in <see cref="Problems.Problem"/>.</param>
/// <param name="Line">1-based line in that file.</param>
/// <param name="Fields">Fields by our name (see docs/nomenclature.md); numbers are written in SI with the invariant culture.</param>
public sealed record RecordRow(
    RecordKind Kind,
    string House,
    string Source,
    Instant At,
    string File,
    int Line,
    ImmutableSortedDictionary<string, string> Fields);
