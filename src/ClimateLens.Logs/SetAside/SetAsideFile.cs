using System.Globalization;
using System.Text;
using ClimateLens.Logs.Sheets;
using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Imports;
using CsvHelper;

namespace ClimateLens.Logs.SetAside;

/// <summary>What was set aside of one imported file, as the store keeps it.</summary>
/// <param name="File">File as in <see cref="ClimateLens.Nursery.Problems.Problem"/>.</param>
/// <param name="House">House of its export, or "nursery".</param>
/// <param name="Kind">Record kind, or null for readings.</param>
/// <param name="Source">Export name.</param>
/// <param name="IsOlder">Whether a newer version of the file was imported since, so that it no longer counts.</param>
/// <param name="RowsPath">Where the rows lie.</param>
public sealed record SetAsideFile(string File, string House, string? Kind, string Source, bool IsOlder, string RowsPath)
{
    private const int FewestFields = 5, AllFields = 7;

    /// <summary>Whether the file of rows is gone from the store.</summary>
    public bool IsLost => !System.IO.File.Exists(RowsPath);

    /// <summary>The rows, in the order in which they were set aside; none when they are lost.</summary>
    public IEnumerable<SetAsideRow> Rows()
    {
        if (IsLost)
        {
            yield break;
        }

        using FileStream stream = System.IO.File.OpenRead(RowsPath);
        using var reader = CsvReader.Create(stream, new CsvReaderOptions { Separator = ',' }, leaveOpen: true);
        while (reader.Read())
        {
            if (reader.FieldCount >= FewestFields && Row(reader) is SetAsideRow row)
            {
                yield return row;
            }
        }
    }

    /// <summary>The files of a source that had anything set aside.</summary>
    internal static IEnumerable<SetAsideFile> Of(string store, LedgerSource source)
        => source.Files
            .Select((file, at) => (file, IsOlder: source.Files.Skip(at + 1).Any(later => later.File == file.File)))
            .Where(f => f.file.SetAsideFile is not null)
            .Select(f => new SetAsideFile(f.file.File, source.House, source.Kind, source.Source, f.IsOlder, Path.Combine(store, f.file.SetAsideFile!.Path)));

    private static SetAsideRow? Row(CsvReader reader)
    {
        string Cell(int i) => i < reader.FieldCount ? Encoding.UTF8.GetString(reader.GetSpan(i)) : "";
        string Text(int i) => Encoding.UTF8.GetString(SetAsideCsv.Restore(Cell(i)));
        if (!int.TryParse(Cell(1), NumberStyles.None, CultureInfo.InvariantCulture, out int line))
        {
            return null; // the header
        }

        int? column = int.TryParse(Cell(2), NumberStyles.None, CultureInfo.InvariantCulture, out int field) ? field : null;
        string text = Text(4), found = reader.FieldCount >= AllFields ? Text(5) : "";
        return new SetAsideRow(line, column, Cell(3), ReasonList.KindOf(Cell(3)), text, found.Length > 0 ? found : text, reader.FieldCount >= AllFields ? Text(6) : "");
    }
}

/// <summary>A row or cell that was set aside.</summary>
/// <param name="Line">1-based line of the file.</param>
/// <param name="Column">1-based field, or null for the whole row.</param>
/// <param name="Code">Why, as in docs/problems.md.</param>
/// <param name="Kind">What it took away.</param>
/// <param name="Text">The row as it stood in the file; or the cell; or the older values.</param>
/// <param name="Found">What was looked at.</param>
/// <param name="Expected">What would have been right; empty where an older version of the program set it aside.</param>
public sealed record SetAsideRow(int Line, int? Column, string Code, SetAsideKind Kind, string Text, string Found, string Expected);
