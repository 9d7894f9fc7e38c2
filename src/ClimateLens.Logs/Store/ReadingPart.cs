using ClimateLens.Logs.Readings;
using Parquet;
using Parquet.Schema;

namespace ClimateLens.Logs.Store;

/// <summary>A year of readings as a Parquet file: <c>utc</c>, <c>file</c> and a column of doubles for each series.</summary>
internal static class ReadingPart
{
    // About three years of five-minute rows; near the row group size that column engines like.
    private const int RowGroupRows = 131_072;

    /// <summary>Writes a part.</summary>
    /// <param name="stream">Where to.</param>
    /// <param name="rows">Tidied rows.</param>
    /// <param name="info">What it says about itself.</param>
    /// <param name="files">The source's files, which the rows point into.</param>
    public static void Write(Stream stream, YearRows rows, PartInfo info, IReadOnlyList<SourceFile> files)
        => WriteAsync(stream, rows, info, files).GetAwaiter().GetResult();

    /// <summary>Reads a part; its rows point into the list of files that comes with them.</summary>
    /// <exception cref="InvalidDataException">It is no such part.</exception>
    public static (YearRows Rows, List<SourceFile> Files) Read(Stream stream) => ReadAsync(stream).GetAwaiter().GetResult();

    /// <summary>The number of rows that a part's footer names.</summary>
    public static long CountRows(Stream stream) => CountAsync(stream).GetAwaiter().GetResult();

    private static async Task WriteAsync(Stream stream, YearRows rows, PartInfo info, IReadOnlyList<SourceFile> files)
    {
        (List<SourceFile> named, int[] index) = FileIndex.Compact(rows, files);
        DataField utc = ParquetColumns.UtcField();
        var file = new DataField<int>(ParquetColumns.File, false);
        DataField[] values = [.. rows.Names.Select(name => new DataField<double>(name, true))];
        ParquetWriter writer = await ParquetWriter.CreateAsync(new ParquetSchema([utc, file, .. values]), stream, ParquetColumns.Options()).ConfigureAwait(false);
        await using (writer.ConfigureAwait(false))
        {
            writer.CustomMetadata = ParquetColumns.Metadata(info, named);
            for (int start = 0; start < rows.Count || start == 0; start += RowGroupRows)
            {
                int count = Math.Min(RowGroupRows, rows.Count - start);
                using ParquetRowGroupWriter group = writer.CreateRowGroup();
                await ParquetColumns.WriteStamps(group, utc, rows.Utc.AsSpan(start, count)).ConfigureAwait(false);
                await group.WriteAsync<int>(file, index.AsMemory(start, count), null, null, CancellationToken.None).ConfigureAwait(false);
                for (int c = 0; c < values.Length; c++)
                {
                    await ParquetColumns.WriteNumbers(group, values[c], rows.Columns[c].AsMemory(start, count)).ConfigureAwait(false);
                }
            }
        }
    }

    private static async Task<(YearRows Rows, List<SourceFile> Files)> ReadAsync(Stream stream)
    {
        ParquetReader reader = await ParquetReader.CreateAsync(stream).ConfigureAwait(false);
        await using (reader.ConfigureAwait(false))
        {
            DataField[] fields = reader.Schema.DataFields;
            if (fields is not [{ Name: ParquetColumns.Utc }, { Name: ParquetColumns.File }, ..])
            {
                throw new InvalidDataException("The file has no columns utc and file.");
            }

            var rows = new YearRows([.. fields.Skip(2).Select(f => f.Name)]);
            rows.Grow((int)reader.RowGroups.Sum(g => g.RowCount));
            for (int i = 0; i < reader.RowGroupCount; i++)
            {
                using ParquetRowGroupReader group = reader.OpenRowGroupReader(i);
                await ReadGroup(group, fields, rows).ConfigureAwait(false);
            }

            return (rows, ParquetColumns.Files(reader));
        }
    }

    private static async Task ReadGroup(ParquetRowGroupReader group, DataField[] fields, YearRows rows)
    {
        int start = rows.Count;
        int count = (int)group.RowCount;
        var stamps = new DateTime[count];
        await group.ReadAsync<DateTime>(fields[0], stamps.AsMemory(), null, CancellationToken.None).ConfigureAwait(false);
        for (int i = 0; i < count; i++)
        {
            rows.Utc[start + i] = Micros.Of(stamps[i]);
        }

        await group.ReadAsync<int>(fields[1], rows.File.AsMemory(start, count), null, CancellationToken.None).ConfigureAwait(false);
        for (int c = 0; c < rows.Columns.Length; c++)
        {
            await ParquetColumns.ReadNumbers(group, fields[c + 2], rows.Columns[c].AsMemory(start, count)).ConfigureAwait(false);
        }

        rows.Count += count;
    }

    private static async Task<long> CountAsync(Stream stream)
    {
        ParquetReader reader = await ParquetReader.CreateAsync(stream).ConfigureAwait(false);
        await using (reader.ConfigureAwait(false))
        {
            return reader.RowGroups.Sum(g => g.RowCount);
        }
    }
}
