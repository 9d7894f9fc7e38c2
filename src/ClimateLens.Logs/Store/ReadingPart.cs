using ClimateLens.Logs.Readings;
using Parquet;
using Parquet.Schema;

namespace ClimateLens.Logs.Store;

/// <summary>Reads a year of readings from its Parquet file, which <see cref="ReadingPartWriter"/> wrote.</summary>
internal static class ReadingPart
{
    private const int FixedColumns = 2;

    /// <summary>Reads a part; its rows point into the list of files that comes with them.</summary>
    /// <exception cref="InvalidDataException">It is no such part.</exception>
    public static (YearRows Rows, List<SourceFile> Files) Read(Stream stream)
    {
        using var footer = PartFooter.Open(stream);
        var rows = new YearRows(NamesIn(footer));
        rows.Grow((int)footer.Rows);
        for (int i = 0; i < footer.Reader.RowGroupCount; i++)
        {
            ReadGroup(footer, i, rows);
        }

        return (rows, footer.Files);
    }

    /// <summary>Names of the columns of values of a part.</summary>
    /// <exception cref="InvalidDataException">It is no part of readings.</exception>
    public static string[] NamesIn(PartFooter footer)
        => footer.Columns is [ParquetColumns.Utc, ParquetColumns.File, .. string[] names] ? names : throw new InvalidDataException("The file has no columns utc and file.");

    /// <summary>Reads a row group behind the rows that are there.</summary>
    public static void ReadGroup(PartFooter footer, int group, YearRows rows)
    {
        using ParquetRowGroupReader opened = footer.Reader.OpenRowGroupReader(group);
        ReadGroup(opened, footer.Reader.Schema.DataFields, rows).GetAwaiter().GetResult();
    }

    private static async Task ReadGroup(ParquetRowGroupReader group, DataField[] fields, YearRows rows)
    {
        int start = rows.Count;
        int count = (int)group.RowCount;
        if (rows.Utc.Length < start + count)
        {
            rows.Grow(start + count);
        }

        var stamps = new DateTime[count];
        await group.ReadAsync<DateTime>(fields[0], stamps.AsMemory(), null, CancellationToken.None).ConfigureAwait(false);
        for (int i = 0; i < count; i++)
        {
            rows.Utc[start + i] = Micros.Of(stamps[i]);
        }

        await group.ReadAsync<int>(fields[1], rows.File.AsMemory(start, count), null, CancellationToken.None).ConfigureAwait(false);
        for (int c = 0; c < rows.Columns.Length; c++)
        {
            await ParquetColumns.ReadNumbers(group, fields[c + FixedColumns], rows.Columns[c].AsMemory(start, count)).ConfigureAwait(false);
        }

        rows.Count += count;
    }
}
