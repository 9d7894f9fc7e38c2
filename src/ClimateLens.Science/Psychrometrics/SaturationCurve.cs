using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>A published equation for the saturation vapour pressure, its slope and its inverse.</summary>
/// <param name="Name">Name of the equation, with the key of its source in docs/references.md.</param>
/// <param name="OverIce">True for saturation over ice, false over liquid water.</param>
/// <param name="LowestC">Lower end of the published range; NaN where the source states none. [°C]</param>
/// <param name="HighestC">Upper end of the published range; NaN where the source states none. [°C]</param>
/// <remarks>
/// <para>Every moist-air function takes a curve, and <see cref="Water"/> or <see cref="Ice"/> when none is named. Pure vapour
/// throughout: the enhancement factor of moist air is 1 (it would add 0.4 to 0.5 %; see <see cref="WmoPsychrometer"/>).</para>
/// <para>A curve answers over all of <see cref="Limits"/>; its stated error holds in its published range only.</para>
/// </remarks>
public abstract record SaturationCurve(string Name, bool OverIce, double LowestC, double HighestC)
{
    /// <summary>The curve over liquid water used where none is named: <see cref="MagnusForm.Buck1981Water"/>.</summary>
    public static SaturationCurve Water => MagnusForm.Buck1981Water;

    /// <summary>The curve over ice used where none is named: <see cref="MagnusForm.Buck1981Ice"/>.</summary>
    public static SaturationCurve Ice => MagnusForm.Buck1981Ice;

    /// <summary>Saturation vapour pressure. [kPa]</summary>
    /// <param name="temperature">Temperature, -100 to 100. [°C]</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is impossible.</exception>
    public KiloPascal VapourPressure(Celsius temperature) =>
        new(VapourPressureKPa(Limits.Temperature(temperature)));

    /// <summary>Slope of the saturation vapour pressure against temperature. [kPa/K]</summary>
    /// <param name="temperature">Temperature, -100 to 100. [°C]</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is impossible.</exception>
    public KiloPascalPerKelvin Slope(Celsius temperature) => new(SlopeKPaPerK(Limits.Temperature(temperature)));

    /// <summary>Temperature at which a vapour pressure saturates: dew point over water, frost point over ice. [°C]</summary>
    /// <param name="vapourPressure">Vapour pressure, above 0 up to 105. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">The vapour pressure is impossible.</exception>
    public Celsius Temperature(KiloPascal vapourPressure) =>
        new(TemperatureC(Limits.VapourPressureAboveZero(vapourPressure)));

    internal abstract double VapourPressureKPa(double temperatureC);

    internal abstract double SlopeKPaPerK(double temperatureC);

    internal abstract double TemperatureC(double vapourPressureKPa);
}
