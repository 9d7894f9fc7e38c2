using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Languages;
using ClimateLens.Science.Leaf;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Analysis.Foliage;

/// <summary>The radiating temperature over the crop, cover or screen, from the weather outside.</summary>
/// <remarks>
/// <para><b>Formula:</b> <see cref="CoverTemperature"/>. <b>Assumed where not logged:</b> wind 2 m/s; a sky half clouded (without a humidity outside: halfway between
/// a clear sky and the air); no screen. <b>Error:</b> 2 K, most of it by sky and wind; a leaf follows by about a third of it.</para>
/// </remarks>
internal static class CoverAbove
{
    private const double UsualWindMs = 2;
    private const double UsualCloud = 0.5;

    /// <summary>Radiating temperature by step; NaN where the temperature inside or outside is not known. [°C]</summary>
    /// <param name="period">The house period, with the air's state.</param>
    /// <param name="overCropWm2">Sun over the crop; NaN where not known. [W/m²]</param>
    /// <param name="basis">What it rests on so far.</param>
    public static (double[] AboveC, FoliageBasis Basis) Of(HousePeriod period, double[] overCropWm2, FoliageBasis basis)
    {
        double[] above = new double[overCropWm2.Length];
        if (UsedSeries.Of(period, "outsideTemperature") is not double[] outside)
        {
            Array.Fill(above, double.NaN);
            return (above, basis);
        }

        // The house's air, not that of a sensor in the canopy: it is what moves along the cover.
        ImmutableArray<double> inside = period.Frame.Values(Derived.TemperatureC), vapour = period.Frame.Values(Derived.VapourPressureKPa);
        double[]? humidity = UsedSeries.Of(period, "outsideHumidity"), wind = UsedSeries.Of(period, "windSpeed"), screen = UsedSeries.Of(period, "screenPosition");
        double[]? sun = UsedSeries.Of(period, "globalRadiation");
        CoverWeather[] weather = new CoverWeather[above.Length];
        for (int i = 0; i < above.Length; i++)
        {
            double sunWm2 = Or(sun?[i], Or(overCropWm2[i] / LightOnLeaves.ThroughRoof, 0));
            double sky = SkyC(outside[i], humidity?[i] ?? double.NaN);
            double closed = Math.Clamp(Or(screen?[i], 0) / 100, 0, 1);
            weather[i] = new(inside[i], outside[i], sky, Or(wind?[i], UsualWindMs), CoverTemperature.SunTakenUp * Math.Clamp(sunWm2, 0, 1500), closed) { InsideVapourKPa = Or(vapour[i], 0) };
        }

        (Glazing glazing, string kind) = GlazingOf(period.Input.House.Glazing);
        CoverTemperature.RadiatingC(weather, glazing, above);
        string[] told = [Phrase.Of("Outside temperature"), .. humidity is null ? (string[])[] : [Phrase.Of("humidity")], .. wind is null ? (string[])[] : [Phrase.Of("wind")], .. screen is null ? (string[])[] : [Phrase.Of("screen position")]];
        FoliageBasis known = basis
            .AndMeasured($"{Text.Say.List(told)}.")
            .AndModelled(Phrase.Of("The temperature of the cover over the crop: from outside temperature, sky, wind, sun and the dew on it (error 2 K)."))
            .AndAssumed(humidity is null ? Phrase.Of("A sky halfway between clear and overcast.") : Phrase.Of("A sky half clouded."));
        known = wind is null ? known.AndAssumed(Phrase.Of("A wind of 2 m/s: none is logged.")) : known;
        known = screen is null ? known.AndAssumed(Phrase.Of("No screen closed at night: none is logged. A closed screen keeps leaves warmer.")) : known;
        known = period.Input.House.Glazing.Length == 0 ? known.AndAssumed(Phrase.Of($"A cover of {kind}: the nursery file names none (glazing).")) : known.AndMeasured(Phrase.Of($"Cover of {kind}, from the nursery file."));
        return (above, known);
    }

    private static double SkyC(double outsideC, double humidityPct)
    {
        if (outsideC is not (>= -60 and <= 60))
        {
            return double.NaN;
        }

        if (humidityPct is not (> 1 and <= 104))
        {
            return (SkyTemperature.FromAirTemperature(new(outsideC)).Value + outsideC) / 2;
        }

        Celsius dew = DewPoint.FromRelativeHumidity(new(outsideC), new(Math.Min(100, humidityPct)));
        return SkyTemperature.FromDewPoint(new(outsideC), new(Math.Clamp(dew.Value, -60, outsideC)), UsualCloud).Value;
    }

    private static (Glazing Glazing, string Words) GlazingOf(string name) => name switch
    {
        "twinPane" => (Glazing.TwinPane, Phrase.Of("two panes or twin-wall sheet")),
        "film" => (Glazing.ThermicFilm, Phrase.Of("one film")),
        "doubleFilm" => (Glazing.DoubleThermicFilm, Phrase.Of("two films")),
        _ => (Glazing.SingleGlass, Phrase.Of("one pane of glass")),
    };

    private static double Or(double? value, double usual) => value is double known && double.IsFinite(known) ? known : usual;
}
