using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace ClimateLens.Nursery.Channels;

/// <summary>A unit that a file may use: SI value = value · Factor + Offset.</summary>
/// <param name="Code">UCUM code or everyday alias.</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="Factor">Multiplier to the unit of <see cref="Quantity"/>.</param>
/// <param name="Offset">Added after the multiplier.</param>
public sealed record Unit(string Code, Quantity Quantity, double Factor, double Offset = 0)
{
    /// <summary>Converts a value of this unit to the unit of its quantity; NaN stays NaN.</summary>
    public double ToSi(double value) => (value * Factor) + Offset;

    /// <summary>Converts a value in the unit of the quantity to this unit; NaN stays NaN.</summary>
    public double FromSi(double value) => (value - Offset) / Factor;

    /// <summary>Whether both turn a value into the same one.</summary>
    public bool IsLike(Unit other) => Quantity == other.Quantity && Factor == other.Factor && Offset == other.Offset;
}

/// <summary>
/// Units by quantity: UCUM 2.2 codes with everyday aliases. Factors are exact by definition
/// ([SP811] appendix B) except those of mercury, which are conventional. The plain words gal, gallon and floz are US measures.
/// A code is found as written, else by its <see cref="UnitText.Key"/>: capitals, blanks, raised digits and the kind of the micro sign
/// do not count, as long as only one unit of the quantity is meant.
/// </summary>
public static class UnitCatalogue
{
    private static readonly string[] Celsius = ["Cel", "degC", "°C", "C", "celsius", "celcius", "centigrade", "oC"];
    private static readonly string[] Fahrenheit = ["[degF]", "degF", "°F", "F", "fahrenheit", "oF"];
    private static readonly string[] Share = ["%", "percent", "pct", "procent", "prozent"];

    /// <summary>All units.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        .. Of(Quantity.Temperature, 1, 0, Celsius),
        .. Of(Quantity.Temperature, 5.0 / 9, -160.0 / 9, Fahrenheit),
        .. Of(Quantity.Temperature, 1, -273.15, "K", "kelvin"),
        .. Of(Quantity.TemperatureDifference, 1, 0, ["K", "kelvin", .. Celsius]),
        .. Of(Quantity.TemperatureDifference, 5.0 / 9, 0, Fahrenheit),
        .. Of(Quantity.RelativeHumidity, 1, 0, [.. Share, "%RH", "RH%", "%rF", "%RV", "%HR", "%UR"]),
        .. Of(Quantity.RelativeHumidity, 100, 0, "1", "fraction"),
        .. Of(Quantity.Pressure, 1, 0, "kPa"),
        .. Of(Quantity.Pressure, 0.001, 0, "Pa"),
        .. Of(Quantity.Pressure, 0.1, 0, "hPa", "mbar", "mb", "millibar"),
        .. Of(Quantity.Pressure, 100, 0, "bar"),
        .. Of(Quantity.Pressure, 3.386389, 0, "[in_i'Hg]", "inHg"), // conventional inch of mercury, [SP811]
        .. Of(Quantity.Pressure, 0.133322387415, 0, "mm[Hg]", "mmHg", "torr"), // conventional millimetre of mercury, [SP811]
        .. Of(Quantity.Pressure, 4.4482216152605 / 0.64516, 0, "[psi]", "psi"), // 1 lbf a square inch
        .. Of(Quantity.Irradiance, 1, 0, "W/m2", "W.m-2", "Wm-2", "W/qm", "W/sqm", "J/m2/s", "J/s/m2"),
        .. Of(Quantity.Irradiance, 1000, 0, "kW/m2"),
        .. Of(Quantity.Irradiance, 10, 0, "mW/cm2"),
        .. Of(Quantity.Irradiance, 1e4 / 3600, 0, "J/cm2/h"),
        .. Of(Quantity.Irradiance, 1e4 / 60, 0, "J/cm2/min"),
        .. Of(Quantity.Irradiance, 1e3 / 3600, 0, "kJ/m2/h"),
        .. Of(Quantity.RadiantExposure, 1, 0, "J/cm2"),
        .. Of(Quantity.RadiantExposure, 1e-4, 0, "J/m2"),
        .. Of(Quantity.RadiantExposure, 0.1, 0, "kJ/m2"),
        .. Of(Quantity.RadiantExposure, 100, 0, "MJ/m2"),
        .. Of(Quantity.RadiantExposure, 0.36, 0, "W.h/m2", "Wh/m2"),
        .. Of(Quantity.RadiantExposure, 360, 0, "kW.h/m2", "kWh/m2"),
        .. Of(Quantity.PhotonFlux, 1, 0, "umol/m2/s", "umol.m-2.s-1", "umolm-2s-1", "umol/(m2.s)", "umol/(m2s)", "umol/m2s", "umol/s/m2", "umol/s.m2", "umol", "uE/m2/s"),
        .. Of(Quantity.Illuminance, 1, 0, "lx", "lux"),
        .. Of(Quantity.Illuminance, 1000, 0, "klx", "klux"),
        .. Of(Quantity.Illuminance, 10.763910416709722, 0, "[ft_i]-cd", "fc", "ftcd", "footcandle", "footcandles"), // 1 lm/ft² = 1/0.3048² lx
        .. Of(Quantity.CarbonDioxide, 1, 0, "[ppm]", "ppm", "umol/mol", "ppmv", "vpm"),
        .. Of(Quantity.CarbonDioxide, 1e4, 0, "%"),
        .. Of(Quantity.Speed, 1, 0, "m/s", "m.s-1", "ms-1", "mps"),
        .. Of(Quantity.Speed, 1 / 3.6, 0, "km/h", "kmh", "kph", "km/u"),
        .. Of(Quantity.Speed, 0.44704, 0, "[mi_i]/h", "mph"),
        .. Of(Quantity.Speed, 0.3048 / 60, 0, "[ft_i]/min", "ft/min", "fpm"),
        .. Of(Quantity.Speed, 1852.0 / 3600, 0, "[kn_i]", "kn", "kt", "knots"),
        .. Of(Quantity.Angle, 1, 0, "deg", "°", "degrees"),
        .. Of(Quantity.Percent, 1, 0, Share),
        .. Of(Quantity.Percent, 100, 0, "1", "fraction"),
        .. Of(Quantity.OnOff, 1, 0, "1", ""),
        .. Of(Quantity.OnOff, 0.01, 0, Share),
        .. Of(Quantity.Volume, 1, 0, "L", "l", "litre", "litres", "liter", "liters", "dm3"),
        .. Of(Quantity.Volume, 0.001, 0, "mL", "ml", "cm3", "cc"),
        .. Of(Quantity.Volume, 100, 0, "hL"),
        .. Of(Quantity.Volume, 1000, 0, "m3"),
        .. Of(Quantity.Volume, 3.785411784, 0, "[gal_us]", "gal", "gal_us", "gallon", "gallons"),
        .. Of(Quantity.Volume, 4.54609, 0, "[gal_br]"),
        .. Of(Quantity.Volume, 0.0295735295625, 0, "[foz_us]", "floz"),
        .. Of(Quantity.WaterDepth, 1, 0, "mm", "L/m2", "l/qm", "L/sqm"),
        .. Of(Quantity.WaterDepth, 10, 0, "cm"),
        .. Of(Quantity.WaterDepth, 25.4, 0, "[in_i]", "in", "inch", "inches"),
        .. Of(Quantity.VapourDensity, 1, 0, "g/m3", "g.m-3", "gm-3", "mg/L"),
        .. Of(Quantity.VapourDensity, 1000, 0, "kg/m3"),
        .. Of(Quantity.Length, 1, 0, "mm"),
        .. Of(Quantity.Length, 10, 0, "cm"),
        .. Of(Quantity.Length, 1000, 0, "m"),
        .. Of(Quantity.Length, 25.4, 0, "[in_i]", "in", "inch", "inches"),
        .. Of(Quantity.Duration, 1, 0, "min", "mins", "minute", "minutes"),
        .. Of(Quantity.Duration, 1.0 / 60, 0, "s", "sec", "second", "seconds"),
        .. Of(Quantity.Duration, 60, 0, "h", "hr", "hour", "hours"),
        .. Of(Quantity.Mass, 1, 0, "g", "gram", "grams"),
        .. Of(Quantity.Mass, 1000, 0, "kg"),
        .. Of(Quantity.Mass, 28.349523125, 0, "[oz_av]", "oz"),
    ];

    private static readonly FrozenDictionary<string, Unit> ByCode = All.ToFrozenDictionary(u => Of(u.Quantity, u.Code));

    // A key that would fit two units of a quantity fits none.
    private static readonly FrozenDictionary<string, Unit> ByKey = All
        .GroupBy(u => Of(u.Quantity, UnitText.Key(u.Code)))
        .Where(same => same.All(u => u.IsLike(same.First())))
        .ToFrozenDictionary(same => same.Key, same => same.First());

    /// <summary>Finds the unit of a quantity by code or alias, as written or else by its key.</summary>
    public static bool TryGet(Quantity quantity, string code, [NotNullWhen(true)] out Unit? unit)
        => ByCode.TryGetValue(Of(quantity, code), out unit) || (code.Length > 0 && ByKey.TryGetValue(Of(quantity, UnitText.Key(code)), out unit));

    /// <summary>The unit in which the store and the science hold a quantity.</summary>
    public static Unit SiOf(Quantity quantity) => All.First(u => u.Quantity == quantity && u.Factor == 1 && u.Offset == 0);

    /// <summary>Codes that a quantity accepts, one of each key, for messages.</summary>
    public static IEnumerable<string> CodesOf(Quantity quantity)
        => All.Where(u => u.Quantity == quantity && u.Code.Length > 0).DistinctBy(u => UnitText.Key(u.Code)).Select(u => u.Code);

    /// <summary>One unit of each kind that a quantity has, by its first code.</summary>
    public static IEnumerable<Unit> KindsOf(Quantity quantity)
        => All.Where(u => u.Quantity == quantity).DistinctBy(u => (u.Factor, u.Offset));

    private static string Of(Quantity quantity, string code) => $"{quantity} {code}";

    private static IEnumerable<Unit> Of(Quantity quantity, double factor, double offset, params string[] codes)
        => codes.Select(code => new Unit(code, quantity, factor, offset));
}
