using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Leaf;

/// <summary>Properties of air and water that the energy balance of a leaf needs.</summary>
/// <remarks>
/// <para><b>Source:</b> ideal gas for dry air (287.05 J/(kg K)), heat capacity 1010 J/(kg K), latent heat <c>2.501e6 - 2361 t</c> J/kg and
/// ratio of molar masses 0.622 as in [FAO56] and [STANGHELLINI87], from memory.</para>
/// <para><b>Error:</b> below 1 % from 0 to 40 °C: the vapour in moist air makes it up to 1.5 % lighter at 30 °C, which is left out.</para>
/// </remarks>
public static class LeafAir
{
    /// <summary>Heat capacity of air. [J/(kg K)]</summary>
    public const double HeatCapacity = 1010;

    /// <summary>Stefan-Boltzmann constant, [CODATA18]. [W/(m² K⁴)]</summary>
    public const double StefanBoltzmann = 5.670374e-8;

    /// <summary>Air pressure taken where none is known. [kPa]</summary>
    public const double StandardPressureKPa = 101.325;

    private const double DryAirGasConstant = 287.05; // [J/(kg K)]
    private const double MolarMassRatio = 0.622;

    /// <summary>Density of dry air. [kg/m³]</summary>
    /// <param name="air">Air temperature, -100 to 100. [°C]</param>
    /// <param name="pressure">Air pressure, 10 to 120. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static KilogramPerCubicMetre Density(Celsius air, KiloPascal pressure) =>
        new(DensityKgM3(Limits.Temperature(air), Limits.AirPressure(pressure)));

    /// <summary>Latent heat of evaporation. [J/kg]</summary>
    /// <param name="temperature">Temperature of the water, -100 to 100. [°C]</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is impossible.</exception>
    public static double LatentHeatJKg(Celsius temperature) => LatentHeat(Limits.Temperature(temperature));

    /// <summary>Psychrometric constant <c>γ = cp·p/(0.622 λ)</c>. [kPa/K]</summary>
    /// <param name="air">Air temperature, -100 to 100. [°C]</param>
    /// <param name="pressure">Air pressure, 10 to 120. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static KiloPascalPerKelvin PsychrometricConstant(Celsius air, KiloPascal pressure) =>
        new(GammaKPaPerK(LatentHeat(Limits.Temperature(air)), Limits.AirPressure(pressure)));

    internal static double DensityKgM3(double airC, double pressureKPa) =>
        1000 * pressureKPa / (DryAirGasConstant * (airC + Limits.ZeroCelsiusK));

    internal static double LatentHeat(double temperatureC) => 2.501e6 - (2361 * temperatureC);

    internal static double GammaKPaPerK(double latentHeatJKg, double pressureKPa) =>
        HeatCapacity * pressureKPa / (MolarMassRatio * latentHeatJKg);
}
