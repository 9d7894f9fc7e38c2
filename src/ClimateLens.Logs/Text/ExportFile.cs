namespace ClimateLens.Logs.Text;

/// <summary>A file to read.</summary>
/// <param name="Path">Where it lies.</param>
/// <param name="Name">How people name it: relative to the nursery file, with '/'.</param>
internal readonly record struct ExportFile(string Path, string Name);
