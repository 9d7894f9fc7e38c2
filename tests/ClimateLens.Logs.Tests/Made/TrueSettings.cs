using System.Globalization;
using System.Text;

namespace ClimateLens.Logs.Tests.Made;

/// <summary>The table of the nursery file that reads a made export, as somebody writes it who knows the file.</summary>
internal static class TrueSettings
{
    /// <summary>Name of the export.</summary>
    public const string Name = "made";

    /// <summary>The table.</summary>
    /// <param name="style">How the file is written.</param>
    /// <param name="columns">Its columns of values.</param>
    /// <param name="stamps">How many columns hold the time.</param>
    /// <param name="titles">Lines above the header.</param>
    /// <param name="year">Year of the oldest row.</param>
    public static string Of(MakerStyle style, IReadOnlyList<MadeColumn> columns, int stamps, int titles, int year)
    {
        string mark = style.BothMarks ? ".," : $"{style.Mark}";
        var toml = new StringBuilder();
        toml.AppendLine(CultureInfo.InvariantCulture, $"[[export]]\nname = \"{Name}\"\nhouse = \"1\"\nfiles = [\"made.*\"]\nencoding = \"{(style.Encoding == "bom" ? "utf-8" : style.Encoding)}\"");
        toml.AppendLine(CultureInfo.InvariantCulture, $"delimiter = \"{(style.Delimiter == '\t' ? "\\t" : $"{style.Delimiter}")}\"\ndecimalChar = \"{mark}\"{(style.Groups ? $"\ngroupChar = \"{(style.Mark == '.' ? ',' : '.')}\"" : "")}");
        toml.AppendLine(style.NoNames ? $"headerRow = 0\ndataRow = {titles + 1}" : style.Units == "row" ? $"headerRows = [{titles + 1}, {titles + 2}]" : $"headerRow = {titles + 1}");
        toml.AppendLine(CultureInfo.InvariantCulture, $"missingValues = [\"-999\"]\n[export.time]\nposition = [{string.Join(", ", Enumerable.Range(1, stamps))}]\nformat = [{string.Join(", ", Formats(style).Select(f => $"\"{f}\""))}]{(style.Stamp.LacksYear ? $"\nyear = {year}" : "")}");
        for (int i = 0; i < columns.Count; i++)
        {
            if (columns[i].Known != "other")
            {
                string sensor = columns[i].Sensor.Length == 0 ? "" : $"\nsensor = \"{columns[i].Sensor}\"";
                toml.AppendLine(CultureInfo.InvariantCulture, $"[[export.column]]\nposition = {stamps + i + 1}\nchannel = \"{columns[i].Known}\"\nunit = \"{columns[i].Unit}\"{sensor}");
            }
        }

        return toml.ToString();
    }

    private static IEnumerable<string> Formats(MakerStyle style)
    {
        MakerStamp stamp = style.Stamp;
        return style.BareMidnight && stamp.BareFormat != stamp.Format ? [stamp.Format, stamp.BareFormat!]
            : style.SwappedDates ? [stamp.Format, stamp.Swapped!]
            : [stamp.Format];
    }
}
