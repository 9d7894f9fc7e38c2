using ClimateLens.Logs.Describe;
using ClimateLens.TestKit;

namespace ClimateLens.Logs.Tests.Describe;

/// <summary>
/// Small invented files of many kinds and languages, and what each is: house, format of the time, and columns by position with channel, unit and
/// sensor. A question mark stands before what is to be asked. Each row was held against its file by eye.
/// </summary>
public sealed class DescribedFilesTests
{
    private static readonly string Folder = Repository.PathOf("tests/ClimateLens.Logs.Tests/Data/describe");

    [Theory]
    [InlineData("da-behandlinger.csv", "-: dd-MM-yyyy: 2 house, 3 activeIngredient, 4 what, 5 purpose, 6 rate")]
    [InlineData("da-celle.csv", "2: iso: 3 airTemperature Cel, 4 heatingSetPoint Cel, 5 ventPosition % @lee, 6 ventPosition % @wind, 7 relativeHumidity %, 8 vapourPressureDeficit hPa, 11 carbonDioxide [ppm], 13 screenPosition %, 14 globalRadiation W/m2, 15 outsideTemperature Cel, 16 heatingPipeTemperature Cel")]
    [InlineData("da-to-huse.csv", "1: iso: 2 airTemperature Cel, 3 relativeHumidity %", "2: iso: 4 airTemperature Cel, 5 relativeHumidity %", "-: iso: 6 outsideTemperature Cel")]
    [InlineData("de-klima.txt", "1: dd.MM.yyyy HH:mm: 2 airTemperature Cel, 3 relativeHumidity %, 4 vapourPressureDeficit hPa, 5 ventPosition % @lee, 6 ventPosition % @wind, 7 screenPosition %, 8 heatingPipeTemperature Cel, 9 outsideTemperature Cel, 10 windSpeed m/s, 12 globalRadiation W/m2")]
    [InlineData("de-messstellen.csv", "1: d.M.yyyy HH:mm: 3 airTemperature Cel @nord, 4 relativeHumidity % @nord, 3 airTemperature Cel @sud, 4 relativeHumidity % @sud")]
    [InlineData("de-spalten.txt", "1: d.M.yyyy HH:mm: 3 airTemperature Cel, 4 relativeHumidity %, 5 carbonDioxide [ppm]")]
    [InlineData("de-toepfe.csv", "-: dd.MM.yyyy: 2 house, 3 bench, 4 pot, 5 weight g")]
    [InlineData("en-arrays.dat", "1: yyyy D Hmm: ?5 airTemperature/outsideTemperature Cel/[degF], ?6 relativeHumidity %, ?7 globalRadiation W/m2")]
    [InlineData("en-blanks.txt", "1: iso: 3 airTemperature Cel, 4 relativeHumidity %, 5 ppfd umol/m2/s")]
    [InlineData("en-logger.dat", "1: iso: 3 airTemperature Cel, 4 relativeHumidity %, 5 globalRadiation W/m2, 6 mediumMoisture 1")]
    [InlineData("en-long.csv", "1: iso: 4 airTemperature Cel @a, 4 relativeHumidity % @a, 4 airTemperature Cel @b, 4 relativeHumidity % @b, 4 carbonDioxide [ppm]")]
    [InlineData("en-mixed.csv", "1: [M/d/yyyy HH:mm, d/M/yyyy HH:mm]: 2 airTemperature Cel, 3 relativeHumidity %")]
    [InlineData("en-one-day.csv", "1: ?dd/MM/yyyy HH:mm MM/dd/yyyy HH:mm: 2 airTemperature Cel, 3 relativeHumidity %")]
    [InlineData("en-two-houses.csv", "1: iso: 2 airTemperature Cel, 3 relativeHumidity %", "2: iso: 4 airTemperature Cel, 5 relativeHumidity %", "-: iso: 6 outsideTemperature Cel")]
    [InlineData("es-invernadero.csv", "1: d/M/yyyy hh:mm a: 2 airTemperature Cel, 3 relativeHumidity %, 4 vapourPressureDeficit kPa, 5 carbonDioxide [ppm], 6 ventPosition % @lee, 7 ventPosition % @wind, 8 screenPosition %, 9 mediumTemperature Cel, 10 ppfd umol/m2/s, 11 valve")]
    [InlineData("fr-serre.csv", "1: dd/MM/yyyy HH'h'mm: 2 airTemperature Cel, 3 relativeHumidity %, 4 humidityDeficit g/m3, 5 ventPosition % @lee, 6 ventPosition % @wind, 7 screenPosition %, 8 heatingSetPoint Cel, 9 outsideTemperature Cel, 10 windSpeed km/h, 11 windDirection deg, 12 rain mm")]
    [InlineData("house2_rh.csv", "2: d-M-yyyy HH:mm:ss: 2 relativeHumidity %")]
    [InlineData("it-serra.csv", "1: dd/MM/yyyy HH.mm: 3 airTemperature Cel, 4 relativeHumidity %, 5 carbonDioxide [ppm], 6 ventPosition % @lee, 7 ventPosition % @wind, 8 screenPosition %, 9 heatingPipeTemperature Cel, 10 heatingSetPoint Cel")]
    [InlineData("nl-gietbeurten.csv", "-: dd-MM-yyyy HH:mm: 2 house, 3 bench, 4 method, 6 end, 7 litres L")]
    [InlineData("nl-kas.csv", "3: d-M-yyyy HH:mm: 3 airTemperature Cel, 4 relativeHumidity %, 5 humidityDeficit g/m3, 7 carbonDioxide [ppm], 8 ventPosition % @lee, 9 ventPosition % @wind, 10 screenPosition %, 11 heatingSetPoint Cel, 12 heatingPipeTemperature Cel, 13 outsideTemperature Cel, 14 radiationSum J/cm2")]
    [InlineData("nl-serienummer.csv", "1: excel1900: 2 airTemperature Cel, 3 relativeHumidity 1")]
    [InlineData("us-bay.csv", "1: M/d/yyyy h:mm a: 2 airTemperature [degF], 3 relativeHumidity %, 4 dewPoint [degF], 5 ppfd umol/m2/s, 6 outsideTemperature [degF], 7 windSpeed mph, 8 heatingSetPoint [degF]")]
    [InlineData("us-scouting.csv", "-: MM/dd/yyyy: 2 house, 4 symptom, 5 count")]
    public void File_IsDescribedAsWhatItIs(string file, params string[] exports)
    {
        Description description = FileDescriber.Describe([Path.Combine(Folder, file)], new DescribeOptions());
        Assert.Equal(exports, description.Exports.Select(Of));
    }

    [Fact]
    public void EveryFile_HasARow()
        => Assert.Equal(
            Directory.GetFiles(Folder).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal),
            typeof(DescribedFilesTests).GetMethod(nameof(File_IsDescribedAsWhatItIs))!.GetCustomAttributes(typeof(InlineDataAttribute), false).Cast<InlineDataAttribute>()
                .Select(row => (string)row.GetData(null!).Single()[0]).Order(StringComparer.Ordinal));

    private static string Of(DraftExport draft)
        => $"{draft.House ?? "-"}: {Value(draft.Time, "format")}: {string.Join(", ", draft.Columns.Select(Of))}";

    private static string Of(DraftColumn column)
    {
        string unit = Value(column.Keys, "unit");
        string sensor = Value(column.Keys, "sensor");
        return $"{(column.Sureness == Sureness.Unsure ? "?" : "")}{column.Position} {Value(column.Keys, "channel")}{(unit.Length > 0 ? " " + unit : "")}{(sensor.Length > 0 ? " @" + sensor : "")}";
    }

    private static string Value(IEnumerable<DraftKey> keys, string name)
        => keys.FirstOrDefault(k => k.Key == name) is not { } key ? "" : (key.IsAsked && name == "format" ? "?" + string.Join(' ', key.Values) : string.Join('/', key.Values)).Replace("\"", "", StringComparison.Ordinal);
}
