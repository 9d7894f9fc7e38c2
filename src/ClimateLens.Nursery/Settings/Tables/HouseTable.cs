using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>[[house]] with its rules, crops and sensors.</summary>
internal static class HouseTable
{
    public static readonly string[] Keys = ["id", "name", "areaM2", "glazing", "benches", "rules", "pots", "care", "crop", "sensor", "tank"];

    private const double LargestAreaM2 = 1e6;

    /// <summary>All houses in file order.</summary>
    public static ImmutableArray<HouseSettings> ReadAll(TableReader file)
    {
        if (!file.Has("house"))
        {
            file.Faults.Missing(FaultCodes.MissingKey, Place.Top, "there is no [[house]] table", "", "add [[house]] with an id, for example id = \"1\"");
        }

        Dictionary<string, int> lines = new(StringComparer.OrdinalIgnoreCase); // some disks do not tell A from a
        List<HouseSettings> houses = [];
        foreach (TableReader table in file.Tables("house", "[[house]]", Keys))
        {
            HouseSettings house = Read(table);
            houses.Add(house);
            if (house.Id.Length > 0 && !lines.TryAdd(house.Id, table.PlaceOf("id").Line))
            {
                string line = lines[house.Id].ToString(CultureInfo.InvariantCulture);
                file.Faults.Error(FaultCodes.Repeated, table.PlaceOf("id"), $"house id {Excerpt.Quoted(house.Id)} is used twice", "", $"line {line} has it too; give this house another id.");
            }
        }

        return [.. houses];
    }

    private static HouseSettings Read(TableReader house)
    {
        string id = house.Id("id", "\"1\"") ?? "";
        string name = house.Text("name") ?? $"House {id}";
        double? area = house.Number("areaM2", 1, LargestAreaM2, "square metres");
        RiskRules rules = RulesTable.Read(house);
        ImmutableArray<CropSettings> crops = [.. house.Tables("crop", "[[house.crop]]", CropTable.Keys).Select(CropTable.Read)];
        return new HouseSettings(id, name, area, crops, SensorTable.ReadAll(house), rules)
        {
            Glazing = house.Choice("glazing", ["singleGlass", "twinPane", "film", "doubleFilm"]) ?? "",
            Benches = [.. house.Texts("benches", "[\"A\", \"B\"]").Select(bench => bench.Trim())],
            Pots = PotsTable.Read(house),
            Care = CareTable.Read(house),
        };
    }
}
