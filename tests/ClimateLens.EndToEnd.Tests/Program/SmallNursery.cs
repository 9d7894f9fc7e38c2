using System.Globalization;
using System.Text;
using ClimateLens.TestKit;

namespace ClimateLens.EndToEnd.Tests.Program;

/// <summary>A nursery of one house with one week of ten-minute readings, in a temporary folder.</summary>
internal sealed class SmallNursery : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    /// <summary>Writes the nursery file and its export.</summary>
    public SmallNursery(string columns = AirAndHumidity, string? export = null)
    {
        Write("exports/house.csv", export ?? Week(new DateTime(2025, 10, 13), 7));
        Write("nursery.toml", File(columns));
    }

    /// <summary>A house without humidity.</summary>
    public const string AirAlone = """
          [[export.column]]
          field = "Air"
          channel = "airTemperature"
          unit = "Cel"
        """;

    /// <summary>Both columns that a review needs.</summary>
    public const string AirAndHumidity = """
          [[export.column]]
          field = "Air"
          channel = "airTemperature"
          unit = "Cel"
          [[export.column]]
          field = "RH"
          channel = "relativeHumidity"
          unit = "%"
        """;

    /// <summary>The nursery file.</summary>
    public string NurseryFile => _folder.PathOf("nursery.toml");

    /// <summary>A path inside the folder.</summary>
    public string PathOf(string relative) => _folder.PathOf(relative);

    /// <summary>Writes a file inside the folder.</summary>
    public void Write(string relative, string text) => _folder.Write(relative, text);

    /// <summary>The nursery file's text.</summary>
    public static string File(string columns = AirAndHumidity, string zone = "Europe/London") => $"""
        [nursery]
        name = "Small"
        timeZone = "{zone}"
        latitude = 53.2
        longitude = -0.6
        elevationM = 18

        [[house]]
        id = "1"
        name = "House 1"

        [[export]]
        name = "climate"
        house = "1"
        files = ["exports/house.csv"]
          [export.time]
          field = "Time"
          format = "yyyy-MM-dd HH:mm"
        {columns}
        """;

    /// <summary>Days of readings: warm and dry by day, cool and humid by night.</summary>
    public static string Week(DateTime from, int days)
    {
        StringBuilder text = new("Time,Air,RH\n");
        for (int i = 0; i < days * 144; i++)
        {
            DateTime time = from.AddMinutes(i * 10);
            double wave = Math.Cos(((time.TimeOfDay.TotalHours - 14) / 24) * 2 * Math.PI);
            text.Append(CultureInfo.InvariantCulture, $"{time:yyyy-MM-dd HH:mm},{18 + (4 * wave):0.00},{82 - (12 * wave) + (i % 3 * 0.1):0.0}\n");
        }

        return text.ToString();
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();
}
