using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Valves and water given.</summary>
internal static class WaterRules
{
    private const double SeldomOpen = 0.25;

    public static ChannelGuess? Of(HeaderText header, ColumnFacts facts, FileContext context)
    {
        if (header.Has(Idea.Mixing))
        {
            return ChannelGuess.Unused("a mixing valve of the heating, no channel");
        }

        bool water = header.HasAny(Idea.Irrigation, Idea.Water);
        bool volume = header.Unit?.Measures(Quantity.Volume) == true;
        if (!water && !header.HasAny(Idea.Valve, Idea.Amount) && !volume)
        {
            return null;
        }

        if (header.HasAny(Idea.Temperature, Idea.Heating, Idea.Pipe, Idea.Supply, Idea.Return) || header.Unit?.Measures(Quantity.Temperature) == true)
        {
            return null;
        }

        if (volume || (header.HasAny(Idea.Amount, Idea.Counter) && water))
        {
            return ChannelGuess.Is("waterVolume", header);
        }

        if (SteeredRules.IsSwitch(facts))
        {
            return water ? ChannelGuess.Is("valve", header, header.Has(Idea.Valve) ? Sureness.Sure : Sureness.Likely)
                : header.Has(Idea.Valve) && facts.Count > 0 && facts.ShareBetween(1, 1) < SeldomOpen ? new ChannelGuess(["valve"], Sureness.Likely, "valve, on or off, and seldom on, as in watering")
                : header.Has(Idea.Valve) ? ChannelGuess.Either("a valve that is on or off: of watering?", "valve") : null;
        }

        return ChannelGuess.Unused(water ? "of water, but neither litres nor on and off" : "a valve, but not on and off");
    }
}
