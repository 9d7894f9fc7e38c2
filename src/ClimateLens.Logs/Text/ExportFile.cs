namespace ClimateLens.Logs.Text;

/// <summary>A file to read.</summary>
/// <param name="Path">Where it lies.</param>
/// <param name="Name">How people name it: relative to the nursery file, with '/'.</param>
internal sealed record ExportFile(string Path, string Name)
{
    /// <summary>The entry of the zip archive at <see cref="Path"/>, or null for the file itself.</summary>
    public string? Entry { get; init; }
}
