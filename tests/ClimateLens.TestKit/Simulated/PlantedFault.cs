using ClimateLens.Nursery;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.TestKit.Simulated;

/// <summary>A fault of a sensor, planted into a clean simulated week.</summary>
/// <param name="Name">What is wrong, in words.</param>
/// <param name="Columns">Columns that it spoils; they are logged by one instrument, or mixed up with each other.</param>
/// <param name="From">When it starts, since the start of the week. [d]</param>
/// <param name="To">When it ends. [d]</param>
/// <param name="Spoilt">What a column reads in a row instead. [SI unit of the channel]</param>
public sealed record PlantedFault(string Name, string[] Columns, double From, double To, Func<LoggedWeek, string, int, double> Spoilt)
{
    private const string Temperature = "airTemperature", Humidity = "relativeHumidity", CanopyTemperature = "canopyTemperature", CanopyHumidity = "canopyHumidity";

    private const double Step = 5.0 / (24 * 60);

    /// <summary>The faults whose hit rates docs/science/learned-check.md quotes.</summary>
    public static IReadOnlyList<PlantedFault> All { get; } =
    [
        new("one temperature 4 K too high", [Temperature], At(14), At(14) + Step, (week, column, row) => week.Value(column, row) + 4),
        new("one humidity 15 points too low", [Humidity], At(5), At(5) + Step, (week, column, row) => week.Value(column, row) - 15),
        new("temperature stands still for 5 h from 07:00", [Temperature], At(7), At(12), (week, column, _) => week.Value(column, week.RowAt(At(7)))),
        new("humidity stands still for 5 h from 07:00", [Humidity], At(7), At(12), (week, column, _) => week.Value(column, week.RowAt(At(7)))),
        new("temperature 2 K too high from Thursday on", [Temperature], 3, 7, (week, column, row) => week.Value(column, row) + 2),
        new("humidity 8 points too high from Thursday on", [Humidity], 3, 7, (week, column, row) => Math.Min(100, week.Value(column, row) + 8)),
        new("humidity drifts up by 1 point a day", [Humidity], 0, 7, (week, column, row) => Math.Min(100, week.Value(column, row) + week.Day(row))),
        new("house and canopy instruments swapped", [Temperature, Humidity, CanopyTemperature, CanopyHumidity], 2, 7, (week, column, row) => week.Value(Other(column), row)),
        new("instrument moved into the sun", [Temperature, Humidity], 2, 7, InTheSun),
    ];

    /// <summary>The week with the fault; null where the house does not log what it spoils.</summary>
    public HouseInput? PlantedIn(HouseInput clean)
    {
        LoggedWeek week = new(clean);
        if (!week.Has(Columns))
        {
            return null;
        }

        return week.With(Columns.ToDictionary(column => column, column => Enumerable.Range(0, week.Batch.UtcMicros.Length)
            .Select(row => week.Day(row) >= From - 1e-9 && week.Day(row) < To - 1e-9 ? Math.Round(Spoilt(week, column, row), 1) : week.Value(column, row))
            .ToArray()));
    }

    /// <summary>An hour of Thursday. [d]</summary>
    private static double At(double hour) => 3 + (hour / 24);

    private static string Other(string column) => column switch
    {
        Temperature => CanopyTemperature,
        CanopyTemperature => Temperature,
        Humidity => CanopyHumidity,
        _ => Humidity,
    };

    /// <summary>Warmed by up to 6 K in full sun; the vapour pressure around it stays.</summary>
    private static double InTheSun(LoggedWeek week, string column, int row)
    {
        double air = week.Value(Temperature, row), warmed = air + (6 * week.RadiationWm2(row) / 800);
        double share = SaturationVapourPressure.OverWater(new Celsius(air)).Value / SaturationVapourPressure.OverWater(new Celsius(warmed)).Value;
        return column == Temperature ? warmed : week.Value(column, row) * share;
    }
}
