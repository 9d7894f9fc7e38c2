using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Wind, rain and air pressure.</summary>
internal static class WeatherRules
{
    public static ChannelGuess? Of(HeaderText header, ColumnFacts facts, FileContext context)
    {
        if (header.Has(Idea.Gust))
        {
            return ChannelGuess.Unused("gusts, no channel");
        }

        bool vent = header.Has(Idea.Vent); // here only in the French sense
        if (header.Has(Idea.Wind) || vent)
        {
            bool direction = header.Has(Idea.Direction) || header.Unit?.Measures(Quantity.Angle) == true;
            return header.HasAny(Idea.Temperature, Idea.Humidity) ? null
                : direction ? ChannelGuess.Is("windDirection", header)
                : ChannelGuess.Is("windSpeed", header, header.Has(Idea.Speed) || header.Unit?.Measures(Quantity.Speed) == true ? Sureness.Sure : Sureness.Likely);
        }

        if (header.Has(Idea.Rain))
        {
            return facts.IsZeroOne && !facts.IsConstant && header.Unit?.Measures(Quantity.WaterDepth) != true
                ? ChannelGuess.Unused("rain as yes and no; the channel takes millimetres")
                : SteeredRules.IsSwitch(facts) && facts.Tally.Numbers == 0 ? ChannelGuess.Unused("rain as yes and no; the channel takes millimetres")
                : ChannelGuess.Is("rain", header);
        }

        if (header.Has(Idea.Pressure))
        {
            return header.HasAny(Idea.Water, Idea.Irrigation, Idea.Pipe) || facts.Count == 0 || PressureUnits.Of(facts) is null
                ? ChannelGuess.Unused("a pressure, but not of the air")
                : ChannelGuess.Is("airPressure", header);
        }

        return null;
    }
}
