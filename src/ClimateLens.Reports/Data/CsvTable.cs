using System.Globalization;
using System.Text;
using ClimateLens.Reports.Json;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Reports.Data;

/// <summary>
/// A table as RFC 4180 text: UTF-8 without a byte order mark, comma, CRLF, decimal point, SI units, empty where unknown.
/// Text cells that a spreadsheet would run as a formula get an apostrophe in front (OWASP ASVS 1.2.10, CWE-1236);
/// numbers and times never need it and never get it.
/// </summary>
internal sealed class CsvTable
{
    private const string FormulaStarts = "=+-@\t\r\0";
    private readonly StringBuilder _text = new();
    private bool _rowHasCells;

    public CsvTable(params ReadOnlySpan<string> header)
    {
        foreach (string name in header)
        {
            Cell(name);
        }

        EndRow();
    }

    public CsvTable Text(string? text)
    {
        text ??= "";
        bool formula = text.Length > 0 && FormulaStarts.Contains(text[0], StringComparison.Ordinal);
        return Cell(formula ? "'" + text : text);
    }

    public CsvTable Number(double? number) => number is { } known && double.IsFinite(known)
        ? Cell(Rounding.Shorten(known).ToString("R", CultureInfo.InvariantCulture))
        : Cell("");

    public CsvTable Number(int number) => Cell(number.ToString(CultureInfo.InvariantCulture));

    public CsvTable Flag(bool? flag) => Cell(flag switch { true => "true", false => "false", null => "" });

    public CsvTable Date(LocalDate date) => Cell(LocalDatePattern.Iso.Format(date));

    public CsvTable Time(OffsetDateTime? time) => Cell(time is { } known ? TimeConverter.Pattern.Format(known) : "");

    public void EndRow()
    {
        _text.Append("\r\n");
        _rowHasCells = false;
    }

    public byte[] ToBytes() => Encoding.UTF8.GetBytes(_text.ToString());

    private CsvTable Cell(string text)
    {
        if (_rowHasCells)
        {
            _text.Append(',');
        }

        _rowHasCells = true;
        bool quote = text.AsSpan().IndexOfAny("\",\r\n") >= 0;
        _text.Append(quote ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text);
        return this;
    }
}
