using ClimateLens.Science.Leaf;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Wetness;

/// <summary>Evaporation from a leaf wet on both sides when its net radiation is given.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>λE = (s Rn + 2 ρ cp D/r_e)/(s + 0.92 γ)</c> per leaf area; 0.92 as in <see cref="StanghelliniResistance"/>.</para>
/// <para><b>Source:</b> [PENMAN48], from memory, with r_e of [STANGHELLINI87]. <b>Error:</b> the slope is taken at the temperature of the
/// air: 0.6 W/m² at 1 K off and 2.4 at 2 K, up to 1 m/s (ResistanceTests); air speed decides (a factor of three from 0.05 to 0.5 m/s). <see cref="FoliageFilm"/> uses the full balance.</para>
/// </remarks>
public static class FilmDrying
{
    /// <summary>Latent heat flux from a leaf wet on both sides, per leaf area. [W/m²]</summary>
    /// <param name="air">Air temperature, -30 to 60. [°C]</param>
    /// <param name="humidity">Relative humidity, 0 to 100. [%]</param>
    /// <param name="external">External resistance to heat of one side, above 0 to 10000. [s/m]</param>
    /// <param name="netRadiation">Net radiation of both sides, -500 to 1500. [W/m²]</param>
    /// <param name="pressure">Air pressure; 101.325 when left out. [kPa]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static WattPerSquareMetre LatentHeat(
        Celsius air, RelativeHumidity humidity, SecondPerMetre external, WattPerSquareMetre netRadiation,
        KiloPascal? pressure = null, SaturationCurve? curve = null)
    {
        double airC = Guard.Within(air.Value, -30, 60, "°C", nameof(air));
        double resistance = Guard.AboveUpTo(external.Value, 0, 10000, "s/m", nameof(external));
        double net = Guard.Within(netRadiation.Value, -500, 1500, "W/m²", nameof(netRadiation));
        double pressureKPa = Limits.AirPressure(pressure ?? new(LeafAir.StandardPressureKPa));
        double slope = VapourPressure.CurveOr(curve).SlopeKPaPerK(airC);
        double deficit = VapourPressureDeficit.OfAir(air, humidity, curve).Value;
        double heat = LeafAir.DensityKgM3(airC, pressureKPa) * LeafAir.HeatCapacity;
        double gamma = LeafAir.GammaKPaPerK(LeafAir.LatentHeat(airC), pressureKPa);
        return new(((slope * net) + (2 * heat * deficit / resistance)) / (slope + (StanghelliniResistance.VapourToHeat * gamma)));
    }

    /// <summary>Hours until a film is gone at a steady latent heat flux; infinite where nothing evaporates. [h]</summary>
    /// <param name="filmMm">Film on both sides together, 0 to 2. [mm = kg/m² leaf]</param>
    /// <param name="air">Air temperature, -30 to 60. [°C]</param>
    /// <param name="latentHeat">Latent heat flux per leaf area, -1500 to 1500. [W/m²]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static double Hours(double filmMm, Celsius air, WattPerSquareMetre latentHeat)
    {
        double film = Guard.Within(filmMm, 0, 2, "mm");
        double joule = LeafAir.LatentHeat(Guard.Within(air.Value, -30, 60, "°C", nameof(air)));
        double flux = Guard.Within(latentHeat.Value, -1500, 1500, "W/m²", nameof(latentHeat));
        return flux <= 0 ? double.IsNaN(film + joule) ? double.NaN : double.PositiveInfinity : film * joule / (3600 * flux);
    }
}
