using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Deficits, dew points, wet bulbs and CO2.</summary>
internal static class HumidityRules
{
    public static ChannelGuess? Of(HeaderText header, ColumnFacts facts, FileContext context)
    {
        bool outside = header.Has(Idea.Outside) || context.IsWeather;
        if (header.HasAny(Idea.VapourPressureDeficit, Idea.HumidityDeficit))
        {
            return outside ? ChannelGuess.Unused("a deficit outside, no channel")
                : header.Has(Idea.Leaf) ? ChannelGuess.Unused("a deficit at the leaves, no channel")
                : Deficit(header);
        }

        if (header.Has(Idea.DewPoint))
        {
            return outside ? ChannelGuess.Unused("a dew point outside, no channel") : ChannelGuess.Is("dewPoint", header);
        }

        if (header.Has(Idea.WetBulb))
        {
            return outside ? ChannelGuess.Unused("a wet bulb outside, no channel") : ChannelGuess.Is("wetBulbTemperature", header);
        }

        if (header.Has(Idea.DryBulb))
        {
            return ChannelGuess.Is(outside ? "outsideTemperature" : "airTemperature", header);
        }

        if (header.Has(Idea.Humidity) && !header.HasAny(Idea.Temperature, Idea.Absolute) && header.Unit?.Measures(Quantity.Temperature) == true)
        {
            return ChannelGuess.Unused("its name says humidity and its unit a temperature");
        }

        return header.Has(Idea.CarbonDioxide) ? CarbonDioxide(header, facts, outside) : null;
    }

    private static ChannelGuess Deficit(HeaderText header)
    {
        bool pressure = header.Unit?.Measures(Quantity.Pressure) == true;
        bool density = header.Unit?.Measures(Quantity.VapourDensity) == true;
        bool named = header.Has(Idea.VapourPressureDeficit);
        return pressure || (named && !density)
            ? ChannelGuess.Is("vapourPressureDeficit", header)
            : density ? ChannelGuess.Is("humidityDeficit", header)
            : ChannelGuess.Either("a deficit: in g/m3, or as a pressure?", "humidityDeficit", "vapourPressureDeficit");
    }

    private static ChannelGuess CarbonDioxide(HeaderText header, ColumnFacts facts, bool outside)
    {
        if (header.HasAny(Idea.Dosing, Idea.Valve, Idea.Amount) || (facts.Count > 0 && facts.Max <= 1))
        {
            return ChannelGuess.Unused("giving of CO2, no channel");
        }

        return outside ? ChannelGuess.Unused("CO2 outside, no channel") : ChannelGuess.Is("carbonDioxide", header);
    }
}
