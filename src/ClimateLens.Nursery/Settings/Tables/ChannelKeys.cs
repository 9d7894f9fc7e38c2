using System.Collections.Frozen;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>Keys that name a channel of readings and a unit that fits it.</summary>
internal static class ChannelKeys
{
    /// <summary>Short names that people use; only to say which channel is meant.</summary>
    private static readonly FrozenDictionary<string, string> Everyday = new Dictionary<string, string>
    {
        ["rh"] = "relativeHumidity",
        ["humidity"] = "relativeHumidity",
        ["t"] = "airTemperature",
        ["temp"] = "airTemperature",
        ["temperature"] = "airTemperature",
        ["vpd"] = "vapourPressureDeficit",
        ["co2"] = "carbonDioxide",
        ["par"] = "ppfd",
        ["lux"] = "illuminance",
        ["light"] = "illuminance",
        ["radiation"] = "globalRadiation",
        ["pressure"] = "airPressure",
        ["wind"] = "windSpeed",
        ["screen"] = "screenPosition",
        ["vent"] = "ventPosition",
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>The channel, or null when it is left out or unknown.</summary>
    public static Channel? Channel(TableReader table)
    {
        if (table.Text("channel", "\"relativeHumidity\"") is not { } name)
        {
            return null;
        }

        if (ChannelCatalogue.TryGet(name, out Channel? channel))
        {
            return channel;
        }

        string[] all = [.. ChannelCatalogue.All.Select(c => c.Name)];
        string? near = Everyday.GetValueOrDefault(name) ?? NearestName.Of(name, all);
        IReadOnlyList<string> holding = NearestName.Holding(name, all);
        IReadOnlyList<string> names = holding.Count > 0 ? holding : all;
        table.Faults.Error(
            FaultCodes.Channel,
            table.PlaceOf("channel"),
            $"channel {Excerpt.Quoted(name)} is not known",
            near is null ? $"one of: {string.Join(", ", names)}" : "",
            near is null ? "take one of these names, or leave the column out." : $"did you mean \"{near}\"?");
        return null;
    }

    /// <summary>The unit, which has to measure the quantity.</summary>
    /// <param name="table">The table with the key unit.</param>
    /// <param name="quantity">What is measured.</param>
    /// <param name="what">The channel or field, for messages.</param>
    /// <param name="usual">Taken when the key is left out; null where the unit has to be named.</param>
    /// <param name="mend">What to do about a unit of something else.</param>
    public static Unit? Unit(TableReader table, Quantity quantity, string what, string? usual, Func<string, string> mend)
    {
        string[] codes = [.. UnitCatalogue.KindsOf(quantity).Select(kind => kind.Code)];
        bool mayBeEmpty = UnitCatalogue.TryGet(quantity, "", out _);
        string? code = table.Text("unit", usual is null ? $"\"{codes[0]}\"" : null, mayBeEmpty);
        if (code is null && table.Has("unit"))
        {
            return null;
        }

        if ((code ?? usual) is not { } name)
        {
            return null;
        }

        if (UnitCatalogue.TryGet(quantity, name, out Unit? unit))
        {
            return unit;
        }

        table.Faults.Error(FaultCodes.Unit, table.PlaceOf("unit"), $"unit {Excerpt.Quoted(name)} does not fit {what}", $"one of: {string.Join(", ", codes)}, or another name of these", mend(name));
        return null;
    }

    /// <summary>For a column of readings: names the channels that the unit does fit, since often the channel is the slip.</summary>
    public static string MendReading(string code)
    {
        string[] fitting = [.. ChannelCatalogue.All.Where(c => UnitCatalogue.TryGet(c.Quantity, code, out _)).Select(c => c.Name).Take(3)];
        string elsewhere = fitting.Length == 0 ? "" : $"; {Excerpt.Of(code)} fits {string.Join(", ", fitting)}";
        return $"write the unit that the export uses{elsewhere}.";
    }
}
