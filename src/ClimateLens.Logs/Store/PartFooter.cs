using Parquet;

namespace ClimateLens.Logs.Store;

/// <summary>A part opened at its end, where a Parquet file lists its contents.</summary>
internal sealed class PartFooter : IDisposable
{
    private PartFooter(ParquetReader reader) => Reader = reader;

    /// <summary>Reads the rows.</summary>
    public ParquetReader Reader { get; }

    /// <summary>Number of rows.</summary>
    public long Rows => Reader.RowGroups.Sum(group => group.RowCount);

    /// <summary>Names of all columns.</summary>
    public string[] Columns => [.. Reader.Schema.DataFields.Select(f => f.Name)];

    /// <summary>Files that the rows came from.</summary>
    public List<SourceFile> Files => ParquetColumns.Files(Reader);

    /// <summary>Hash of the settings that the files were read with; empty where the part names none.</summary>
    public string Settings => Reader.CustomMetadata.GetValueOrDefault(ParquetColumns.SettingsKey, "");

    /// <summary>Opens a part; the caller closes the stream.</summary>
    public static PartFooter Open(Stream stream)
        => new(ParquetReader.CreateAsync(stream, leaveStreamOpen: true).GetAwaiter().GetResult());

    /// <inheritdoc/>
    public void Dispose() => Reader.DisposeAsync().AsTask().GetAwaiter().GetResult();
}
