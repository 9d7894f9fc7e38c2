using System.Text;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Tests.Settings;

public class NurseryFileTests
{
    private static readonly NurserySettings Small = NurseryText.Parse(NurseryText.Smallest);
    private static readonly NurserySettings Full = NurseryText.Parse(NurseryText.Fullest);

    [Fact]
    public void Nursery_OnlyWhatIsNeeded_HasTheUsualValues()
    {
        Assert.Equal("nursery.toml", Small.FileName);
        Assert.Equal("Gannet Row", Small.Name);
        Assert.False(Small.Invented);
        Assert.Equal("Europe/London", Small.Zone.Id);
        Assert.Equal((53.2, -0.6, 18.0), (Small.LatitudeDeg, Small.LongitudeDeg, Small.ElevationM));
        Assert.Equal(UnitSystem.Metric, Small.Units);
        Assert.Equal(("store", "site"), (Small.Store, Small.Site));
        Assert.Empty(Small.Warnings);
    }

    [Fact]
    public void House_OnlyItsId_HasTheUsualValues()
    {
        HouseSettings house = Assert.Single(Small.Houses);
        Assert.Equal(("1", "House 1", null), (house.Id, house.Name, house.AreaM2));
        Assert.Equal(new RiskRules(), house.Rules);
        Assert.Empty(house.Crops);
        Assert.Empty(house.Sensors);
    }

    [Fact]
    public void Export_OnlyWhatIsNeeded_HasTheUsualValues()
    {
        ExportSettings export = Assert.Single(Small.Exports);
        DialectSettings dialect = export.Dialect;
        Assert.Equal(("climate", "1", null, 11), (export.Name, export.House, export.Kind, export.Line));
        Assert.Equal("utf-8", dialect.Encoding);
        Assert.Equal((',', '"', '.', null, null), (dialect.Delimiter, dialect.QuoteChar, dialect.DecimalChar, dialect.GroupChar, dialect.CommentChar));
        Assert.Equal((1, 2), (dialect.HeaderRow, dialect.DataRow));
        Assert.Empty(dialect.MissingValues);
        Assert.Equal((null, StampSide.Instant), (export.StepSeconds, export.StampSide));
        Assert.Equal(Small.Zone, export.Time.Zone);
        Assert.Equal(new TimeSettings(new FieldRef("Time", null), null, "iso", Small.Zone), export.Time);
    }

    [Fact]
    public void Nursery_EveryKey_IsRead()
    {
        Assert.Equal(("Gannet Row", true, "Europe/Copenhagen"), (Full.Name, Full.Invented, Full.Zone.Id));
        Assert.Equal((55.0, 10.5, -3.5), (Full.LatitudeDeg, Full.LongitudeDeg, Full.ElevationM));
        Assert.Equal((UnitSystem.Us, "data/store", "../reports/site"), (Full.Units, Full.Store, Full.Site));
        Assert.Empty(Full.Warnings);
    }

    [Fact]
    public void House_EveryKey_IsRead()
    {
        HouseSettings house = Full.Houses[0];
        Assert.Equal(("north-1", "North", 1200.0), (house.Id, house.Name, house.AreaM2));
        RiskRules rules = new(1.5, 6, 28, 0.8, 0.3, 5)
        {
            LeafBalanceErrorK = 0.8,
            CanopyDifference = false,
            CanopyTemperatureK = -1,
            CanopyTemperatureErrorK = 0.7,
            CanopyHumidityPct = 8,
            CanopyHumidityErrorPct = 3,
            WetnessSensorRules = true,
        };
        Assert.Equal(rules, house.Rules with { SetByUser = [] });
        Assert.Equal("twinPane", house.Glazing);
        Assert.Equal("powderyMildew", Assert.Single(house.Crops[0].WatchFor));
        Assert.Equal(new PathogenSettings("rust", 5, 18, 28, 6, 21.8, 2, "a paper"), Assert.Single(house.Crops[0].Pathogens)); // 3.8 + 3 x 6 h: Magarey, Sutton and Thayer 2005 (re-statement)
        Assert.Equal(13, house.Rules.SetByUser.Count);
        CropSettings crop = Assert.Single(house.Crops);
        Assert.Equal(("cyclamen", 13.0), (crop.Species, crop.PotDiameterCm));
        Assert.Equal(new LocalDate(2025, 8, 4), crop.Potted);
        Assert.Equal(new LocalDate(2025, 9, 1), crop.Pinched); // the Monday of 2025-W36
        Assert.Equal(new LocalDate(2025, 11, 17), crop.Sale);
        Assert.Equal<SpacingStep>(
            [new SpacingStep(new(2025, 8, 4), "triangular", 14, null), new SpacingStep(new(2025, 9, 15), "rectangular", 20, 25)],
            crop.Spacing);
    }

    [Fact]
    public void Rules_OneKey_IsNamedAsSetByUser()
    {
        RiskRules rules = NurseryText.Parse(NurseryText.Smallest.With("id = \"1\"", "id = \"1\"\n[house.rules]\ndryingHours = 3")).Houses[0].Rules;
        Assert.Equal(["dryingHours"], rules.SetByUser);
        Assert.Equal(new RiskRules(DryingHours: 3), rules with { SetByUser = [] });
    }

    [Fact]
    public void Export_EveryKey_IsRead()
    {
        ExportSettings export = Full.Exports[0];
        DialectSettings dialect = export.Dialect;
        Assert.Equal<string>(["exports/north-*.csv", "old/north.csv"], export.Files);
        Assert.Equal(("windows-1252", ';', '\'', ',', '.', '#'), (dialect.Encoding, dialect.Delimiter, dialect.QuoteChar, dialect.DecimalChar, dialect.GroupChar, dialect.CommentChar));
        Assert.Equal((2, 4), (dialect.HeaderRow, dialect.DataRow));
        Assert.Equal<string>(["-999", "n/a"], dialect.MissingValues);
        Assert.Equal((30, StampSide.IntervalEnd), (export.StepSeconds, export.StampSide));
        Assert.Equal((new FieldRef("Dato", null), new FieldRef(null, 2), "dd-MM-yyyy HH:mm"), (export.Time.Field, export.Time.TimeOfDayField, export.Time.Format));
        Assert.Equal(DateTimeZone.ForOffset(Offset.FromHours(1)), export.Time.Zone);
    }

    [Fact]
    public void Column_EveryKey_IsRead()
    {
        ColumnSettings temperature = Full.Exports[0].Columns[0];
        Assert.Equal((new FieldRef("Temp A", null), "airTemperature", "A", "degF"), (temperature.Field, temperature.Channel, temperature.Sensor, temperature.Unit));
        Assert.Equal<string>(["0"], temperature.MissingValues);
        ColumnSettings valve = Full.Exports[0].Columns[1];
        Assert.Equal((new FieldRef(null, 7), "valve", "1", "1"), (valve.Field, valve.Channel, valve.Sensor, valve.Unit));
        Assert.Equal((WateringMethod.OverheadBoom, 18.0, "Bench 4"), (valve.Method, valve.LitresPerMinute, valve.Bench));
    }

    [Fact]
    public void Record_WithColumnForItsHouse_ServesTheWholeNursery()
    {
        ExportSettings widths = Full.Exports[2];
        Assert.Equal((ReadingBatch.WholeNursery, RecordKind.PlantWidths), (widths.House, widths.Kind));
        Assert.Equal([("house", ""), ("width", "cm")], widths.Columns.Select(c => (c.Channel, c.Unit)));
    }

    [Fact]
    public void File_WithByteOrderMarkAndWindowsLineEnds_ReadsAlike()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(NurseryText.Fullest.ReplaceLineEndings("\r\n"))];
        NurserySettings read = NurseryFile.Parse("nursery.toml", bytes);
        Assert.Equal(Full.Exports.SelectMany(e => e.Columns.Select(c => c.Line)), read.Exports.SelectMany(e => e.Columns.Select(c => c.Line)));
        Assert.NotEqual(Full.ContentHash, read.ContentHash);
    }

    [Fact]
    public void ContentHash_OfKnownText_IsItsSha256()
    {
        // sha256sum (GNU coreutils 9.1) of the same bytes.
        Assert.Equal("09835419ebca66a692e799109fd54f8efb0943560efc5fff3db93ee9eaac551e", Small.ContentHash);
    }

    [Fact]
    public void File_WithThreeSlips_GivesThreeLinesToActOn()
    {
        IReadOnlyList<Problem> problems = NurseryText.ProblemsOf(NurseryText.Smallest
            .With("timeZone", "timezone")
            .With("53.2", "532")
            .With("\"airTemperature\"", "\"airTemprature\""));

        Assert.Equal(
            [
                "nursery.toml:3:1: error: unknown key \"timezone\" in [nursery]. Mend: did you mean \"timeZone\"? [nursery.unknownKey]",
                "nursery.toml:4:12: error: latitude = 532; expected -90 to 90 degrees, north positive. Mend: look at the figure and its unit again. [nursery.range]",
                "nursery.toml:20:13: error: channel \"airTemprature\" is not known. Mend: did you mean \"airTemperature\"? [nursery.channel]",
            ],
            problems.Select(p => p.ToString()));
    }

    [Fact]
    public void Exception_Message_HoldsEveryProblemOnALineOfItsOwn()
    {
        string broken = NurseryText.Smallest.With("53.2", "532").With("-0.6", "-600");
        NurseryFileException fault = Assert.Throws<NurseryFileException>(() => NurseryText.Parse(broken));
        Assert.Equal(fault.Problems.Select(p => p.ToString()), fault.Message.Split(Environment.NewLine));
    }

    [Fact]
    public void File_WithWarningsOnly_IsReadAndTellsThem()
    {
        NurserySettings read = NurseryText.Parse(NurseryText.Smallest.With("[[export]]", "[[house]]\nid = \"2\"\n[[export]]"));
        Problem warning = Assert.Single(read.Warnings);
        Assert.Equal((Severity.Warning, "nursery.unused", 11), (warning.Severity, warning.Code, warning.Line));
    }

    [Fact]
    public void Warnings_BesideAnError_AreToldWithIt()
    {
        IReadOnlyList<Problem> problems = NurseryText.ProblemsOf(NurseryText.Smallest.With("-0.6", "100").With("unit = \"Cel\"", "unit = \"x\""));
        Assert.Equal([Severity.Warning, Severity.Error], problems.Select(p => p.Severity));
    }
}
