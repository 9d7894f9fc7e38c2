using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Radiation, light and PAR.</summary>
internal static class LightRules
{
    private const double MostLuxUnlikelyOtherwise = 3500;

    public static ChannelGuess? Of(HeaderText header, ColumnFacts facts, FileContext context)
    {
        bool outside = header.Has(Idea.Outside) || context.IsWeather;
        if (!header.HasAny(Idea.Radiation, Idea.Light, Idea.Par) && !(header.Has(Idea.Sun) && !header.HasAny(Idea.Temperature, Idea.Humidity, Idea.Moisture)))
        {
            return null;
        }

        if (header.Unit?.Measures(Quantity.RadiantExposure) == true)
        {
            return Sum(header, facts);
        }

        if (header.Unit?.Measures(Quantity.PhotonFlux) == true || (header.Has(Idea.Par) && header.Unit is null))
        {
            return outside ? ChannelGuess.Unused("PAR outside, no channel") : ChannelGuess.Is("ppfd", header, header.Unit is null ? Sureness.Likely : Sureness.Sure);
        }

        if (header.Unit?.Measures(Quantity.Illuminance) == true)
        {
            return outside ? ChannelGuess.Unused("light outside in lux, no channel") : ChannelGuess.Is("illuminance", header);
        }

        if (header.Unit?.Measures(Quantity.Irradiance) == true || (header.HasAny(Idea.Radiation, Idea.Sun) && header.Unit is null))
        {
            return Radiation(header, outside);
        }

        return SteeredRules.IsSwitch(facts) && header.Unit is null ? ChannelGuess.Unused("light as on and off, as of lamps; no channel")
            : header.Unit is null ? Light(facts) : ChannelGuess.Unused($"light in {header.Unit.Written}, which no channel takes");
    }

    /// <summary>A count that starts anew each day, or the amount of each row: a sum that the file repeats all day is neither.</summary>
    private static ChannelGuess Sum(HeaderText header, ColumnFacts facts)
        => header.HasAny(Idea.Par, Idea.Inside) ? ChannelGuess.Unused("a sum of light inside, no channel")
        : Counters.Is(facts) ? ChannelGuess.Is("radiationSum", header, Sureness.Likely)
        : ChannelGuess.Either("radiation as a sum: of each row, as the channel takes it?", "radiationSum");

    private static ChannelGuess Radiation(HeaderText header, bool outside)
        => header.Has(Idea.Inside) && !header.Has(Idea.Outside) ? ChannelGuess.Is("insideRadiation", header)
        : outside || header.Has(Idea.Sun) || header.Words.Any(w => w.Idea == Idea.Radiation && w.Word is not ("rad" or "radiation" or "straling" or "strahlung" or "rayonnement" or "radiacion" or "radiazion" or "irrad"))
            ? ChannelGuess.Is("globalRadiation", header)
        : header.Has(Idea.Light) && !header.Has(Idea.Radiation) ? ChannelGuess.Either("light in W/m2: of the sun outside, or inside?", "globalRadiation", "insideRadiation")
        : ChannelGuess.Is("globalRadiation", header, Sureness.Likely);

    /// <summary>Light without a unit: only values beyond all watts and photons tell.</summary>
    private static ChannelGuess Light(ColumnFacts facts)
        => facts.Count > 0 && facts.Max > MostLuxUnlikelyOtherwise
            ? new ChannelGuess(["illuminance"], Sureness.Likely, $"light, and values above {MostLuxUnlikelyOtherwise}: lux")
            : ChannelGuess.Either("light without a unit: klux, µmol/(m² s) or W/m²?", "illuminance", "ppfd", "globalRadiation");
}
