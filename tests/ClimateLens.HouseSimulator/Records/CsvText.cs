using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.HouseSimulator.Records;

/// <summary>Plain comma-separated rows, quoted where they must be.</summary>
public sealed class CsvText
{
    private static readonly LocalDateTimePattern Stamp = LocalDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd HH':'mm");
    private readonly StringBuilder _text = new();

    public CsvText(params string[] header) => Row(header);

    /// <summary>A local time as people write it, to the minute.</summary>
    public static string Time(LocalDateTime time) => Stamp.Format(time);

    /// <summary>A number with a fixed pattern, invariant.</summary>
    public static string Number(double value, string pattern)
    {
        string text = value.ToString(pattern, CultureInfo.InvariantCulture);
        return text.StartsWith('-') && text.All(c => c is '-' or '0' or '.') ? text[1..] : text;
    }

    public void Row(params string[] fields)
        => _text.AppendJoin(',', fields.Select(Quoted)).Append('\n');

    public override string ToString() => _text.ToString();

    private static string Quoted(string field)
        => field.AsSpan().ContainsAny(",\"\n") ? $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : field;
}
