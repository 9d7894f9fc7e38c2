using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Analysis.Uncertainty;

/// <summary>How far a sensor may be off, as the half-width of a rectangular distribution.</summary>
/// <param name="HalfWidth">Half-width. [SI unit of the channel]</param>
/// <param name="Stated">Whether the nursery file states it; else it is the channel's default and is shown as assumed.</param>
/// <param name="Source">Where the figure comes from.</param>
public readonly record struct SensorAccuracy(double HalfWidth, bool Stated, string Source)
{
    /// <summary>The accuracy of a house's sensor: as stated for it, as stated for its channel, or the channel's default.</summary>
    public static SensorAccuracy Of(HouseSettings house, string channel, string sensor)
    {
        SensorSettings? stated = house.Sensors.FirstOrDefault(s => s.Channel == channel && s.Sensor == sensor)
            ?? house.Sensors.FirstOrDefault(s => s.Channel == channel && s.Sensor.Length == 0);
        return stated is not null
            ? new SensorAccuracy(stated.Accuracy, true, stated.Source.Length > 0 ? Phrase.Of($"nursery file: {stated.Source}") : Phrase.Of("nursery file"))
            : new SensorAccuracy(ChannelCatalogue.Get(channel).DefaultAccuracy, false, Phrase.Of("assumed; common practice, no source"));
    }
}
