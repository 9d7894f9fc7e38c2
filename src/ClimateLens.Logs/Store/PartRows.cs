using ClimateLens.Logs.Readings;

namespace ClimateLens.Logs.Store;

/// <summary>The rows of a part, read a row group at a time.</summary>
/// <param name="path">The file.</param>
/// <param name="names">Its columns of values.</param>
/// <param name="count">Number of its rows.</param>
/// <param name="first">Its first stamp. [µs since 1970-01-01T00:00Z]</param>
/// <param name="last">Its last stamp. [µs since 1970-01-01T00:00Z]</param>
/// <param name="fileMap">For each file that the part names its place in the source's list.</param>
internal sealed class PartRows(string path, string[] names, int count, long first, long last, int[] fileMap) : SortedRows
{
    /// <inheritdoc/>
    public override string[] Names => names;

    /// <inheritdoc/>
    public override int Count => count;

    /// <inheritdoc/>
    public override long First => first;

    /// <inheritdoc/>
    public override long Last => last;

    /// <inheritdoc/>
    public override IEnumerable<YearRows> Blocks() => Blocks(isKept: false);

    /// <summary>The rows in their order.</summary>
    /// <param name="isKept">Whether each block is to hold for good, not only until the next one.</param>
    public IEnumerable<YearRows> Blocks(bool isKept)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16);
        using var footer = PartFooter.Open(stream);
        var block = new YearRows(names);
        for (int i = 0; i < footer.Reader.RowGroupCount; i++)
        {
            block = isKept ? new YearRows(names) : block;
            block.Count = 0;
            ReadingPart.ReadGroup(footer, i, block);
            foreach (ref int file in block.File.AsSpan(0, block.Count))
            {
                file = fileMap[file];
            }

            yield return block;
        }
    }
}
