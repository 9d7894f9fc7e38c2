using System.Buffers.Binary;

namespace ClimateLens.Logs.Store.PartFile;

/// <summary>Start and end of a Parquet file; the end says what stands where [PARQUET].</summary>
internal static class PartEnd
{
    private const int Zstd = 6;
    private const int TimestampMicros = 10;

    /// <summary>What each Parquet file begins and ends with.</summary>
    public static ReadOnlySpan<byte> Mark => "PAR1"u8;

    /// <summary>Writes the end.</summary>
    /// <param name="pages">The file.</param>
    /// <param name="columns">Its columns.</param>
    /// <param name="groups">Its row groups.</param>
    /// <param name="metadata">What it says about itself.</param>
    public static void Write(PageWriter pages, PartColumn[] columns, List<ColumnChunk[]> groups, Dictionary<string, string> metadata)
    {
        var thrift = new ThriftWriter();
        thrift.Begin()
            .Int32(1, 1)
            .Structs<PartColumn?>(2, [null, .. columns], (t, column) => Schema(t, column, columns.Length))
            .Int64(3, groups.Sum(group => (long)group[0].Rows))
            .Structs(4, groups, Group)
            .Structs(5, metadata, (t, entry) => t.Text(1, entry.Key).Text(2, entry.Value))
            .Text(6, "climatelens")
            .Structs(7, columns, (t, _) => t.Begin(1).End()) // the usual order of the type
            .End();
        pages.Raw(thrift.Written);
        Span<byte> length = stackalloc byte[sizeof(int)];
        BinaryPrimitives.WriteInt32LittleEndian(length, thrift.Written.Length);
        pages.Raw(length);
        pages.Raw(Mark);
    }

    /// <summary>A column, or for null the root that holds them.</summary>
    private static void Schema(ThriftWriter thrift, PartColumn? column, int columns)
    {
        if (column is null)
        {
            thrift.Text(4, "root").Int32(5, columns);
            return;
        }

        thrift.Int32(1, (int)column.Type).Int32(3, column.IsOptional ? 1 : 0).Text(4, column.Name);
        if (column.Type == PartColumnType.Stamp)
        {
            thrift.Int32(6, TimestampMicros).Begin(10).Begin(8).Bool(1, true).Begin(2).Begin(2).End().End().End().End(); // UTC, microseconds
        }
    }

    private static void Group(ThriftWriter thrift, ColumnChunk[] chunks)
        => thrift.Structs(1, chunks, Chunk).Int64(2, chunks.Sum(chunk => chunk.PlainBytes)).Int64(3, chunks[0].Rows).Int64(6, chunks.Sum(chunk => chunk.Bytes));

    private static void Chunk(ThriftWriter thrift, ColumnChunk chunk)
    {
        thrift.Int64(2, chunk.Start).Begin(3)
            .Int32(1, (int)chunk.Column.Type).Numbers(2, chunk.Encodings).Texts(3, [chunk.Column.Name]).Int32(4, Zstd)
            .Int64(5, chunk.Rows).Int64(6, chunk.PlainBytes).Int64(7, chunk.Bytes).Int64(9, chunk.Data);
        if (chunk.HasDictionary)
        {
            thrift.Int64(11, chunk.Start);
        }

        thrift.Begin(12).Int64(3, chunk.Missing);
        if (chunk.Range is (long first, long last))
        {
            thrift.Eight(5, last).Eight(6, first);
        }

        thrift.End().End();
    }
}
