using System.Buffers;
using System.IO.Compression;
using System.Text.Json;
using Parquet;
using Parquet.Schema;

namespace ClimateLens.Logs.Store;

/// <summary>What reading and record parts share in their Parquet form.</summary>
internal static class ParquetColumns
{
    /// <summary>Name of the stamp column.</summary>
    public const string Utc = "utc";

    /// <summary>Name of the column that tells the file of a row, as an index into the list in the metadata.</summary>
    public const string File = "file";

    /// <summary>Metadata key of the list of files.</summary>
    public const string FilesKey = "climatelens.files";

    /// <summary>Metadata key of the hash of the settings that the files were read with.</summary>
    public const string SettingsKey = "climatelens.settings";

    /// <summary>How parts are written: zstd, times and indexes as deltas.</summary>
    public static ParquetOptions Options()
    {
        var options = new ParquetOptions
        {
            CompressionMethod = CompressionMethod.Zstd,
            CompressionLevel = CompressionLevel.Fastest,
            DictionaryEncodingThreshold = 0.5,
        };
        options.ColumnEncodingHints[Utc] = EncodingHint.DeltaBinaryPacked;
        options.ColumnEncodingHints[File] = EncodingHint.DeltaBinaryPacked;
        return options;
    }

    /// <summary>The stamp column.</summary>
    public static DataField UtcField(string name = Utc, bool nullable = false)
        => new DateTimeDataField(name, DateTimeFormat.Timestamp, isAdjustedToUTC: true, unit: DateTimeTimeUnit.Micros, isNullable: nullable);

    /// <summary>Metadata of a part.</summary>
    public static Dictionary<string, string> Metadata(PartInfo info, List<SourceFile> files) => new()
    {
        ["climatelens.format"] = "1",
        ["climatelens.house"] = info.House,
        ["climatelens.source"] = info.Source,
        ["climatelens.timeZone"] = info.TimeZone,
        ["climatelens.stamps"] = info.Stamps.ToString(),
        [SettingsKey] = info.Settings,
        ["climatelens.units"] = JsonSerializer.Serialize(info.Units, LedgerFormat.Default.SortedDictionaryStringString),
        [FilesKey] = JsonSerializer.Serialize(files, LedgerFormat.Default.ListSourceFile),
    };

    /// <summary>The files that a part names.</summary>
    public static List<SourceFile> Files(ParquetReader reader)
        => reader.CustomMetadata.TryGetValue(FilesKey, out string? json) && JsonSerializer.Deserialize(json, LedgerFormat.Default.ListSourceFile) is { } files ? files : [];

    /// <summary>Writes a column of numbers; NaN becomes null.</summary>
    public static async Task WriteNumbers(ParquetRowGroupWriter group, DataField field, ReadOnlyMemory<double> values)
    {
        double[] packed = ArrayPool<double>.Shared.Rent(values.Length);
        int[] levels = ArrayPool<int>.Shared.Rent(values.Length);
        int count = Pack(values.Span, packed, levels);
        await group.WriteAllPartsAsync<double>(field, packed.AsMemory(0, count), levels.AsMemory(0, values.Length), null, CancellationToken.None).ConfigureAwait(false);
        ArrayPool<double>.Shared.Return(packed);
        ArrayPool<int>.Shared.Return(levels);
    }

    private static int Pack(ReadOnlySpan<double> values, double[] packed, int[] levels)
    {
        int count = 0;
        for (int i = 0; i < values.Length; i++)
        {
            bool known = !double.IsNaN(values[i]);
            packed[count] = values[i];
            levels[i] = known ? 1 : 0;
            count += known ? 1 : 0;
        }

        return count;
    }

    /// <summary>Writes stamps.</summary>
    public static Task WriteStamps(ParquetRowGroupWriter group, DataField field, ReadOnlySpan<long> utc)
    {
        DateTime[] stamps = ArrayPool<DateTime>.Shared.Rent(utc.Length);
        for (int i = 0; i < utc.Length; i++)
        {
            stamps[i] = Micros.ToDateTime(utc[i]);
        }

        return Write(utc.Length);

        async Task Write(int count)
        {
            await group.WriteAsync<DateTime>(field, stamps.AsMemory(0, count), null, null, CancellationToken.None).ConfigureAwait(false);
            ArrayPool<DateTime>.Shared.Return(stamps);
        }
    }

    /// <summary>Reads a column of numbers into a place of an array; null becomes NaN.</summary>
    public static async Task ReadNumbers(ParquetRowGroupReader group, DataField field, Memory<double> into)
    {
        int[] levels = ArrayPool<int>.Shared.Rent(into.Length);
        double[] packed = ArrayPool<double>.Shared.Rent(into.Length);
        await group.ReadRawAsync<double>(field, packed.AsMemory(0, into.Length), levels.AsMemory(0, into.Length), null, CancellationToken.None).ConfigureAwait(false);
        Unpack(packed, levels, into.Span);
        ArrayPool<int>.Shared.Return(levels);
        ArrayPool<double>.Shared.Return(packed);
    }

    private static void Unpack(double[] packed, int[] levels, Span<double> into)
    {
        int next = 0;
        for (int i = 0; i < into.Length; i++)
        {
            into[i] = levels[i] == 0 ? double.NaN : packed[next++];
        }
    }
}
