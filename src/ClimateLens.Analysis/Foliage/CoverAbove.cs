using ClimateLens.Analysis.Stages;
using ClimateLens.Science.Canopy;
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
    public static (double[] AboveC, FoliageBasis Basis) Of(HousePeriod period, double[] insideC, FoliageBasis basis)
    {
        double[] above = new double[insideC.Length];
        if (UsedSeries.Of(period, "outsideTemperature") is not double[] outside)
        {
            Array.Fill(above, double.NaN);
            return (above, basis);
        }

        double[]? humidity = UsedSeries.Of(period, "outsideHumidity"), wind = UsedSeries.Of(period, "windSpeed"), screen = UsedSeries.Of(period, "screenPosition");
        double[] sky = new double[above.Length], windMs = new double[above.Length], closed = new double[above.Length];
        for (int i = 0; i < above.Length; i++)
        {
            sky[i] = SkyC(outside[i], humidity?[i] ?? double.NaN);
            windMs[i] = Or(wind?[i], UsualWindMs);
            closed[i] = Math.Clamp(Or(screen?[i], 0) / 100, 0, 1);
        }

        (Glazing glazing, string kind) = GlazingOf(period.Input.House.Glazing);
        CoverTemperature.RadiatingC(insideC, outside, sky, windMs, closed, glazing, above);
        string[] told = ["Outside temperature", .. humidity is null ? (string[])[] : ["humidity"], .. wind is null ? (string[])[] : ["wind"], .. screen is null ? (string[])[] : ["screen position"]];
        FoliageBasis known = basis
            .AndMeasured($"{Text.Say.List(told)}.")
            .AndModelled("The temperature of the cover over the crop: from outside temperature, sky and wind (error 2 K).")
            .AndAssumed(humidity is null ? "A sky halfway between clear and overcast." : "A sky half clouded.");
        known = wind is null ? known.AndAssumed("A wind of 2 m/s: none is logged.") : known;
        known = screen is null ? known.AndAssumed("No screen closed at night: none is logged. A closed screen keeps leaves warmer.") : known;
        known = period.Input.House.Glazing.Length == 0 ? known.AndAssumed($"A cover of {kind}: the nursery file names none (glazing).") : known.AndMeasured($"Cover of {kind}, from the nursery file.");
        return (above, known);
    }

    /// <summary>
    /// What the mean leaf sees over it: the cover by the share of leaves that nothing hides from it, other leaves at the temperature of the air by the rest.
    /// </summary>
    /// <param name="coverC">Radiating temperature of the cover. [°C]</param>
    /// <param name="airC">Air among the leaves. [°C]</param>
    /// <param name="leafArea">Leaf area over ground area. [1]</param>
    /// <remarks>
    /// <b>Formula:</b> share <c>(1 - exp(-k L))/L</c> as for light (leaves are black for heat radiation, so that one sheltered from light is sheltered from the
    /// cover), fourth powers of absolute temperature. The uppermost leaves see more of the cover and are colder at night, by up to three times the difference.
    /// </remarks>
    public static double SeenC(double coverC, double airC, double leafArea)
    {
        double share = leafArea > 0 ? LightInterception.Share(LightInterception.DefaultExtinction, leafArea) / leafArea : LightInterception.DefaultExtinction;
        return Math.Sqrt(Math.Sqrt((share * Fourth(coverC)) + ((1 - share) * Fourth(airC)))) - Limits.ZeroCelsiusK;
    }

    private static double Fourth(double temperatureC) => Math.Pow(temperatureC + Limits.ZeroCelsiusK, 4);

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
        "twinPane" => (Glazing.TwinPane, "two panes or twin-wall sheet"),
        "film" => (Glazing.ThermicFilm, "one film"),
        "doubleFilm" => (Glazing.DoubleThermicFilm, "two films"),
        _ => (Glazing.SingleGlass, "one pane of glass"),
    };

    private static double Or(double? value, double usual) => value is double known && double.IsFinite(known) ? known : usual;
}
