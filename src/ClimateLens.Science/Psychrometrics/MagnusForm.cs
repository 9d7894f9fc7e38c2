namespace ClimateLens.Science.Psychrometrics;

/// <summary>One published coefficient set of the Magnus form: <c>es = A·exp(B·t/(C + t))</c>.</summary>
/// <param name="Name">Name of the set, with the key of its source in docs/references.md.</param>
/// <param name="OverIce">True for saturation over ice, false over liquid water.</param>
/// <param name="AKPa">Value at 0 °C. [kPa]</param>
/// <param name="B">Coefficient in the exponent. [1]</param>
/// <param name="CDegC">Temperature constant. [°C]</param>
/// <param name="LowestC">Lower end of the published range; NaN where the source states none. [°C]</param>
/// <param name="HighestC">Upper end of the published range; NaN where the source states none. [°C]</param>
/// <remarks>
/// <para><b>Formula:</b> inverse <c>g = ln(e/A)</c>, <c>t = C·g/(B - g)</c>; slope <c>es·B·C/(C + t)²</c>. Both are exact for the
/// form, so value, slope and inverse never part by more than rounding.</para>
/// <para>The errors named on each set are against the Hyland-Wexler form [ASHRAE17] in steps of 0.05 K; tests hold them. All sets
/// are for pure vapour (enhancement factor 1). Published ranges are partly from memory.</para>
/// </remarks>
public sealed record MagnusForm(
    string Name, bool OverIce, double AKPa, double B, double CDegC, double LowestC, double HighestC)
    : SaturationCurve(Name, OverIce, LowestC, HighestC)
{
    /// <summary>Buck 1981 e_w1, water: the default. Error at most 0.07 % from 10 to 35 °C, 0.20 % from -20 to 50 °C. [BUCK81]</summary>
    public static MagnusForm Buck1981Water { get; } = new("Buck 1981 e_w1 [BUCK81]", false, 0.61121, 17.502, 240.97, -20, 50);

    /// <summary>Buck 1981 e_i2, ice: the default. Error at most 0.02 % from -20 to 0 °C. [BUCK81], coefficients from memory.</summary>
    public static MagnusForm Buck1981Ice { get; } = new("Buck 1981 e_i2 [BUCK81]", true, 0.61115, 22.452, 272.55, -50, 0);

    /// <summary>WMO-No. 8, water. Error at most 0.30 % from -20 to 50 °C, low throughout the greenhouse range. [WMO8]</summary>
    public static MagnusForm Wmo8Water { get; } = new("WMO-No. 8 [WMO8]", false, 0.6112, 17.62, 243.12, -45, 60);

    /// <summary>WMO-No. 8, ice. Error at most 0.02 % from -20 to 0 °C. [WMO8]</summary>
    public static MagnusForm Wmo8Ice { get; } = new("WMO-No. 8, ice [WMO8]", true, 0.6112, 22.46, 272.62, -65, 0);

    /// <summary>Alduchov and Eskridge 1996 AERK, water. Error at most 0.24 % from -20 to 50 °C. [AE96]</summary>
    public static MagnusForm AerkWater { get; } = new("AERK [AE96]", false, 0.61094, 17.625, 243.04, -40, 50);

    /// <summary>Alduchov and Eskridge 1996 AERKi, ice. Error at most 0.14 % from -20 to 0 °C. [AE96]</summary>
    public static MagnusForm AerkIce { get; } = new("AERKi [AE96]", true, 0.61121, 22.587, 273.86, -80, 0);

    /// <summary>FAO-56 eq. 11 (Tetens), water. Error at most 0.10 % from 10 to 35 °C, 0.81 % at -20 °C. [FAO56]</summary>
    public static MagnusForm Fao56Water { get; } = new("FAO-56 eq. 11 [FAO56]", false, 0.6108, 17.27, 237.3, double.NaN, double.NaN);

    /// <summary>Bolton 1980 eq. 10, water. Error at most 0.09 % from 10 to 35 °C, 0.43 % at 50 °C. [BOLTON80]</summary>
    public static MagnusForm Bolton1980Water { get; } = new("Bolton 1980 [BOLTON80]", false, 0.6112, 17.67, 243.5, -30, 35);

    internal override double VapourPressureKPa(double temperatureC) =>
        AKPa * Math.Exp(B * (temperatureC / (CDegC + temperatureC)));

    internal override double SlopeKPaPerK(double temperatureC)
    {
        double denominator = CDegC + temperatureC;
        return VapourPressureKPa(temperatureC) * B * CDegC / (denominator * denominator);
    }

    internal override double TemperatureC(double vapourPressureKPa)
    {
        double g = Math.Log(vapourPressureKPa / AKPa);
        return CDegC * g / (B - g);
    }
}
