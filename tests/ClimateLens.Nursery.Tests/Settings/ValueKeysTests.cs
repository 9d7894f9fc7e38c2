using ClimateLens.Nursery.Settings;
using NodaTime;

namespace ClimateLens.Nursery.Tests.Settings;

/// <summary>What a column says of its numbers.</summary>
public class ValueKeysTests
{
    [Fact]
    public void Column_WithoutMarks_HasThoseOfTheExport()
        => Assert.Null(Column("").Marks);

    [Theory]
    [InlineData("decimalChar = \",\"", ',', false, null)]
    [InlineData("decimalChar = \".,\"", '.', true, null)]
    [InlineData("decimalChar = \",.\"", '.', true, null)]
    [InlineData("groupChar = \" \"", '.', false, ' ')]
    [InlineData("decimalChar = \",\"\ngroupChar = \".\"", ',', false, '.')]
    public void Column_WithMarks_HasItsOwn(string keys, char mark, bool either, char? group)
        => Assert.Equal(new NumberMarks(mark, either, group), Column(keys).Marks);

    [Fact]
    public void Column_WithTheDecimalMarkThatGroupsTheExport_HasNoGroups()
    {
        string text = NurseryText.Smallest.Replace("files = [\"a.csv\"]", "files = [\"a.csv\"]\ndelimiter = \";\"\ndecimalChar = \",\"\ngroupChar = \".\"", StringComparison.Ordinal) + "\ndecimalChar = \".\"";
        ExportSettings export = NurseryText.Parse(text).Exports[0];
        Assert.Equal(new NumberMarks(',', false, '.'), export.Dialect.Marks);
        Assert.Equal(new NumberMarks('.', false, null), export.Columns[0].Marks);
    }

    [Fact]
    public void Export_WithEitherMark_SaysSo()
    {
        DialectSettings dialect = NurseryText.Parse(NurseryText.Smallest.Replace("files = [\"a.csv\"]", "files = [\"a.csv\"]\ndelimiter = \";\"\ndecimalChar = \".,\"", StringComparison.Ordinal)).Exports[0].Dialect;
        Assert.Equal(new NumberMarks('.', true, null), dialect.Marks);
    }

    [Theory]
    [InlineData("waterVolume", "L")]
    [InlineData("rain", "mm")]
    [InlineData("radiationSum", "J/cm2")]
    public void Column_OfAnAmount_MayCount(string channel, string unit)
    {
        string text = NurseryText.Smallest.Replace("airTemperature", channel, StringComparison.Ordinal).Replace("\"Cel\"", $"\"{unit}\"", StringComparison.Ordinal);
        Assert.True(NurseryText.Parse(text + "\ncounter = true").Exports[0].Columns[0].Counter);
        Assert.False(NurseryText.Parse(text).Exports[0].Columns[0].Counter);
    }

    [Fact]
    public void Column_WithUnitChanges_HasThemInOrder()
    {
        UnitChange[] changes = [.. Column("unitChanges = [{ from = 2025-10-14T12:30:15, unit = \"[degf]\" }, { from = 2025-11-01, unit = \"Cel\" }]").UnitChanges];
        Assert.Equal([new LocalDateTime(2025, 10, 14, 12, 30, 15), new LocalDateTime(2025, 11, 1, 0, 0)], changes.Select(c => c.From));
        Assert.Equal(["[degF]", "Cel"], changes.Select(c => c.Unit));
    }

    private static ColumnSettings Column(string keys) => NurseryText.Parse(NurseryText.Smallest + "\n" + keys).Exports[0].Columns[0];
}
