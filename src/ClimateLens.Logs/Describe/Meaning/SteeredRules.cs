using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Vents, screens, fans and fog.</summary>
internal static class SteeredRules
{
    public static ChannelGuess? Of(HeaderText header, ColumnFacts facts, FileContext context)
    {
        if (header.Has(Idea.Vent) && !IsFrenchWind(header))
        {
            return header.Has(Idea.Temperature) && !header.Has(Idea.Position) && header.Unit?.Measures(Quantity.Percent) != true
                ? ChannelGuess.Unused("a temperature for the vents, not their position")
                : ChannelGuess.Is("ventPosition", header, header.HasAny(Idea.Position, Idea.LeeSide, Idea.WindSide) || IsPercent(header) || VentWord(header) ? Sureness.Sure : Sureness.Likely) with { Sensor = Side(header) };
        }

        if (header.HasAny(Idea.LeeSide) || (header.Has(Idea.WindSide) && !header.HasAny(Idea.Speed, Idea.Direction)))
        {
            return ChannelGuess.Is("ventPosition", header, IsPercent(header) || header.HasAny(Idea.Position, Idea.Ventilation) ? Sureness.Sure : Sureness.Likely) with { Sensor = Side(header) };
        }

        if (header.Has(Idea.Ventilation))
        {
            return header.HasAny(Idea.Position) || IsPercent(header) ? ChannelGuess.Is("ventPosition", header, Sureness.Likely)
                : header.HasAny(Idea.Temperature) || header.Unit?.Measures(Quantity.Temperature) == true ? ChannelGuess.Either("the temperature at which it ventilates?", "ventilationSetPoint")
                : ChannelGuess.Unused("of ventilation, but what the name does not say");
        }

        if (header.Has(Idea.Screen))
        {
            return header.HasAny(Idea.Temperature, Idea.Radiation, Idea.Light) ? ChannelGuess.Unused("of a screen, but not its position")
                : IsOpenness(header) ? ChannelGuess.Unused("how far a screen is open; the channel takes how far it is closed")
                : ChannelGuess.Is("screenPosition", header);
        }

        return Switches(header, facts);
    }

    private static ChannelGuess? Switches(HeaderText header, ColumnFacts facts)
    {
        if (header.Has(Idea.Fan))
        {
            return IsSwitch(facts) ? ChannelGuess.Is("fan", header) : ChannelGuess.Unused("a fan's speed; the channel knows on and off");
        }

        return !header.Has(Idea.Fog) ? null
            : IsSwitch(facts) ? ChannelGuess.Is("fogLine", header)
            : ChannelGuess.Unused("fog, but not on and off");
    }

    /// <summary>Whether all values are 0 and 1, or words for on and off.</summary>
    public static bool IsSwitch(ColumnFacts facts) => facts.IsZeroOne || (facts.Tally.Numbers == 0 && SwitchWords.All(facts.Tally));

    private static bool IsPercent(HeaderText header) => header.Unit?.Measures(Quantity.Percent) == true;

    /// <summary>A screen that is told by how far it is open, where the channel means closed.</summary>
    private static bool IsOpenness(HeaderText header) => header.Words.Any(w => w.Idea == Idea.Position && w.Word is "open" or "opening" or "offnung" or "abning" or "apertura");

    private static bool VentWord(HeaderText header) => header.Words.Any(w => w.Idea == Idea.Vent && w.Word != "vent");

    /// <summary>In French "vent" is the wind.</summary>
    private static bool IsFrenchWind(HeaderText header)
        => !header.HasAny(Idea.LeeSide, Idea.WindSide) && header.Words.All(w => w.Idea != Idea.Vent || w.Word == "vent")
            && (header.HasAny(Idea.Speed, Idea.Direction) || header.Unit?.Measures(Quantity.Speed) == true || header.Unit?.Measures(Quantity.Angle) == true);

    private static string Side(HeaderText header) => header.Has(Idea.LeeSide) ? "lee" : header.HasAny(Idea.WindSide, Idea.Wind) ? "wind" : "";
}
