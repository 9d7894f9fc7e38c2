using ClimateLens.HouseSimulator.Output;
using NodaTime;

namespace ClimateLens.HouseSimulator.Scenario;

/// <summary>What is wrong with the sample on purpose.</summary>
public static class PlantedDefects
{
    public const string HouseOneFiles = "exports/house-1-", HouseTwoFiles = "exports/house-2-";
    public const string Original = HouseTwoFiles + "2025-10.csv", Duplicate = HouseTwoFiles + "2025-10_copy.csv";

    public static IReadOnlyList<Defect> All { get; } =
    [
        new("gap", "house-1", [], At(9, 17, 13, 20), At(9, 17, 18, 40), null,
            "No rows at all: the climate computer of House 1 stood still.", [HouseOneFiles + "2025-09.csv"]),
        new("spike", "house-1", ["airTemperature"], At(9, 25, 11, 35), At(9, 25, 11, 40), 38.4,
            "One reading of the air temperature is far too high.", [HouseOneFiles + "2025-09.csv"]),
        new("stuck", "house-2", ["relativeHumidity"], At(10, 9, 20, 0), At(10, 10, 10, 0), null,
            "The humidity sensor of House 2 repeats one value for 14 hours.", [Original, Duplicate]),
        new("spike", "house-2", ["relativeHumidity"], At(10, 21, 14, 5), At(10, 21, 14, 10), 12.0,
            "One reading of the humidity is far too low.", [Original, Duplicate]),
        new("missingCode", "house-1", [], At(10, 30, 0, 0), At(10, 31, 0, 0), null,
            "Every reading of the day is -999: the sensor interface was down.", [HouseOneFiles + "2025-10.csv"]),
        new("duplicateFile", "house-2", [], At(10, 1, 0, 0), At(11, 1, 0, 0), null,
            "The October file was saved a second time under another name; same bytes.", [Original, Duplicate]),
    ];

    private static LocalDateTime At(int month, int day, int hour, int minute) => new(2025, month, day, hour, minute);
}
