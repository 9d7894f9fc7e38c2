using System.Collections.Frozen;

namespace ClimateLens.Nursery.Channels;

/// <summary>A unit that a file may use: SI value = value · Factor + Offset.</summary>
/// <param name="Code">UCUM code or everyday alias, case-sensitive.</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="Factor">Multiplier to the unit of <see cref="Quantity"/>.</param>
/// <param name="Offset">Added after the multiplier.</param>
public readonly record struct Unit(string Code, Quantity Quantity, double Factor, double Offset = 0)
{
    /// <summary>Converts a value of this unit to the unit of its quantity; NaN stays NaN.</summary>
    public double ToSi(double value) => (value * Factor) + Offset;

    /// <summary>Converts a value in the unit of the quantity to this unit; NaN stays NaN.</summary>
    public double FromSi(double value) => (value - Offset) / Factor;
}

/// <summary>
/// Units by quantity: UCUM 2.2 codes with everyday aliases. Factors are exact by definition
/// ([SP811] appendix B) except those of mercury, which are conventional. The plain words gal, gallon and floz are US measures.
/// Both the micro sign and the Greek letter mu are known.
/// </summary>
public static class UnitCatalogue
{
    /// <summary>All units.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        .. Of(Quantity.Temperature, 1, 0, "Cel", "degC", "°C", "C", "celsius"),
        .. Of(Quantity.Temperature, 5.0 / 9, -160.0 / 9, "[degF]", "degF", "°F", "F", "fahrenheit"),
        .. Of(Quantity.Temperature, 1, -273.15, "K"),
        .. Of(Quantity.TemperatureDifference, 1, 0, "K", "Cel", "degC", "°C", "C", "celsius"),
        .. Of(Quantity.TemperatureDifference, 5.0 / 9, 0, "[degF]", "degF", "°F", "F", "fahrenheit"),
        .. Of(Quantity.RelativeHumidity, 1, 0, "%", "percent"),
        .. Of(Quantity.RelativeHumidity, 100, 0, "1"),
        .. Of(Quantity.Pressure, 1, 0, "kPa"),
        .. Of(Quantity.Pressure, 0.001, 0, "Pa"),
        .. Of(Quantity.Pressure, 0.1, 0, "hPa", "mbar"),
        .. Of(Quantity.Pressure, 100, 0, "bar"),
        .. Of(Quantity.Pressure, 3.386389, 0, "[in_i'Hg]", "inHg"), // conventional inch of mercury, [SP811]
        .. Of(Quantity.Pressure, 0.133322387415, 0, "mm[Hg]", "mmHg"), // conventional millimetre of mercury, [SP811]
        .. Of(Quantity.Pressure, 4.4482216152605 / 0.64516, 0, "[psi]", "psi"), // 1 lbf a square inch
        .. Of(Quantity.Irradiance, 1, 0, "W/m2", "W.m-2", "W/m²", "W/m^2"),
        .. Of(Quantity.Irradiance, 1000, 0, "kW/m2"),
        .. Of(Quantity.PhotonFlux, 1, 0, "umol/m2/s", "umol.m-2.s-1", "umol/(m2.s)", "µmol/m2/s", "µmol/m²/s", "\u03BCmol/m2/s", "\u03BCmol/m²/s"),
        .. Of(Quantity.Illuminance, 1, 0, "lx", "lux"),
        .. Of(Quantity.Illuminance, 1000, 0, "klx", "klux"),
        .. Of(Quantity.Illuminance, 10.763910416709722, 0, "[ft_i]-cd", "fc"), // 1 lm/ft² = 1/0.3048² lx
        .. Of(Quantity.CarbonDioxide, 1, 0, "[ppm]", "ppm", "umol/mol"),
        .. Of(Quantity.Speed, 1, 0, "m/s"),
        .. Of(Quantity.Speed, 1 / 3.6, 0, "km/h"),
        .. Of(Quantity.Speed, 0.44704, 0, "[mi_i]/h", "mph"),
        .. Of(Quantity.Speed, 0.3048 / 60, 0, "[ft_i]/min", "ft/min"),
        .. Of(Quantity.Speed, 1852.0 / 3600, 0, "[kn_i]", "kn", "kt"),
        .. Of(Quantity.Angle, 1, 0, "deg", "°"),
        .. Of(Quantity.Percent, 1, 0, "%", "percent"),
        .. Of(Quantity.Percent, 100, 0, "1"),
        .. Of(Quantity.OnOff, 1, 0, "1", ""),
        .. Of(Quantity.Volume, 1, 0, "L", "l", "litre", "litres", "liter", "liters"),
        .. Of(Quantity.Volume, 0.001, 0, "mL", "ml"),
        .. Of(Quantity.Volume, 1000, 0, "m3", "m³"),
        .. Of(Quantity.Volume, 3.785411784, 0, "[gal_us]", "gal", "gal_us", "gallon", "gallons"),
        .. Of(Quantity.Volume, 4.54609, 0, "[gal_br]"),
        .. Of(Quantity.Volume, 0.0295735295625, 0, "[foz_us]", "floz"),
        .. Of(Quantity.WaterDepth, 1, 0, "mm", "L/m2", "L/m²"),
        .. Of(Quantity.WaterDepth, 25.4, 0, "[in_i]", "in"),
        .. Of(Quantity.VapourDensity, 1, 0, "g/m3", "g/m³"),
        .. Of(Quantity.Length, 1, 0, "mm"),
        .. Of(Quantity.Length, 10, 0, "cm"),
        .. Of(Quantity.Length, 1000, 0, "m"),
        .. Of(Quantity.Length, 25.4, 0, "[in_i]", "in"),
        .. Of(Quantity.Duration, 1, 0, "min", "minutes"),
        .. Of(Quantity.Duration, 1.0 / 60, 0, "s"),
        .. Of(Quantity.Duration, 60, 0, "h"),
        .. Of(Quantity.Mass, 1, 0, "g"),
        .. Of(Quantity.Mass, 1000, 0, "kg"),
        .. Of(Quantity.Mass, 28.349523125, 0, "[oz_av]", "oz"),
    ];

    private static readonly FrozenDictionary<(Quantity, string), Unit> ByCode = All.ToFrozenDictionary(u => (u.Quantity, u.Code));

    /// <summary>Finds the unit of a quantity by code or alias, case-sensitive.</summary>
    public static bool TryGet(Quantity quantity, string code, out Unit unit) => ByCode.TryGetValue((quantity, code), out unit);

    /// <summary>The unit in which the store and the science hold a quantity.</summary>
    public static Unit SiOf(Quantity quantity) => All.First(u => u.Quantity == quantity && u.Factor == 1 && u.Offset == 0);

    /// <summary>Codes that a quantity accepts, for messages.</summary>
    public static IEnumerable<string> CodesOf(Quantity quantity) => All.Where(u => u.Quantity == quantity && u.Code.Length > 0).Select(u => u.Code);

    private static IEnumerable<Unit> Of(Quantity quantity, double factor, double offset, params string[] codes)
        => codes.Select(code => new Unit(code, quantity, factor, offset));
}
