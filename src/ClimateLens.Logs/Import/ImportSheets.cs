using ClimateLens.Logs.Store;
using ClimateLens.Nursery;

namespace ClimateLens.Logs.Import;

/// <summary>Turns entries of the ledger into sheets.</summary>
internal static class ImportSheets
{
    /// <summary>The sheet of a file.</summary>
    public static ImportSheet Of(LedgerFile file, SourceKey key) => new(
        file.File,
        file.Sha256,
        key.House,
        key.Source,
        file.RowsRead,
        file.Accepted,
        file.SetAside,
        file.Duplicates,
        file.Blank,
        file.First is long first ? Micros.ToInstant(first) : null,
        file.Last is long last ? Micros.ToInstant(last) : null,
        file.CellsNotRead,
        file.Conflicts)
    {
        From = file.From is long from ? Micros.ToInstant(from) : null,
        To = file.To is long to ? Micros.ToInstant(to) : null,
        Details = file.Details,
        SheetSha256 = file.Sheet?.Sha256 ?? "",
    };
}
