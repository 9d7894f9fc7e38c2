using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>[house.rules]: thresholds that the grower sets. The limits only keep out slips of unit or sign.</summary>
internal static class RulesTable
{
    public static readonly string[] Keys =
    [
        "marginK", "temperatureLowC", "temperatureHighC", "leafNightOffsetK", "leafNightOffsetErrorK", "dryingHours", "leafBalanceErrorK",
        "canopyDifference", "canopyTemperatureK", "canopyTemperatureErrorK", "canopyHumidityPct", "canopyHumidityErrorPct", "wetnessSensorRules", "dullDayMJm2",
    ];

    public static RiskRules Read(TableReader house)
    {
        RiskRules usual = new();
        if (house.Table("rules", "[house.rules]", Keys) is not { } table)
        {
            return usual;
        }

        RiskRules rules = new(
            table.Number("marginK", 0, 10, "kelvin") ?? usual.MarginK,
            table.Number("temperatureLowC", -5, 40, "degrees Celsius") ?? usual.TemperatureLowC,
            table.Number("temperatureHighC", 0, 50, "degrees Celsius") ?? usual.TemperatureHighC,
            table.Number("leafNightOffsetK", -5, 10, "kelvin") ?? usual.LeafNightOffsetK,
            table.Number("leafNightOffsetErrorK", 0, 10, "kelvin") ?? usual.LeafNightOffsetErrorK,
            table.Number("dryingHours", 0, 24, "hours") ?? usual.DryingHours)
        {
            LeafBalanceErrorK = table.Number("leafBalanceErrorK", 0, 10, "kelvin") ?? usual.LeafBalanceErrorK,
            CanopyDifference = table.Flag("canopyDifference") ?? usual.CanopyDifference,
            CanopyTemperatureK = table.Number("canopyTemperatureK", -10, 10, "kelvin") ?? usual.CanopyTemperatureK,
            CanopyTemperatureErrorK = table.Number("canopyTemperatureErrorK", 0, 10, "kelvin") ?? usual.CanopyTemperatureErrorK,
            CanopyHumidityPct = table.Number("canopyHumidityPct", -50, 50, "points of relative humidity") ?? usual.CanopyHumidityPct,
            CanopyHumidityErrorPct = table.Number("canopyHumidityErrorPct", 0, 50, "points of relative humidity") ?? usual.CanopyHumidityErrorPct,
            DullDayMJm2 = table.Number("dullDayMJm2", 0, 30, "megajoules per square metre") ?? usual.DullDayMJm2,
            WetnessSensorRules = table.Flag("wetnessSensorRules") ?? usual.WetnessSensorRules,
        };
        if (rules.TemperatureLowC >= rules.TemperatureHighC)
        {
            string key = table.Has("temperatureHighC") ? "temperatureHighC" : "temperatureLowC";
            string low = NumberKeys.Show(rules.TemperatureLowC);
            string high = NumberKeys.Show(rules.TemperatureHighC);
            table.Faults.Error(FaultCodes.Order, table.PlaceOf(key), $"temperatureLowC ({low}) is not below temperatureHighC ({high})", "", "one left out has its usual value; give both.");
        }

        return rules with { SetByUser = [.. Keys.Where(table.Has)] };
    }
}
