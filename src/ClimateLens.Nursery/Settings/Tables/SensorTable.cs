using System.Collections.Immutable;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>[[house.sensor]]: the stated accuracy of a sensor.</summary>
internal static class SensorTable
{
    public static readonly string[] Keys = ["channel", "sensor", "accuracy", "unit", "source"];

    public static ImmutableArray<SensorSettings> ReadAll(TableReader house)
    {
        HashSet<(string, string)> seen = [];
        List<SensorSettings> sensors = [];
        foreach (TableReader table in house.Tables("sensor", "[[house.sensor]]", Keys))
        {
            string sensor = table.Id("sensor") ?? "";
            string source = table.Text("source", mayBeEmpty: true) ?? "";
            if (ChannelKeys.Channel(table) is not { } channel)
            {
                table.Number("accuracy", 0, double.MaxValue, "the unit of the channel", "2");
                continue;
            }

            if (!seen.Add((channel.Name, sensor)))
            {
                table.Faults.Error(FaultCodes.Repeated, table.PlaceOf("channel"), $"the accuracy of {channel.Name} is given twice in this house", "", "name the sensor with sensor = \"…\", or take one out.");
            }

            sensors.Add(new SensorSettings(channel.Name, sensor, Accuracy(table, channel), source));
        }

        return [.. sensors];
    }

    /// <summary>Half-width in the SI unit. On a temperature it is a difference: ± 1 °F is ± 0.556 K, without the scale's zero.</summary>
    private static double Accuracy(TableReader table, Channel channel)
    {
        Quantity quantity = channel.Quantity == Quantity.Temperature ? Quantity.TemperatureDifference : channel.Quantity;
        if (quantity == Quantity.OnOff)
        {
            table.NotHere("accuracy", $"has no meaning for {channel.Name}, which is on or off", "take this [[house.sensor]] out.");
            return 0;
        }

        string si = UnitCatalogue.SiOf(quantity).Code;
        double? stated = table.Number("accuracy", 0, double.MaxValue, $"± in {table.Text("unit") ?? si}", "2");
        if (ChannelKeys.Unit(table, quantity, channel.Name, si, _ => "give the accuracy in a unit of the channel.") is not { } unit || stated is not { } width)
        {
            return 0;
        }

        double accuracy = unit.ToSi(width);
        double most = (channel.FailHigh - channel.FailLow) / 4;
        if (!(accuracy > 0 && accuracy <= most))
        {
            string limit = NumberKeys.Show(unit.FromSi(most));
            table.Faults.Error(FaultCodes.Range, table.PlaceOf("accuracy"), $"accuracy = {NumberKeys.Show(width)}", $"more than 0 and at most {limit} {unit.Code}", "give half the width of the ± range in the sensor's data sheet.");
        }

        return accuracy;
    }
}
