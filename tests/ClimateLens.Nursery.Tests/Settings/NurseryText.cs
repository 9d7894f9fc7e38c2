using System.Text;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Nursery.Tests.Settings;

/// <summary>Nursery files for tests, and the two ways of reading them.</summary>
internal static class NurseryText
{
    /// <summary>Only what a file must have.</summary>
    public const string Smallest = """
        [nursery]
        name = "Gannet Row"
        timeZone = "Europe/London"
        latitude = 53.2
        longitude = -0.6
        elevationM = 18

        [[house]]
        id = "1"

        [[export]]
        name = "climate"
        house = "1"
        files = ["a.csv"]
          [export.time]
          field = "Time"
          format = "iso"
          [[export.column]]
          field = "Temp"
          channel = "airTemperature"
          unit = "Cel"
        """;

    /// <summary>Every key, none with its default.</summary>
    public const string Fullest = """
        [nursery]
        name = "Gannet Row"
        invented = true
        timeZone = "Europe/Copenhagen"
        latitude = 55
        longitude = 10.5
        elevationM = -3.5
        units = "us"
        store = "data/store"
        site = "../reports/site"

        [[house]]
        id = "north-1"
        name = "North"
        areaM2 = 1200
        glazing = "twinPane"
          [house.rules]
          marginK = 1.5
          temperatureLowC = 6
          temperatureHighC = 28
          leafNightOffsetK = 0.8
          leafNightOffsetErrorK = 0.3
          dryingHours = 5
          leafBalanceErrorK = 0.8
          canopyDifference = false
          canopyTemperatureK = -1
          canopyTemperatureErrorK = 0.7
          canopyHumidityPct = 8
          canopyHumidityErrorPct = 3
          wetnessSensorRules = true
          [[house.crop]]
          species = "Cyclamen"
          potted = 2025-08-04
          pinched = "2025-W36"
          sale = 2025-11-17
          potDiameterCm = 13
          watchFor = ["powderyMildew"]
            [[house.crop.pathogen]]
            name = "rust"
            lowestC = 5
            bestC = 18
            highestC = 28
            leastHours = 6
            longestDryHours = 2
            source = "a paper"
            [[house.crop.spacing]]
            from = 2025-08-04
            pattern = "triangular"
            distanceCm = 14
            [[house.crop.spacing]]
            from = 2025-09-15
            pattern = "rectangular"
            distanceCm = 20
            rowDistanceCm = 25
          [[house.sensor]]
          channel = "airTemperature"
          sensor = "A"
          accuracy = 1
          unit = "[degF]"
          source = "data sheet"

        [[house]]
        id = "2"

        [[export]]
        name = "climate"
        house = "north-1"
        files = ["exports/north-*.csv", "old/north.csv"]
        encoding = "Windows-1252"
        delimiter = ";"
        quoteChar = "'"
        decimalChar = ","
        groupChar = "."
        commentChar = "#"
        headerRows = [2]
        dataRow = 4
        missingValues = ["-999", "n/a"]
        stepMinutes = 0.5
        stamps = "intervalEnd"
          [export.time]
          field = "Dato"
          timeOfDayPosition = 2
          format = "dd-MM-yyyy HH:mm"
          timeZone = "+01:00"
          [[export.column]]
          field = "Temp A"
          channel = "airTemperature"
          sensor = "A"
          unit = "degF"
          missingValues = ["0"]
          [[export.column]]
          position = 7
          channel = "valve"
          sensor = "1"
          method = "overheadBoom"
          litresPerMinute = 18
          bench = "Bench 4"

        [[export]]
        name = "climate"
        house = "2"
        files = ["exports/2.csv"]
          [export.time]
          position = 1
          format = "yyyy-MM-dd HH:mm:ss"
          [[export.column]]
          field = "RH"
          channel = "relativeHumidity"
          unit = "%"

        [[export]]
        name = "widths"
        kind = "plantWidths"
        files = ["widths.csv"]
          [export.time]
          field = "Day"
          format = "M/d/yy"
          [[export.column]]
          field = "House"
          channel = "house"
          [[export.column]]
          field = "Width"
          channel = "width"
          unit = "cm"
        """;

    public static NurserySettings Parse(string text) => NurseryFile.Parse("nursery.toml", Encoding.UTF8.GetBytes(text));

    public static IReadOnlyList<Problem> ProblemsOf(string text) => ProblemsOf(Encoding.UTF8.GetBytes(text));

    public static IReadOnlyList<Problem> ProblemsOf(byte[] bytes)
        => Assert.Throws<NurseryFileException>(() => NurseryFile.Parse("nursery.toml", bytes)).Problems;

    /// <summary>The text with one part replaced; fails when the part is not there.</summary>
    public static string With(this string text, string part, string other)
    {
        Assert.Contains(part, text, StringComparison.Ordinal);
        return text.Replace(part, other, StringComparison.Ordinal);
    }
}
