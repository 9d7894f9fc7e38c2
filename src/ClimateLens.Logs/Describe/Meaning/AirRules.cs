using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Temperature and humidity of the air, inside and outside.</summary>
internal static class AirRules
{
    private const int FewestValues = 5;

    public static ChannelGuess? Of(HeaderText header, ColumnFacts facts, FileContext context)
    {
        bool outside = header.Has(Idea.Outside) || (context.IsWeather && !header.Has(Idea.Inside));
        bool temperature = header.Has(Idea.Temperature) || (header.HasAny(Idea.Air, Idea.Inside, Idea.Outside, Idea.Measured) && header.Unit?.Measures(Quantity.Temperature) == true);
        if (temperature && header.Has(Idea.Humidity) && header.Unit is null)
        {
            return ChannelGuess.Unused("names temperature and humidity at once");
        }

        if (temperature && !(header.Has(Idea.Humidity) && header.Unit?.Measures(Quantity.RelativeHumidity) == true))
        {
            return Temperature(header, outside);
        }

        return header.Has(Idea.Humidity) || header.Unit?.NamesHumidity == true || (header.HasAny(Idea.Air, Idea.Inside, Idea.Outside) && header.Unit?.Measures(Quantity.RelativeHumidity) == true) ? Humidity(header, outside)
            : header.Has(Idea.Absolute) ? ChannelGuess.Unused("absolute humidity, no channel")
            : PlaceAlone(header, facts, outside);
    }

    /// <summary>"Air", "Outside", "Soil": a place, and values as a temperature has them.</summary>
    private static ChannelGuess? PlaceAlone(HeaderText header, ColumnFacts facts, bool outside)
    {
        bool place = header.Unit is null && header.Words.Count > 0 && header.Words.All(w => w.Idea is Idea.Air or Idea.Inside or Idea.Outside or Idea.Medium or Idea.House);
        bool fits = facts.Distinct >= FewestValues && facts.Min > -40 && facts.Max < 60;
        return !place || !fits || header.Words.All(w => w.Idea == Idea.House) ? null
            : ChannelGuess.Either("it names a place, and not what is measured: a temperature?", header.Has(Idea.Medium) ? "mediumTemperature" : outside ? "outsideTemperature" : "airTemperature");
    }

    private static ChannelGuess Temperature(HeaderText header, bool outside)
    {
        if (header.Has(Idea.Sun))
        {
            return ChannelGuess.Either("of the soil, or in the sun?", "mediumTemperature");
        }

        if (header.HasAny(Idea.Cover, Idea.Floor, Idea.Tank))
        {
            return ChannelGuess.Unused(header.Has(Idea.Tank) ? "the temperature of a tank, no channel" : "the temperature of the cover or the floor, no channel");
        }

        if (header.HasAny(Idea.Water, Idea.Irrigation))
        {
            return ChannelGuess.Either("of heating water, or of the water given?", "heatingPipeTemperature");
        }

        if (header.Unit is not null && !header.Unit.Measures(Quantity.Temperature))
        {
            return ChannelGuess.Unused($"a temperature in {header.Unit.Written}, which is no unit of it");
        }

        if (header.Has(Idea.Sensor) && header.Words.Any(w => w.Idea == Idea.Outside && w.Word.StartsWith("ext", StringComparison.Ordinal)))
        {
            return ChannelGuess.Either("outside, or at the end of a logger's lead?", "outsideTemperature", "airTemperature");
        }

        if (header.HasAny(Idea.Day) && header.Words.Count <= 2)
        {
            return ChannelGuess.Either("of the day: a reading, an average or a set point?", "airTemperature");
        }

        return outside ? ChannelGuess.Is("outsideTemperature", header, header.Has(Idea.Outside) ? Sureness.Sure : Sureness.Likely)
            : ChannelGuess.Is("airTemperature", header, header.HasAny(Idea.Air, Idea.Inside, Idea.House) ? Sureness.Sure : Sureness.Likely);
    }

    private static ChannelGuess Humidity(HeaderText header, bool outside)
    {
        if (header.Has(Idea.Absolute) || header.Unit?.Measures(Quantity.VapourDensity) == true)
        {
            return ChannelGuess.Unused("absolute humidity, no channel");
        }

        if (header.Unit is not null && !header.Unit.Measures(Quantity.RelativeHumidity))
        {
            return ChannelGuess.Unused($"humidity in {header.Unit.Written}, which no channel takes");
        }

        return outside ? ChannelGuess.Is("outsideHumidity", header, header.Has(Idea.Outside) ? Sureness.Sure : Sureness.Likely)
            : ChannelGuess.Is("relativeHumidity", header, header.Unit is not null || header.Words.Any(w => w.Word is "rh" or "rv" or "rlf" or "relative") ? Sureness.Sure : Sureness.Likely);
    }
}
