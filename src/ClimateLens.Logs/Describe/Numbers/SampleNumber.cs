using System.Globalization;

namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>Reads the numbers of a sample once the marks are known.</summary>
internal static class SampleNumber
{
    /// <summary>The value of a trimmed cell; NaN for what is no number.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="marks">"." or "," or ".,": the decimal marks; anything else leaves no number with a mark.</param>
    public static double Read(string cell, string marks)
    {
        NumberShape shape = NumberShapes.Of(cell);
        if (shape == NumberShape.None)
        {
            return double.NaN;
        }

        string text = shape switch
        {
            NumberShape.Whole => cell,
            NumberShape.GroupedByBlank => Plain(string.Concat(cell.Where(c => !" \u00A0\u202F'’".Contains(c))), cell.LastIndexOf(',') > cell.LastIndexOf('.') ? "," : "."),
            _ => Plain(cell, marks),
        };
        return double.TryParse(text.Replace('\u2212', '-').Replace(" ", "", StringComparison.Ordinal), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out double value)
            && double.IsFinite(value) ? value : double.NaN;
    }

    private static string Plain(string cell, string marks) => marks switch
    {
        "." => cell.Replace(",", "", StringComparison.Ordinal),
        "," => cell.Replace(".", "", StringComparison.Ordinal).Replace(',', '.'),
        ".," => cell.Replace(',', '.'),
        _ => cell.Contains('.') || cell.Contains(',') ? "" : cell,
    };
}
