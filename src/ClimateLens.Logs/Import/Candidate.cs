using ClimateLens.Logs.Text;

namespace ClimateLens.Logs.Import;

/// <summary>A file that an export names.</summary>
/// <param name="File">The file.</param>
/// <param name="Sha256">Its hash; null where its size alone tells that it is new, so that it is hashed while it is read.</param>
internal sealed record Candidate(ExportFile File, string? Sha256);
