using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>How the values of a channel are shown: temperatures in the reader's unit, all else in that of the store.</summary>
internal static class ChannelNumbers
{
    /// <summary>Shows a value of the channel, and the unit.</summary>
    public static (Func<double?, string> Show, string Unit) Of(string channel, DisplayUnits units)
    {
        Quantity? quantity = ChannelCatalogue.TryGet(channel, out Channel? known) ? known.Quantity : null;
        return quantity is Quantity.Temperature
            ? (value => Number(units.TemperatureNumber(value)), units.TemperatureSymbol)
            : (Number, quantity is Quantity q ? UnitSymbols.Of(q) : "");
    }

    /// <summary>As many decimals as a reader wants at that size; a dash for none.</summary>
    private static string Number(double? value) => value is not double number ? "–"
        : Math.Abs(number) switch
        {
            >= 100 => DisplayUnits.Number(number, 0),
            >= 5 => DisplayUnits.Number(number, 1),
            _ when number == Math.Floor(number) => DisplayUnits.Number(number, 0),
            _ => DisplayUnits.Number(number, 2),
        };
}
