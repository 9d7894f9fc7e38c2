using System.IO.Compression;
using System.Text;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Settings;
using ExcelDataReader;
using ExcelDataReader.Exceptions;

namespace ClimateLens.Logs.Packed;

/// <summary>
/// Writes a sheet of a workbook as delimited text, a line a row of the sheet, so that all that follows is the same for both.
/// Dates come out as ISO 8601, numbers with the decimal mark of the export, and cells with an error (#N/A) as empty ones.
/// </summary>
internal static class WorkbookText
{
    static WorkbookText() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    /// <summary>How the text is cut, whatever the dialect of the export.</summary>
    public static DialectSettings Dialect(DialectSettings export) => export with { Encoding = "utf-8", Delimiter = ',', QuoteChar = '"', Widths = [] };

    /// <summary>The text of the sheet that the export asks for; of the only visible one with rows where it asks for none.</summary>
    /// <exception cref="UnpackException">There is no such sheet, or the workbook cannot be read.</exception>
    public static Stream Of(FileStream file, DialectSettings dialect)
        => Read(file, reader => dialect.Sheet is FieldRef sheet ? Named(reader, sheet, dialect, file.Length) : OnlyOne(reader, dialect, file.Length));

    /// <summary>Names of the visible sheets that have rows.</summary>
    /// <exception cref="UnpackException">The workbook cannot be read.</exception>
    public static IReadOnlyList<string> SheetsOf(FileStream file) => Read(file, reader =>
    {
        var names = new List<string>();
        do
        {
            names.AddRange(IsVisible(reader) && SheetText.HasAny(reader) ? [reader.Name] : Array.Empty<string>());
        }
        while (reader.NextResult());
        return names;
    });

    private static T Read<T>(FileStream file, Func<IExcelDataReader, T> read)
    {
        CheckSize(file);
        try
        {
            using IExcelDataReader reader = ExcelReaderFactory.CreateReader(file, new ExcelReaderConfiguration { LeaveOpen = true });
            return read(reader);
        }
        catch (InvalidPasswordException)
        {
            throw new UnpackException("a workbook with a password", "one without", "Save it without a password.");
        }
        catch (Exception e) when (e is not UnpackException and not OutOfMemoryException)
        {
            // The reader of workbooks throws whatever a broken part makes it throw; a damaged file is a fact about the file.
            throw new UnpackException($"a workbook that cannot be read ({SafeText.Quote(e.GetType().Name)})", "a whole one", "Open it and save it again, as .xlsx or as CSV.");
        }
    }

    private static void CheckSize(FileStream file)
    {
        Span<byte> mark = stackalloc byte[2];
        file.ReadExactly(mark);
        file.Position = 0;
        if (mark is [(byte)'P', (byte)'K'])
        {
            using var parts = new ZipArchive(file, ZipArchiveMode.Read, leaveOpen: true);
            long bytes = (long)Math.Min(long.MaxValue / 2, parts.Entries.Sum(e => (double)e.Length));
            if (bytes > PackedLimits.WorkbookBytes)
            {
                throw new UnpackException($"a workbook of {bytes >> 20} MiB", $"at most {PackedLimits.WorkbookBytes >> 20} MiB", "Save shorter periods, or CSV.");
            }

            Unpacking.Check(bytes, file.Length);
            file.Position = 0;
        }
    }

    private static bool IsVisible(IExcelDataReader reader) => string.Equals(reader.VisibleState, "visible", StringComparison.OrdinalIgnoreCase);

    private static Stream Named(IExcelDataReader reader, FieldRef sheet, DialectSettings dialect, long packedBytes)
    {
        var names = new List<string>();
        do
        {
            names.Add(reader.Name);
            if (sheet.Name is null ? names.Count == sheet.Position : string.Equals(reader.Name.Trim(), sheet.Name.Trim(), StringComparison.OrdinalIgnoreCase))
            {
                return new SheetText(reader, dialect, packedBytes).Write();
            }
        }
        while (reader.NextResult());
        throw new UnpackException($"no sheet {sheet}", "one of " + string.Join(", ", names.Select(SafeText.Quote)), "Correct sheet in the [[export]].");
    }

    private static Stream OnlyOne(IExcelDataReader reader, DialectSettings dialect, long packedBytes)
    {
        Stream? text = null;
        var names = new List<string>();
        do
        {
            if (!IsVisible(reader))
            {
                continue;
            }

            if (text is null)
            {
                var sheet = new SheetText(reader, dialect, packedBytes);
                Stream written = sheet.Write();
                text = sheet.HasCells ? written : null;
                names.AddRange(sheet.HasCells ? [reader.Name] : []);
            }
            else if (SheetText.HasAny(reader))
            {
                names.Add(reader.Name);
            }
        }
        while (reader.NextResult());

        if (names.Count > 1)
        {
            text?.Dispose();
            throw new UnpackException("a workbook with several sheets: " + string.Join(", ", names.Select(SafeText.Quote)), "the name of one", $"Add to the [[export]]: sheet = {SafeText.Quote(names[0])}");
        }

        return text ?? new MemoryStream();
    }
}
