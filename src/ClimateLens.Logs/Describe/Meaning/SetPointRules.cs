using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Set points: of heating and of ventilation there are channels, of the rest not.</summary>
internal static class SetPointRules
{
    private const double HottestSetPointC = 45;

    public static ChannelGuess? Of(HeaderText header, ColumnFacts facts, FileContext context)
    {
        if (!header.Has(Idea.SetPoint) || (header.Has(Idea.Measured) && !header.HasAny(Idea.Heating, Idea.Ventilation)))
        {
            return null;
        }

        if (header.HasAny(Idea.CarbonDioxide, Idea.Humidity, Idea.VapourPressureDeficit, Idea.HumidityDeficit, Idea.Screen, Idea.Pipe, Idea.Light, Idea.Par, Idea.Radiation, Idea.Supply, Idea.Fan, Idea.Irrigation))
        {
            return ChannelGuess.Unused("a set point that no channel takes");
        }

        bool heating = header.Has(Idea.Heating);
        bool ventilation = header.HasAny(Idea.Ventilation, Idea.Vent);
        if (heating != ventilation)
        {
            if (ventilation && header.Has(Idea.Position))
            {
                return ChannelGuess.Unused("the position that a vent is to take, not the one it has");
            }

            return facts.Count > 0 && facts.Median > HottestSetPointC && header.Unit?.Code != "[degF]" && facts.Median < 50
                ? ChannelGuess.Either("a set point, but hotter than air", "heatingSetPoint")
                : ChannelGuess.Is(heating ? "heatingSetPoint" : "ventilationSetPoint", header);
        }

        bool temperature = header.HasAny(Idea.Temperature, Idea.Air) || header.Unit?.Measures(Nursery.Channels.Quantity.Temperature) == true;
        return temperature
            ? ChannelGuess.Either("a set point of the air: of heating or of ventilation?", "heatingSetPoint", "ventilationSetPoint")
            : ChannelGuess.Unused("a set point, but of what the name does not say");
    }
}
