using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Columns that are no readings of a channel: counts, places, alarms, extremes, sums of light.</summary>
internal static class UnusedRules
{
    private static readonly Idea[] Climate =
    [
        Idea.Temperature, Idea.Humidity, Idea.VapourPressureDeficit, Idea.HumidityDeficit, Idea.DewPoint, Idea.WetBulb, Idea.CarbonDioxide, Idea.Radiation, Idea.Light, Idea.Par,
        Idea.Wind, Idea.Rain, Idea.Pressure, Idea.Vent, Idea.Screen, Idea.Pipe, Idea.Wetness, Idea.Moisture, Idea.Irrigation, Idea.Valve, Idea.Fog, Idea.Fan, Idea.Water, Idea.Air, Idea.DryBulb, Idea.Amount,
    ];

    public static ChannelGuess? Of(HeaderText header, ColumnFacts facts, FileContext context)
    {
        bool climate = header.HasAny(Climate);
        if (header.HasAny(Idea.Deviation) && climate)
        {
            return ChannelGuess.Unused("how far values part, no reading");
        }

        if (header.Has(Idea.DayAverage) && header.HasAny(Idea.Temperature, Idea.Humidity))
        {
            return ChannelGuess.Unused("an average over a day, no reading");
        }

        if (header.Has(Idea.Felt))
        {
            return ChannelGuess.Unused("how warm it feels, no channel");
        }

        if (header.Has(Idea.Rain) && header.Has(Idea.Rate))
        {
            return ChannelGuess.Unused("how hard it rains; the channel takes how much fell");
        }

        if (climate && header.HasAny(Idea.Time, Idea.Date) && header.Has(Idea.Rain))
        {
            return ChannelGuess.Unused("a time of rain");
        }

        if (header.HasAny(Idea.Minimum, Idea.Maximum) && !header.Has(Idea.Average))
        {
            return ChannelGuess.Unused($"the {(header.Has(Idea.Minimum) ? "lowest" : "highest")} value of a time, no reading");
        }

        if (header.Has(Idea.Sum) && !header.HasAny(Idea.Water, Idea.Irrigation, Idea.Rain, Idea.Amount) && header.Unit?.Measures(Quantity.RadiantExposure) != true)
        {
            return ChannelGuess.Unused("a sum, no reading");
        }

        if (header.Unit is { Quantities.Count: 0, Written: { Length: > 0 } written } && (!header.HasAny(Idea.HumidityDeficit) || UnitWords.IsOfMass(written)))
        {
            return ChannelGuess.Unused($"in {written}, which no channel takes");
        }

        return Other(header, climate);
    }

    private static ChannelGuess? Other(HeaderText header, bool climate)
    {
        if (header.HasAny(Idea.Alarm, Idea.Battery) && !header.HasAny(Idea.Irrigation, Idea.Valve, Idea.Fan, Idea.Fog))
        {
            return ChannelGuess.Unused("a state of the equipment");
        }

        if (header.HasAny(Idea.Conductivity, Idea.Acidity))
        {
            return ChannelGuess.Unused("EC or pH, no channel of readings");
        }

        if (header.HasAny(Idea.Lamp) && !header.HasAny(Idea.Par, Idea.Radiation))
        {
            return ChannelGuess.Unused("lamps, no channel");
        }

        if (header.HasAny(Idea.Power, Idea.Boiler) && !header.HasAny(Idea.Screen))
        {
            return ChannelGuess.Unused("energy or boiler, no channel");
        }

        if (header.Has(Idea.Dehumidify))
        {
            return ChannelGuess.Unused("dehumidifying, no channel");
        }

        return !climate && header.HasAny(Idea.Number, Idea.Place, Idea.Year, Idea.Month, Idea.Day, Idea.Hour, Idea.Minute, Idea.DayOfYear, Idea.Date, Idea.Time, Idea.Utc)
            && !header.HasAny(Idea.SetPoint, Idea.LeeSide, Idea.WindSide, Idea.Heating, Idea.Supply, Idea.Return)
            ? ChannelGuess.Unused("a number, place or time")
            : null;
    }
}
