using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Imports;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>How the values of a file's channel are shown: temperatures in the reader's unit, all else in that of the store.</summary>
/// <param name="channel">The channel of the file.</param>
/// <param name="units">Units to read.</param>
internal sealed class ChannelNumbers(ChannelSummary channel, DisplayUnits units)
{
    private readonly Quantity? _quantity = ChannelCatalogue.TryGet(channel.Channel, out Channel? known) ? known.Quantity : null;

    /// <summary>The unit; empty for a plain number.</summary>
    public string Unit => _quantity switch
    {
        Quantity.Temperature => units.TemperatureSymbol,
        Quantity quantity => UnitSymbols.Of(quantity),
        null => "",
    };

    /// <summary>A value of the channel; a dash for none.</summary>
    public string Show(double? value) => value is null ? "–" : DisplayUnits.Number(_quantity == Quantity.Temperature ? units.TemperatureNumber(value) : value, Decimals);

    /// <summary>As many for all three values as the largest of them wants.</summary>
    private int Decimals => _quantity is Quantity.Temperature or Quantity.RelativeHumidity ? 1
        : IsWhole(channel.Min) && IsWhole(channel.Median) && IsWhole(channel.Max) ? 0
        : Math.Max(Math.Abs(channel.Min ?? 0), Math.Abs(channel.Max ?? 0)) switch { >= 1000 => 0, >= 10 => 1, _ => 2 };

    private static bool IsWhole(double? value) => value is not double number || number == Math.Floor(number);
}
