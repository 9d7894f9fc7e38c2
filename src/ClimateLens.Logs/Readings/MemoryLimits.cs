namespace ClimateLens.Logs.Readings;

/// <summary>How much of a file and of a source is held in memory; what is more goes to disk for the while.</summary>
/// <param name="BlockRows">Rows of a block.</param>
/// <param name="GroupRows">Rows of a row group of a part; the same for all parts, since their bytes depend on it.</param>
/// <param name="FileBytes">Rows of the file being read. [bytes]</param>
/// <param name="SourceBytes">Rows of the source's years that changed. [bytes]</param>
internal sealed record MemoryLimits(int BlockRows, int GroupRows, long FileBytes, long SourceBytes)
{
    /// <summary>Blocks whose columns stay out of the large-object heap; groups of the size that column engines like, about a year of five-minute rows.</summary>
    public static MemoryLimits Usual { get; } = new(8_192, 131_072, 32L << 20, 48L << 20);
}
