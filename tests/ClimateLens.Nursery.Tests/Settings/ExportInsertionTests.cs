using System.Text;
using ClimateLens.Nursery.Settings.Editing;

namespace ClimateLens.Nursery.Tests.Settings;

/// <summary>A draft goes behind the last export with its remarks; every other byte of the file stays.</summary>
public class ExportInsertionTests
{
    private const string Draft = """
        [[export]]
        name = "second"
        house = "1"
        files = ["b.csv"]
          [export.time]
          field = "Time"
          format = "iso"
          [[export.column]]
          field = "Temp"
          channel = "airTemperature"
          unit = "Cel"

        """;

    /// <summary>What follows the last key of an export, and how much of it is a part of the export.</summary>
    [Theory]
    [InlineData("", 0)]
    [InlineData("\n\n# of the whole file\n", 1)]
    [InlineData("\n  # Note: one\n  # Note: two\n", 28)]
    [InlineData("\n\n  # Not used:\n  #   column 4\n\n  # Note: one\n", 45)]
    [InlineData("\n# beside it\n\n# of the whole file\n", 13)]
    [InlineData("\n# of the house below\n[[house]]\nid = \"2\"\n", 1)]
    [InlineData("\n\n  # of the house below\n[[house]]\nid = \"2\"\n", 1)]
    [InlineData("\r\n\r\n  # Note: one\r\n\r\n# end\r\n", 19)]
    public void Insert_GoesBehindTheRemarksOfTheExportBefore_AndChangesNothingElse(string behind, int its)
    {
        string lineEnd = behind.Contains('\r', StringComparison.Ordinal) ? "\r\n" : "\n";
        string file = (NurseryText.Smallest.TrimEnd() + behind).Replace("\r\n", "\n", StringComparison.Ordinal).Replace("\n", lineEnd, StringComparison.Ordinal);
        string edited = Encoding.UTF8.GetString(ExportInsertion.Insert("nursery.toml", Encoding.UTF8.GetBytes(file), Draft));
        int at = edited.IndexOf("[[export]]" + lineEnd + "name = \"second\"", StringComparison.Ordinal);
        string before = edited[..at], draft = Draft.Replace("\n", lineEnd, StringComparison.Ordinal);
        int kept = file.Length - behind.Length + its;
        Assert.Equal(file[..kept].TrimEnd(), before.TrimEnd());
        Assert.Equal(file[kept..].Trim(), edited[(at + draft.Length)..].Trim());
    }
}
