using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Leaves, canopy and growing medium.</summary>
internal static class PlantRules
{
    public static ChannelGuess? Of(HeaderText header, ColumnFacts facts, FileContext context)
    {
        if (header.Has(Idea.Wetness))
        {
            return ChannelGuess.Is("leafWetness", header);
        }

        if (header.Has(Idea.Moisture) || (header.HasAny(Idea.Medium, Idea.Pot) && header.Has(Idea.Humidity)))
        {
            return ChannelGuess.Is("mediumMoisture", header, header.Has(Idea.Medium) || header.Words.Any(w => w.Idea == Idea.Moisture && w.Word.Length > 8) ? Sureness.Sure : Sureness.Likely);
        }

        if (header.HasAny(Idea.Medium, Idea.Pot) && (header.Has(Idea.Temperature) || IsTemperature(header)))
        {
            return ChannelGuess.Is("mediumTemperature", header, header.Has(Idea.Medium) ? Sureness.Sure : Sureness.Likely);
        }

        if (header.Has(Idea.Leaf))
        {
            return header.HasAny(Idea.Temperature) || IsTemperature(header) ? ChannelGuess.Is("leafTemperature", header) : ChannelGuess.Unused("of leaves, but what the name does not say");
        }

        if (header.Has(Idea.Plant) && (header.Has(Idea.Temperature) || IsTemperature(header)))
        {
            return ChannelGuess.Either("of the leaves, or of the air between them?", "leafTemperature", "canopyTemperature");
        }

        if (!header.Has(Idea.Canopy))
        {
            return null;
        }

        return header.Has(Idea.Humidity) ? ChannelGuess.Is("canopyHumidity", header)
            : !header.Has(Idea.Temperature) && !IsTemperature(header) ? ChannelGuess.Unused("of the crop, but what the name does not say")
            : header.HasAny(Idea.Air, Idea.Sensor) || header.Words.Any(w => w.Idea == Idea.Canopy && w.Word is "canopy" or "bestand" or "in crop") ? ChannelGuess.Is("canopyTemperature", header)
            : ChannelGuess.Either("of the leaves, or of the air between them?", "leafTemperature", "canopyTemperature");
    }

    private static bool IsTemperature(HeaderText header) => header.Unit?.Measures(Nursery.Channels.Quantity.Temperature) == true;
}
