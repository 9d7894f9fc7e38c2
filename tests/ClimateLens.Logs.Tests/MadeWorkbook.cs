using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace ClimateLens.Logs.Tests;

/// <summary>Writes small .xlsx files by hand: texts inline, numbers, and dates as serial numbers with a date format.</summary>
internal static class MadeWorkbook
{
    /// <summary>A workbook of sheets by name; a DateTime becomes a date cell, a double a number, null an empty cell.</summary>
    public static byte[] Of(params (string Name, bool Hidden, object?[][] Rows)[] sheets)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, "[Content_Types].xml", "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
                + string.Concat(sheets.Select((_, i) => $"<Override PartName=\"/xl/worksheets/sheet{i + 1}.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/>")) + "<Override PartName=\"/xl/styles.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/></Types>");
            Add(zip, "_rels/.rels", "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"r1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            Add(zip, "xl/_rels/workbook.xml.rels", "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                + string.Concat(sheets.Select((_, i) => $"<Relationship Id=\"s{i + 1}\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet\" Target=\"worksheets/sheet{i + 1}.xml\"/>")) + "<Relationship Id=\"st\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles\" Target=\"styles.xml\"/></Relationships>");
            Add(zip, "xl/workbook.xml", "<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><sheets>"
                + string.Concat(sheets.Select((s, i) => $"<sheet name=\"{s.Name}\" sheetId=\"{i + 1}\"{(s.Hidden ? " state=\"hidden\"" : "")} r:id=\"s{i + 1}\"/>")) + "</sheets></workbook>");
            Add(zip, "xl/styles.xml", "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><fonts count=\"1\"><font/></fonts><fills count=\"1\"><fill/></fills><borders count=\"1\"><border/></borders><cellStyleXfs count=\"1\"><xf/></cellStyleXfs><cellXfs count=\"2\"><xf numFmtId=\"0\"/><xf numFmtId=\"22\" applyNumberFormat=\"1\"/></cellXfs></styleSheet>");
            for (int i = 0; i < sheets.Length; i++)
            {
                Add(zip, $"xl/worksheets/sheet{i + 1}.xml", Sheet(sheets[i].Rows));
            }
        }

        return bytes.ToArray();
    }

    private static string Sheet(object?[][] rows) => "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>"
        + string.Concat(rows.Select((row, r) => $"<row r=\"{r + 1}\">{string.Concat(row.Select((cell, c) => Cell(cell, $"{(char)('A' + c)}{r + 1}")))}</row>"))
        + "</sheetData></worksheet>";

    private static string Cell(object? value, string at) => value switch
    {
        null => "",
        DateTime date => string.Create(CultureInfo.InvariantCulture, $"<c r=\"{at}\" s=\"1\"><v>{date.ToOADate():R}</v></c>"),
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
