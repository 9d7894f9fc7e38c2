using System.Reflection;
using System.Text.RegularExpressions;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings.Reading;
using ClimateLens.Nursery.Settings.Tables;

namespace ClimateLens.Nursery.Tests.Settings;

/// <summary>docs/nursery-file.md tells of every key, channel, field and code, and of no other.</summary>
public class NurseryFilePageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "nursery-file.md"));

    public static TheoryData<string, string[]> Tables => new()
    {
        { "## `[nursery]`", NurseryTable.Keys },
        { "## `[[house]]`", HouseTable.Keys },
        { "### `[house.rules]`", RulesTable.Keys },
        { "### `[house.pots]`", PotsTable.Keys },
        { "### `[house.care]`", CareTable.Keys },
        { "### `[[house.tank]]`", CareTable.TankKeys },
        { "### `[[house.crop]]`", [.. CropTable.Keys, .. CropTable.SpacingKeys] },
        { "### `[[house.sensor]]`", SensorTable.Keys },
        { "## `[[export]]`", ExportTable.Keys },
        { "### `[export.time]`", TimeTable.Keys },
        { "### `[[export.column]]`", ColumnTable.Keys },
        { "## Codes of problems", [.. typeof(FaultCodes).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!)] },
    };

    [Theory]
    [MemberData(nameof(Tables))]
    public void Table_OnThePage_NamesEveryKeyAndNoOther(string heading, string[] keys)
    {
        string section = Page.Split(heading + "\n")[1];
        section = Regex.Split(section, "^##", RegexOptions.Multiline)[0];
        string[] told = [.. Regex.Matches(section, @"^\| `([\w.]+)` \|", RegexOptions.Multiline).Select(m => m.Groups[1].Value)];
        Assert.Equal(keys.Order(StringComparer.Ordinal), told.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Example_OnThePage_ReadsWithoutAWarning()
    {
        string example = Regex.Match(Page, "```toml\n(.*?)```", RegexOptions.Singleline).Groups[1].Value;
        Assert.Empty(NurseryText.Parse(example).Warnings);
    }

    [Fact]
    public void Channels_OnThePage_AreThoseOfTheCatalogue()
        => Assert.Equal(ChannelRows(), Between("channels"));

    [Fact]
    public void Units_OnThePage_AreThoseOfTheCatalogue()
        => Assert.Equal(UnitRows(), Between("units"));

    [Fact]
    public void Records_OnThePage_AreThoseOfTheCatalogue()
        => Assert.Equal(RecordRows(), Between("records"));

    [Fact]
    public void Messages_OnThePage_AreThoseOfTheTool()
    {
        string[] told = [.. Page.Split('\n').Where(l => l.StartsWith("nursery.toml:", StringComparison.Ordinal))];
        string[] real = [.. NurseryText.ProblemsOf(NurseryText.Smallest.With("timeZone", "timezone").With("53.2", "532")).Select(p => p.ToString())];
        Assert.Equal(real, told);
    }

    private static string Between(string name)
        => Regex.Match(Page, $"<!-- {name}:.*?-->\n(.*?)\n<!-- end of {name} -->", RegexOptions.Singleline).Groups[1].Value;

    private static string ChannelRows()
    {
        IEnumerable<string> rows = ChannelCatalogue.All.Select(c => $"| `{c.Name}` | {c.Label} | {Spaced(c.Quantity)} | `{UnitCatalogue.SiOf(c.Quantity).Code}` |");
        return string.Join('\n', ["| Channel | What it is | Quantity | Kept in |", "|---|---|---|---|", .. rows]);
    }

    private static string UnitRows()
    {
        IEnumerable<string> rows = Enum.GetValues<Quantity>().Select(q => $"| {Spaced(q)} | {Units(q)} |");
        return string.Join('\n', ["| Quantity | Units |", "|---|---|", .. rows]);
    }

    private static string Spaced(Quantity quantity) => Regex.Replace(quantity.ToString(), "(?<!^)([A-Z])", " $1").ToLowerInvariant();

    private static string RecordRows()
    {
        IEnumerable<string> rows = Enum.GetValues<RecordKind>()
            .SelectMany(kind => RecordFields.Of(kind).SkipLast(4).Select(f => $"| `{RecordKinds.WordOf(kind)}` | `{f.Name}` | {TypeOf(f)} |"));
        return string.Join('\n', ["| Kind | Field | What it holds |", "|---|---|---|", .. rows]);
    }

    private static string TypeOf(RecordField field) => field.Type switch
    {
        RecordFieldType.Text => "text",
        RecordFieldType.Time => "a time, written as the export's times are",
        RecordFieldType.Level => "moisture level 1 (dry) to 5 (saturated)",
        RecordFieldType.Method => $"one of {string.Join(", ", WateringMethods.Words.Select(w => $"`{w}`"))}",
        _ when field.Quantity is { } quantity => $"number ({Spaced(quantity)}){(field.DefaultUnit is { } usual ? $"; `{usual}` when left out" : "")}",
        _ => "number",
    };

    private static string Units(Quantity quantity) => string.Join(" · ", UnitCatalogue.KindsOf(quantity).Select(kind => string.Join(' ', UnitCatalogue.CodesOf(quantity).Where(c => UnitCatalogue.TryGet(quantity, c, out Unit? unit) && unit.IsLike(kind)).Select(c => $"`{c}`"))));
}
