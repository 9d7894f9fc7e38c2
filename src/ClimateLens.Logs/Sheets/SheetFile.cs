using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Logs.Sheets;

/// <summary>The sheet of one file as it lies in the store (docs/store.md).</summary>
internal sealed record SheetFile
{
    /// <summary>Format of a sheet that this program writes.</summary>
    public const int CurrentFormat = 1;

    public int Format { get; init; } = CurrentFormat;

    public required string File { get; init; }

    public required string Sha256 { get; init; }

    public required string House { get; init; }

    public string? Kind { get; init; }

    public required string Source { get; init; }

    public required int RowsRead { get; init; }

    public required int Accepted { get; init; }

    public required int SetAside { get; init; }

    public required int Duplicates { get; init; }

    public required int Blank { get; init; }

    public required int CellsNotRead { get; init; }

    public required int Conflicts { get; init; }

    public string? First { get; init; }

    public string? Last { get; init; }

    public required ImportDetails Details { get; init; }

    /// <summary>Writes the sheet of a file that was read, staged beside the rest of the transaction.</summary>
    public static StoredFile Write(StoreTransaction transaction, SourceKey key, LedgerFile file)
    {
        string path = StorePaths.Sheet(key, file.File, file.Sha256);
        using (Stream stream = transaction.Create(path))
        {
            stream.Write(SheetJson.Write(Of(key, file)));
        }

        return transaction.Seal(path);
    }

    private static SheetFile Of(SourceKey key, LedgerFile file) => new()
    {
        File = file.File,
        Sha256 = file.Sha256,
        House = key.House,
        Kind = key.Kind is RecordKind kind ? RecordKinds.WordOf(kind) : null,
        Source = key.Source,
        RowsRead = file.RowsRead,
        Accepted = file.Accepted,
        SetAside = file.SetAside,
        Duplicates = file.Duplicates,
        Blank = file.Blank,
        CellsNotRead = file.CellsNotRead,
        Conflicts = file.Conflicts,
        First = file.First is long first ? Micros.ToIso(first) : null,
        Last = file.Last is long last ? Micros.ToIso(last) : null,
        Details = file.Details!,
    };
}
