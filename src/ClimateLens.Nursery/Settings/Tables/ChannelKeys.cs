using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>Keys that name a channel of readings and a unit that fits it.</summary>
internal static class ChannelKeys
{
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

        IEnumerable<string> names = ChannelCatalogue.All.Select(c => c.Name);
        string? near = NearestName.Of(name, names);
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
    public static Unit? Unit(TableReader table, Quantity quantity, string what, string? usual)
    {
        string[] codes = [.. UnitCatalogue.CodesOf(quantity)];
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

        if (UnitCatalogue.TryGet(quantity, name, out Unit unit))
        {
            return unit;
        }

        string mend = codes.FirstOrDefault(c => c.Equals(name, StringComparison.OrdinalIgnoreCase)) is { } sameLetters
            ? $"did you mean \"{sameLetters}\"?"
            : "write the unit that the export uses.";
        table.Faults.Error(FaultCodes.Unit, table.PlaceOf("unit"), $"unit {Excerpt.Quoted(name)} does not fit {what}", $"one of: {string.Join(", ", codes)}", mend);
        return null;
    }
}
