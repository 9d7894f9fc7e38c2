using System.Collections.Immutable;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>[house.care] and [[house.tank]]: what treatments, floors and tanks are held against.</summary>
internal static class CareTable
{
    public static readonly string[] Keys = ["groupUses", "floorDays", "sensitiveCrops", "tankHours"];
    public static readonly string[] TankKeys = ["what", "tank", "low", "high", "unit"];

    private const double Widest = 1e9;

    public static CareRules Read(TableReader house)
    {
        CareRules usual = new();
        ImmutableArray<TankLimit> tanks = [.. house.Tables("tank", "[[house.tank]]", TankKeys).Select(Tank)];
        if (house.Table("care", "[house.care]", Keys) is not { } table)
        {
            return usual with { Tanks = tanks };
        }

        return new()
        {
            GroupUses = table.Whole("groupUses", 1, 100, "uses") ?? usual.GroupUses,
            FloorDays = table.Whole("floorDays", 1, 3650, "days") ?? usual.FloorDays,
            SensitiveCrops = [.. table.Texts("sensitiveCrops", "[\"tomato\"]").Select(crop => crop.Trim().ToLowerInvariant())],
            TankHours = table.Number("tankHours", 0.1, 8760, "hours") ?? usual.TankHours,
            Tanks = tanks,
            SetByUser = [.. Keys.Where(table.Has)],
        };
    }

    private static TankLimit Tank(TableReader table)
    {
        string what = table.Text("what", "\"free chlorine\"") ?? "";
        double? low = table.Number("low", -Widest, Widest, "(unit of the readings)");
        double? high = table.Number("high", -Widest, Widest, "(unit of the readings)");
        if (low is null && high is null && !table.Has("low") && !table.Has("high"))
        {
            table.Missing("low", "1, or high");
        }
        else if (low >= high)
        {
            table.Faults.Error(FaultCodes.Order, table.PlaceOf("high"), $"low ({NumberKeys.Show(low.Value)}) is not below high ({NumberKeys.Show(high.Value)})", "", "look at both limits again.");
        }

        return new(what.Trim(), (table.Text("tank") ?? "").Trim(), low, high, (table.Text("unit") ?? "").Trim());
    }
}
