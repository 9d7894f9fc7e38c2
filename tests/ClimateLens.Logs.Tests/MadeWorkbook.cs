using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace ClimateLens.Logs.Tests;

/// <summary>Writes small .xlsx files by hand: texts inline, numbers, and dates as serial numbers with a date format.</summary>
internal static class MadeWorkbook
{
    private const int DaysTo1904 = 1462; // serial number of 1 January 1904 in the other count

    /// <summary>A workbook of sheets by name; a DateTime becomes a date cell, a double a number, null an empty cell.</summary>
    public static byte[] Of(params (string Name, bool Hidden, object?[][] Rows)[] sheets) => Make(0, sheets);

    /// <summary>The same, with days counted from 1904 as old Macs do.</summary>
    public static byte[] From1904(params (string Name, bool Hidden, object?[][] Rows)[] sheets) => Make(DaysTo1904, sheets);

    private static byte[] Make(int firstDay, (string Name, bool Hidden, object?[][] Rows)[] sheets)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, "[Content_Types].xml", "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
                + string.Concat(sheets.Select((_, i) => $"<Override PartName=\"/xl/worksheets/sheet{i + 1}.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/>")) + "<Override PartName=\"/xl/styles.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/></Types>");
            Add(zip, "_rels/.rels", "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"r1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            Add(zip, "xl/_rels/workbook.xml.rels", "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                + string.Concat(sheets.Select((_, i) => $"<Relationship Id=\"s{i + 1}\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet\" Target=\"worksheets/sheet{i + 1}.xml\"/>")) + "<Relationship Id=\"st\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles\" Target=\"styles.xml\"/></Relationships>");
            Add(zip, "xl/workbook.xml", "<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">" + (firstDay > 0 ? "<workbookPr date1904=\"1\"/>" : "") + "<sheets>"
                + string.Concat(sheets.Select((s, i) => $"<sheet name=\"{s.Name}\" sheetId=\"{i + 1}\"{(s.Hidden ? " state=\"hidden\"" : "")} r:id=\"s{i + 1}\"/>")) + "</sheets></workbook>");
            Add(zip, "xl/styles.xml", "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><fonts count=\"1\"><font/></fonts><fills count=\"1\"><fill/></fills><borders count=\"1\"><border/></borders><cellStyleXfs count=\"1\"><xf/></cellStyleXfs><cellXfs count=\"2\"><xf numFmtId=\"0\"/><xf numFmtId=\"22\" applyNumberFormat=\"1\"/></cellXfs></styleSheet>");
            for (int i = 0; i < sheets.Length; i++)
            {
                Add(zip, $"xl/worksheets/sheet{i + 1}.xml", Sheet(sheets[i].Rows, firstDay));
            }
        }

        return bytes.ToArray();
    }

    private static string Sheet(object?[][] rows, int firstDay) => "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>"
        + string.Concat(rows.Select((row, r) => $"<row r=\"{r + 1}\">{string.Concat(row.Select((cell, c) => Cell(cell, firstDay, $"{(char)('A' + c)}{r + 1}")))}</row>"))
        + "</sheetData></worksheet>";

    private static string Cell(object? value, int firstDay, string at) => value switch
    {
        null => "",
        DateTime date => string.Create(CultureInfo.InvariantCulture, $"<c r=\"{at}\" s=\"1\"><v>{date.ToOADate() - firstDay:R}</v></c>"),
        TimeSpan time => string.Create(CultureInfo.InvariantCulture, $"<c r=\"{at}\" s=\"1\"><v>{time.TotalDays:R}</v></c>"),
        double number => string.Create(CultureInfo.InvariantCulture, $"<c r=\"{at}\"><v>{number:R}</v></c>"),
        "#N/A" => $"<c r=\"{at}\" t=\"e\"><v>#N/A</v></c>",
        _ => $"<c r=\"{at}\" t=\"inlineStr\"><is><t>{value}</t></is></c>",
    };

    private static void Add(ZipArchive zip, string name, string xml)
    {
        using Stream stream = zip.CreateEntry(name).Open();
        stream.Write(Encoding.UTF8.GetBytes("<?xml version=\"1.0\" encoding=\"UTF-8\"?>" + xml));
    }
}
