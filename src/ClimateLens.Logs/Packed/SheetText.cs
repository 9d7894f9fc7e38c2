using System.Globalization;
using System.Text;
using ClimateLens.Nursery.Settings;
using ExcelDataReader;

namespace ClimateLens.Logs.Packed;

/// <summary>Writes the sheet that a reader of workbooks stands at.</summary>
/// <param name="reader">The reader, before the first row of the sheet.</param>
/// <param name="dialect">Of the export: its decimal mark is used.</param>
/// <param name="packedBytes">Size of the workbook. [bytes]</param>
internal sealed class SheetText(IExcelDataReader reader, DialectSettings dialect, long packedBytes)
{
    private static readonly UTF8Encoding Utf8 = new(false);
    private static readonly TimeSpan Blur = TimeSpan.FromMilliseconds(5); // serial dates are doubles: 10:05 comes out as 10:04:59.998

    private static readonly DateTime FirstOf1904 = new(1904, 1, 1); // day 0 of workbooks that count from 1904, where a time of day by itself falls

    /// <summary>Whether any cell held something.</summary>
    public bool HasCells { get; private set; }

    /// <summary>Whether any cell of the sheet holds something.</summary>
    public static bool HasAny(IExcelDataReader reader)
    {
        CheckExtent(reader);
        while (reader.Read())
        {
            for (int i = 0; i < reader.FieldCount; i++)
            {
                if (reader.GetValue(i) is not null and not "")
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>The text, at its start.</summary>
    public Stream Write()
    {
        CheckExtent(reader);
        Stream text = new MemoryStream();
        var line = new StringBuilder();
        while (reader.Read())
        {
            line.Clear();
            for (int i = 0; i < reader.FieldCount; i++)
            {
                string cell = TextOf(i);
                HasCells |= cell.Length > 0;
                line.Append(i == 0 ? "" : ",").Append(Quoted(cell));
            }

            byte[] bytes = Utf8.GetBytes(line.Append('\n').ToString());
            Unpacking.Check(text.Length + bytes.Length, packedBytes);
            text = text is MemoryStream && text.Length + bytes.Length > PackedLimits.MemoryBytes ? Unpacking.ToDisk(text) : text;
            text.Write(bytes);
        }

        text.Position = 0;
        return text;
    }

    /// <summary>A sheet that says it is larger than any sheet may be is damaged, or made to fill memory.</summary>
    private static void CheckExtent(IExcelDataReader reader)
    {
        if (reader.FieldCount > PackedLimits.SheetColumns || reader.RowCount > PackedLimits.SheetRows)
        {
            throw new UnpackException($"a sheet of {reader.RowCount} rows and {reader.FieldCount} columns", $"at most {PackedLimits.SheetRows} and {PackedLimits.SheetColumns}", "Save it again, or as CSV.");
        }
    }

    private static string Quoted(string cell)
    {
        string one = cell.AsSpan().IndexOfAny('\r', '\n') < 0 ? cell : cell.ReplaceLineEndings(" ");
        return one.AsSpan().IndexOfAny(',', '"') < 0 ? one : $"\"{one.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    private string TextOf(int column) => reader.GetValue(column) switch
    {
        null => "",
        string text => text,
        bool flag => flag ? "true" : "false",
        DateTime stamp => TextOf(stamp),
        TimeSpan time => TextOf(DateTime.MinValue + time),
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture).Replace('.', dialect.DecimalChar),
        object other => other.ToString() ?? "",
    };

    /// <summary>A date without a time of day where it is midnight, and a time of day where the cell holds no date (serial numbers under 1).</summary>
    private static string TextOf(DateTime stamp)
    {
        DateTime near = new((stamp.Ticks + (TimeSpan.TicksPerSecond / 2)) / TimeSpan.TicksPerSecond * TimeSpan.TicksPerSecond);
        stamp = (near - stamp).Duration() <= Blur ? near : stamp;
        string time = stamp.ToString("HH:mm:ss.FFF", CultureInfo.InvariantCulture);
        string date = stamp.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return stamp.Year < 1900 || stamp.Date == FirstOf1904 ? time : stamp.TimeOfDay == TimeSpan.Zero ? date : $"{date}T{time}";
    }
}
