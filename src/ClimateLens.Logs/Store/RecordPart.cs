using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Logs.Records;
using ClimateLens.Nursery.Records;
using Parquet;
using Parquet.Schema;

namespace ClimateLens.Logs.Store;

/// <summary>The records of one house and source as a Parquet file: <c>utc</c>, <c>file</c>, <c>line</c> and a column for each field of the kind.</summary>
internal static class RecordPart
{
    private const string Line = "line";
    private const int FixedColumns = 3;

    /// <summary>Writes a part; the rows point into the source's files.</summary>
    public static void Write(Stream stream, List<StoredRecord> records, RecordKind kind, PartInfo info, IReadOnlyList<SourceFile> files)
        => WriteAsync(stream, records, kind, info, files).GetAwaiter().GetResult();

    /// <summary>Reads a part; its rows point into the list of files that comes with them.</summary>
    public static (List<StoredRecord> Records, List<SourceFile> Files) Read(Stream stream, string house, RecordKind kind)
        => ReadAsync(stream, house, kind).GetAwaiter().GetResult();

    private static IEnumerable<RecordField> Kept(RecordKind kind) => RecordFields.Of(kind).Where(f => f.Name != RecordFields.House);

    private static DataField FieldOf(RecordField field) => field.Type switch
    {
        RecordFieldType.Number or RecordFieldType.Level => new DataField<double>(field.Name, true),
        RecordFieldType.Time => ParquetColumns.UtcField(field.Name, nullable: true),
        _ => new DataField<string>(field.Name, true),
    };

    private static async Task WriteAsync(Stream stream, List<StoredRecord> records, RecordKind kind, PartInfo info, IReadOnlyList<SourceFile> files)
    {
        (List<SourceFile> named, int[] index) = FileIndex.Compact([.. records.Select(r => r.File)], files);
        DataField utc = ParquetColumns.UtcField();
        var file = new DataField<int>(ParquetColumns.File, false);
        var line = new DataField<int>(Line, false);
        DataField[] fields = [.. Kept(kind).Select(FieldOf)];
        StampFooter footer = new(stream);
        ParquetWriter writer = await ParquetWriter.CreateAsync(new ParquetSchema([utc, file, line, .. fields]), footer, ParquetColumns.Options()).ConfigureAwait(false);
        await using (writer.ConfigureAwait(false))
        {
            writer.CustomMetadata = ParquetColumns.Metadata(info, named);
            using ParquetRowGroupWriter group = writer.CreateRowGroup();
            await ParquetColumns.WriteStamps(group, utc, [.. records.Select(r => r.Utc)]).ConfigureAwait(false);
            Note(footer, [.. records.Select(r => r.Utc)]);
            await group.WriteAsync<int>(file, index.AsMemory(), null, null, CancellationToken.None).ConfigureAwait(false);
            await group.WriteAsync<int>(line, records.Select(r => r.Line).ToArray().AsMemory(), null, null, CancellationToken.None).ConfigureAwait(false);
            foreach (DataField field in fields)
            {
                await WriteField(group, field, footer, [.. records.Select(r => r.Fields.GetValueOrDefault(field.Name))]).ConfigureAwait(false);
            }

            footer.HoldBack();
        }

        footer.Release();
    }

    private static void Note(StampFooter footer, long[] stamps)
    {
        if (stamps.Length > 0)
        {
            footer.Note(stamps.Min(), stamps.Max());
        }
    }

    private static Task WriteField(ParquetRowGroupWriter group, DataField field, StampFooter footer, string?[] texts)
    {
        if (field.ClrType == typeof(double))
        {
            double[] numbers = [.. texts.Select(t => t is null ? double.NaN : double.Parse(t, NumberStyles.Float, CultureInfo.InvariantCulture))];
            return ParquetColumns.WriteNumbers(group, field, numbers);
        }

        if (field.ClrType == typeof(DateTime))
        {
            DateTime?[] times = [.. texts.Select(t => t is null ? (DateTime?)null : DateTime.Parse(t, CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal))];
            Note(footer, [.. times.OfType<DateTime>().Select(Micros.Of)]);
            return group.WriteAsync<DateTime>(field, times.AsMemory(), null, null, CancellationToken.None);
        }

        return group.WriteAsync(field, texts!, null);
    }

    private static async Task<(List<StoredRecord> Records, List<SourceFile> Files)> ReadAsync(Stream stream, string house, RecordKind kind)
    {
        ParquetReader reader = await ParquetReader.CreateAsync(stream).ConfigureAwait(false);
        await using (reader.ConfigureAwait(false))
        {
            DataField[] fields = reader.Schema.DataFields;
            using ParquetRowGroupReader group = reader.OpenRowGroupReader(0);
            int count = (int)group.RowCount;
            var utc = new DateTime[count];
            int[] file = new int[count];
            int[] line = new int[count];
            await group.ReadAsync<DateTime>(fields[0], utc.AsMemory(), null, CancellationToken.None).ConfigureAwait(false);
            await group.ReadAsync<int>(fields[1], file.AsMemory(), null, CancellationToken.None).ConfigureAwait(false);
            await group.ReadAsync<int>(fields[2], line.AsMemory(), null, CancellationToken.None).ConfigureAwait(false);
            var rows = new ImmutableSortedDictionary<string, string>.Builder[count];
            for (int i = 0; i < count; i++)
            {
                rows[i] = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
            }

            foreach (DataField field in fields.Skip(FixedColumns))
            {
                await ReadField(group, field, rows).ConfigureAwait(false);
            }

            return ([.. rows.Select((row, i) => new StoredRecord(house, Micros.Of(utc[i]), file[i], line[i], row.ToImmutable()))], ParquetColumns.Files(reader));
        }
    }

    private static async Task ReadField(ParquetRowGroupReader group, DataField field, ImmutableSortedDictionary<string, string>.Builder[] rows)
    {
        string?[] texts = new string?[rows.Length];
        if (field.ClrType == typeof(double))
        {
            double[] numbers = new double[rows.Length];
            await ParquetColumns.ReadNumbers(group, field, numbers).ConfigureAwait(false);
            texts = [.. numbers.Select(n => double.IsNaN(n) ? null : n.ToString("R", CultureInfo.InvariantCulture))];
        }
        else if (field.ClrType == typeof(DateTime))
        {
            var times = new DateTime?[rows.Length];
            await group.ReadAsync<DateTime>(field, times.AsMemory(), null, CancellationToken.None).ConfigureAwait(false);
            texts = [.. times.Select(t => t is DateTime time ? Micros.ToIso(Micros.Of(time)) : null)];
        }
        else
        {
            await group.ReadAsync(field, texts.AsMemory()!, null, CancellationToken.None).ConfigureAwait(false);
        }

        for (int i = 0; i < rows.Length; i++)
        {
            if (texts[i] is string text)
            {
                rows[i][field.Name] = text;
            }
        }
    }
}
