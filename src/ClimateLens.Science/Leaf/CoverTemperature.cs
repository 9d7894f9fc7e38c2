using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Science.Leaf;

/// <summary>Temperature of a house's cover and screen, and what the crop sees of them.</summary>
/// <remarks>
/// <para><b>Formula:</b> heat passes from the house (air and surfaces at the air's temperature) through screen, gap and cover to the outside
/// air and the sky as through resistances in a row: convection inside <c>1.7 |Δt|^⅓</c> W/(m² K), outside <c>2.8 + 1.2 u</c> below
/// 4 m/s and <c>2.5 u^0.8</c> from there; long-wave exchange between grey planes <c>4 ε σ T³</c> at the mean temperature. The coefficients
/// are brought up to date until the temperatures stand still. Where the screen closes a share, that share of what the crop
/// sees is the screen; a film lets a share of the sky through. Dew on the innermost face, screen or cover, gives its heat there:
/// <c>λ·6.4e-9 kg/(J Pa)·h·(e - es)</c> with the convection h W/(m² K), where the house's vapour pressure e is over saturation at that face.</para>
/// <para><b>Source:</b> [BOT83] and [DEZWART96] for convection and dew, from memory; the rest [INCROPERA07], from memory. Steady state: glass
/// follows within minutes. <b>Left out:</b> rain; heating pipes; dew that runs off a screen; dew that evaporates again. <b>Error:</b> 2 K, most of it by sky and wind.</para>
/// </remarks>
public static class CoverTemperature
{
    private const double InsideEmissivity = 0.95; // of crop, floor and bench; from memory
    private const double ScreenEmissivity = 0.8; // of a woven screen; from memory, 0.4 for aluminium strips
    private const double LeastConvection = 0.3; // [W/(m² K)] keeps a row of resistances finite where nothing differs
    private const double DewPerConvection = 6.4e-9; // [kg/(J Pa)]: vapour and heat through one and the same boundary layer of air
    private const int MostRounds = 60;

    /// <summary>Share of the sun outside that a cover takes up: clear glass of 4 mm 0.05 to 0.08, from memory. [1]</summary>
    public const double SunTakenUp = 0.06;

    /// <summary>Balance of a cover at one moment.</summary>
    /// <param name="weather">Inside and outside.</param>
    /// <param name="glazing">The cover.</param>
    /// <returns>Temperatures; all NaN where an input is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static CoverState Solve(CoverWeather weather, Glazing glazing)
    {
        weather.Checked();
        CoverLayers? open = null, closed = null;
        return weather.Possible ? Balance(weather, glazing.Checked(), ref open, ref closed) : CoverState.Unknown;
    }

    /// <summary>Radiating temperature that the crop sees, step by step; NaN where an input is not known or impossible.</summary>
    /// <param name="weather">Inside and outside by step.</param>
    /// <param name="glazing">The cover.</param>
    /// <param name="resultC">Receives the radiating temperature. [°C]</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    public static void RadiatingC(ReadOnlySpan<CoverWeather> weather, Glazing glazing, Span<double> resultC)
    {
        Guard.SameLength(weather.Length, resultC.Length);
        Glazing cover = glazing.Checked();
        CoverLayers? open = null, closed = null; // of the step before: a good place to start from
        for (int i = 0; i < resultC.Length; i++)
        {
            resultC[i] = weather[i].Possible ? Balance(weather[i], cover, ref open, ref closed).RadiatingC : double.NaN;
        }
    }

    private static CoverState Balance(CoverWeather weather, Glazing glazing, ref CoverLayers? openBefore, ref CoverLayers? closedBefore)
    {
        CoverLayers open = weather.ScreenClosed < 1 ? Settle(weather, glazing, screened: false, openBefore) : default;
        CoverLayers closed = weather.ScreenClosed > 0 ? Settle(weather, glazing, screened: true, closedBefore) : default;
        openBefore = weather.ScreenClosed < 1 ? open : openBefore;
        closedBefore = weather.ScreenClosed > 0 ? closed : closedBefore;
        double share = weather.ScreenClosed;
        double seen = share < 1 ? (1 - share) * Through(open.InnerC, weather.SkyC, glazing.LongWaveTransmission) : 0;
        seen += share > 0 ? share * Fourth(closed.ScreenC) : 0;
        return new(
            ((1 - share) * open.OuterC) + (share * closed.OuterC), ((1 - share) * open.InnerC) + (share * closed.InnerC),
            share > 0 ? closed.ScreenC : double.NaN, Math.Sqrt(Math.Sqrt(seen)) - Limits.ZeroCelsiusK,
            ((1 - share) * open.HeatWm2) + (share * closed.HeatWm2));
    }

    private static CoverLayers Settle(CoverWeather w, Glazing glazing, bool screened, CoverLayers? start)
    {
        double middle = (w.InsideC + w.OutsideC) / 2;
        CoverLayers layers = start ?? new CoverLayers(middle, middle, screened ? (w.InsideC + middle) / 2 : w.InsideC, 0);
        double wind = w.WindMs < 4 ? 2.8 + (1.2 * w.WindMs) : 2.5 * Math.Pow(w.WindMs, 0.8);
        CoverLayers? before = null;
        for (int round = 0; round < MostRounds; round++)
        {
            CoverLayers passed = Pass(w, glazing, screened, wind, layers), next = layers.Mean(passed); // half steps settle the cube root of the convection
            if (Math.Abs(next.InnerC - layers.InnerC) + Math.Abs(next.ScreenC - layers.ScreenC) < 1e-5)
            {
                return next with { OuterC = passed.OuterC, HeatWm2 = passed.HeatWm2 }; // which follow from those two, and as means would lag behind them
            }

            // Every second step goes on to where the two before are heading; not for ever, lest a kink throw it back and forth.
            (before, layers) = before is CoverLayers first && round < MostRounds / 2 ? (null, CoverLayers.Heading(first, layers, next)) : ((CoverLayers?)layers, next);
        }

        return layers;
    }

    private static CoverLayers Pass(CoverWeather w, Glazing glazing, bool screened, double wind, CoverLayers at)
    {
        double toSky = Radiative(glazing.Emissivity, at.OuterC, w.SkyC);
        double sinkC = ((wind * w.OutsideC) + (toSky * w.SkyC) + w.AbsorbedWm2) / (wind + toSky);
        double outer = 1 / (wind + toSky);
        double wall = 1 / glazing.ConductanceWm2K;
        double innermost = screened ? ScreenEmissivity : glazing.Emissivity;
        double facing = screened ? at.ScreenC : at.InnerC;
        double convection = Convective(w.InsideC - facing);
        double inside = 1 / (convection + Radiative(Between(InsideEmissivity, innermost), w.InsideC, facing));
        double gap = screened
            ? 1 / (Convective(at.ScreenC - at.InnerC) + Radiative(Between(ScreenEmissivity, glazing.Emissivity), at.ScreenC, at.InnerC))
            : 0;
        double heat = (w.InsideC - sinkC + (DewWm2(w, facing, convection) * inside)) / (inside + gap + wall + outer);
        double outerC = sinkC + (heat * outer);
        double innerC = outerC + (heat * wall);
        return new(outerC, innerC, screened ? innerC + (heat * gap) : w.InsideC, heat);
    }

    private static double DewWm2(CoverWeather w, double faceC, double convection)
    {
        double overKPa = w.InsideVapourKPa - MagnusForm.Buck1981Water.VapourPressureKPa(faceC);
        return overKPa > 0 ? LeafAir.LatentHeat(faceC) * DewPerConvection * convection * 1000 * overKPa : 0;
    }

    private static double Convective(double differenceK) => Math.Max(LeastConvection, 1.7 * Math.Cbrt(Math.Abs(differenceK)));

    private static double Radiative(double emissivity, double firstC, double secondC)
    {
        double a = firstC + Limits.ZeroCelsiusK, b = secondC + Limits.ZeroCelsiusK;
        return emissivity * LeafAir.StefanBoltzmann * ((a * a) + (b * b)) * (a + b); // exact: (a⁴ - b⁴)/(a - b)
    }

    private static double Between(double first, double second) => 1 / ((1 / first) + (1 / second) - 1);

    private static double Through(double coverC, double skyC, double transmission) =>
        ((1 - transmission) * Fourth(coverC)) + (transmission * Fourth(skyC));

    private static double Fourth(double temperatureC) => Square(Square(temperatureC + Limits.ZeroCelsiusK));

    private static double Square(double x) => x * x;

    private readonly record struct CoverLayers(double OuterC, double InnerC, double ScreenC, double HeatWm2)
    {
        public CoverLayers Mean(CoverLayers other) => new(
            (OuterC + other.OuterC) / 2, (InnerC + other.InnerC) / 2, (ScreenC + other.ScreenC) / 2, (HeatWm2 + other.HeatWm2) / 2);

        /// <summary>Where three in a row are heading if each step is the same share of the one before: Aitken's rule.</summary>
        public static CoverLayers Heading(CoverLayers a, CoverLayers b, CoverLayers c) => new(
            Limit(a.OuterC, b.OuterC, c.OuterC), Limit(a.InnerC, b.InnerC, c.InnerC), Limit(a.ScreenC, b.ScreenC, c.ScreenC), Limit(a.HeatWm2, b.HeatWm2, c.HeatWm2));

        private static double Limit(double a, double b, double c)
        {
            double first = b - a, second = c - b, share = second / first;
            return Math.Abs(share) < 0.9 ? c + (second * share / (1 - share)) : c; // also where nothing moves
        }
    }
}
