using System.Collections.Immutable;

namespace ClimateLens.Analysis.Reviews;

/// <summary>How a review came about.</summary>
/// <param name="Tool">Name and version.</param>
/// <param name="Seed">Seed of the draws.</param>
/// <param name="Draws">Number of draws.</param>
/// <param name="NurseryFile">Name of the nursery file.</param>
/// <param name="NurseryFileSha256">Its hash.</param>
/// <param name="InputHash">Hash of all that was looked at; equal hashes give equal reviews.</param>
/// <param name="TimeZoneData">Version of the time-zone database.</param>
/// <param name="Thresholds">Thresholds in force, each with value, unit and source.</param>
/// <param name="Methods">Methods, each with source, range and error.</param>
/// <param name="Files">Files behind the readings.</param>
public sealed record Provenance(
    string Tool,
    long Seed,
    int Draws,
    string NurseryFile,
    string NurseryFileSha256,
    string InputHash,
    string TimeZoneData,
    ImmutableArray<Threshold> Thresholds,
    ImmutableArray<MethodNote> Methods,
    ImmutableArray<SourceFile> Files)
{
    /// <summary>Code of the language of all sentences, for example <c>nl</c>.</summary>
    public string Language { get; init; } = "en";
}

/// <summary>A threshold in force.</summary>
/// <param name="Name">Name.</param>
/// <param name="Value">Value in <paramref name="Unit"/>.</param>
/// <param name="Unit">UCUM code.</param>
/// <param name="Source">Published source, "nursery file", or "common practice, no source".</param>
public sealed record Threshold(string Name, double Value, string Unit, string Source);

/// <summary>A method used.</summary>
/// <param name="Key">Stable name in camelCase.</param>
/// <param name="What">What it gives.</param>
/// <param name="How">How, in one or two sentences.</param>
/// <param name="Source">Published source, or "common practice, no source".</param>
/// <param name="Error">Error and valid range.</param>
public sealed record MethodNote(string Key, string What, string How, string Source, string Error);

/// <summary>A file behind the readings.</summary>
public sealed record SourceFile(string File, string Sha256, string Source, int RowsRead, int Accepted, int SetAside, int Duplicates, int Blank, int CellsNotRead, int Conflicts);
