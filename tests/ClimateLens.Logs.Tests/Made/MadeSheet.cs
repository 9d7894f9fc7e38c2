using System.Globalization;

namespace ClimateLens.Logs.Tests.Made;

/// <summary>Writes a made export as a workbook: times and numbers as what they are.</summary>
internal static class MadeSheet
{
    /// <summary>The workbook's bytes.</summary>
    public static byte[] Of(MakerStyle style, int stamps, DateTime[] times, List<MadeLine> lines, List<string[]> rows)
        => MadeWorkbook.Of(("Data", false, [.. lines.Select(line => line.Rows is [var row] ? Row(style, stamps, times[row], rows[row]) : Texts(style, line.Text))]));

    private static object?[] Row(MakerStyle style, int stamps, DateTime time, string[] cells)
        => [.. Stamp(style, time, cells[..stamps]), .. cells[stamps..].Select(cell => cell.Length == 0 ? null : cell == style.Gap && cell != "-999" ? cell : (object)Number(style, cell))];

    private static object?[] Stamp(MakerStyle style, DateTime time, string[] cells)
        => style.LateMidnight || style.SwappedDates || style.Stamp.LacksYear || style.Stamp.Name.EndsWith('Z') ? cells
        : cells.Length == 1 && !style.Stamp.IsUtc && style.Stamp.Format != "excel1900" ? [time]
        : cells.Length == 2 && !style.Stamp.Name.EndsWith("HHmm", StringComparison.Ordinal) ? [time.Date, time.TimeOfDay]
        : [.. cells.Select(cell => (object)double.Parse(cell.Replace(',', '.'), CultureInfo.InvariantCulture))];

    private static double Number(MakerStyle style, string cell)
    {
        string bare = style.Groups ? cell.Replace(style.Mark == '.' ? "," : ".", "", StringComparison.Ordinal) : cell;
        return double.Parse(bare.Replace(',', '.'), CultureInfo.InvariantCulture);
    }

    private static object?[] Texts(MakerStyle style, string line) => [.. line.Split(style.Delimiter).Select(cell => cell.Trim('"')).Select(cell => cell.Length == 0 ? null : cell)];
}
