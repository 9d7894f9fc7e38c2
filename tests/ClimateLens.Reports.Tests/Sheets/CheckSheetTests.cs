using System.Text;
using System.Text.RegularExpressions;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Sheets;
using ClimateLens.Science.Pots;
using NodaTime;

namespace ClimateLens.Reports.Tests.Sheets;

public partial class CheckSheetTests
{
    private static readonly HouseSettings House = new("1", "House <1>", null, [], [], new RiskRules())
    {
        Benches = ["A & B", "C"],
        Pots = new PotRules { Rounds = [new("07:00 to 09:00", new LocalTime(7, 0), new LocalTime(9, 0))] },
    };

    [Fact]
    public void ForADay_House_NamesBenchesRoundsAndSignsAndNeedsNothingElse()
    {
        string page = Text(CheckSheet.ForADay(House, PaperFormat.A4));
        Assert.Contains("House &lt;1&gt;", page, StringComparison.Ordinal);
        Assert.Equal(8, Count(page, "<td>A &amp; B</td>"));
        Assert.Equal(8, Count(page, "<td>C</td>"));
        Assert.Contains("07:00 to 09:00", page, StringComparison.Ordinal);
        Assert.All(MoistureScale.Names, name => Assert.Contains(name, page, StringComparison.Ordinal));
        Assert.DoesNotContain("http", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PaperFormat.A4, "size: A4")]
    [InlineData(PaperFormat.Letter, "size: letter")]
    public void ForADay_Paper_IsNamedInItsStyle(PaperFormat paper, string style) => Assert.Contains(style, Text(CheckSheet.ForADay(null, paper)), StringComparison.Ordinal);

    [Fact]
    public void ForADay_NoHouse_HasBlankRows() => Assert.Equal(24, Rows().Count(Text(CheckSheet.ForADay(null, PaperFormat.A4))));

    [Theory]
    [InlineData(8, 2)]
    [InlineData(30, 2)]
    [InlineData(31, 4)]
    public void SideBySide_Pots_StandOnASheetOfEachPerson(int pots, int sheets)
    {
        string page = Text(CheckSheet.SideBySide(House, pots, PaperFormat.A4));
        Assert.Equal(2 * pots, NumberedRows().Count(page));
        Assert.Equal(sheets, Count(page, "<main class=\"sheet\">"));
        Assert.Equal(sheets / 2, Count(page, "first person"));
        Assert.Equal(sheets / 2, Count(page, "second person"));
    }

    [Theory]
    [InlineData(7)]
    [InlineData(61)]
    public void SideBySide_ImpossibleNumber_Throws(int pots) => Assert.Throws<ArgumentOutOfRangeException>(() => CheckSheet.SideBySide(null, pots, PaperFormat.A4));

    private static string Text(byte[] page) => Encoding.UTF8.GetString(page);

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    [GeneratedRegex("<tr><td></td><td></td>")]
    private static partial Regex Rows();

    [GeneratedRegex("<tr><td>[0-9]+</td>")]
    private static partial Regex NumberedRows();
}
