using System.Globalization;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Reports.Units;

/// <summary>
/// Turns SI numbers into what people read, in metric or US units: the only place that converts for display.
/// A temperature converts with its zero shift, a difference of temperatures by the factor alone. VPD stays in kPa and
/// absolute humidity in g/m³ in both systems: growers on both sides of the ocean use them.
/// </summary>
/// <param name="system">Units to read.</param>
public sealed class DisplayUnits(UnitSystem system)
{
    /// <summary>What stands where a number is not known.</summary>
    public static string NotKnown => Phrase.Of("not known");

    private readonly Unit _temperature = Get(Quantity.Temperature, system == UnitSystem.Us ? "[degF]" : "Cel");
    private readonly Unit _difference = Get(Quantity.TemperatureDifference, system == UnitSystem.Us ? "[degF]" : "K");
    private readonly Unit _inch = Get(Quantity.Length, "[in_i]");
    private readonly Unit _volume = Get(Quantity.Volume, system == UnitSystem.Us ? "[gal_us]" : "L");

    /// <summary>The system.</summary>
    public UnitSystem System => system;

    /// <summary>Symbol of temperatures: °C or °F.</summary>
    public string TemperatureSymbol => system == UnitSystem.Us ? "°F" : UnitSymbols.Of(Quantity.Temperature);

    /// <summary>Symbol of temperature differences: K or °F.</summary>
    public string DifferenceSymbol => system == UnitSystem.Us ? "°F" : UnitSymbols.Of(Quantity.TemperatureDifference);

    /// <summary>Symbol of amounts of water: L or US gal.</summary>
    public string VolumeSymbol => system == UnitSystem.Us ? Phrase.Of("US gal") : UnitSymbols.Of(Quantity.Volume);

    /// <summary>A temperature as a number of this system, or null. [°C] in, [°C] or [°F] out.</summary>
    public double? TemperatureNumber(double? celsius) => celsius is { } c && double.IsFinite(c) ? _temperature.FromSi(c) : null;

    /// <summary>A temperature difference as a number of this system, without any zero shift. [K] in, [K] or [°F] out.</summary>
    public double? DifferenceNumber(double? kelvin) => kelvin is { } k && double.IsFinite(k) ? _difference.FromSi(k) : null;

    /// <summary>A temperature with its unit, one decimal.</summary>
    public string Temperature(double? celsius) => With(TemperatureNumber(celsius), 1, TemperatureSymbol);

    /// <summary>A temperature difference with its unit, one decimal.</summary>
    public string Difference(double? kelvin) => With(DifferenceNumber(kelvin), 1, DifferenceSymbol);

    /// <summary>An amount of water with its unit. [L] in.</summary>
    public string Volume(double? litres)
        => With(litres is { } l && double.IsFinite(l) ? _volume.FromSi(l) : null, system == UnitSystem.Us ? 1 : 0, VolumeSymbol);

    /// <summary>Relative humidity with its unit, no decimals. [%]</summary>
    public static string Humidity(double? percent) => With(percent, 0, UnitSymbols.Of(Quantity.RelativeHumidity));

    /// <summary>VPD with its unit, two decimals. [kPa]</summary>
    public static string Vpd(double? kiloPascal) => With(kiloPascal, 2, UnitSymbols.Of(Quantity.Pressure));

    /// <summary>Absolute humidity with its unit, one decimal. [g/m³]</summary>
    public static string VapourDensity(double? gramPerCubicMetre) => With(gramPerCubicMetre, 1, UnitSymbols.Of(Quantity.VapourDensity));

    /// <summary>Width of a plant with its unit. [cm] in.</summary>
    public string PlantWidth(double centimetre) => system == UnitSystem.Us ? With(_inch.FromSi(10 * centimetre), 1, "in") : With(centimetre, 1, "cm");

    /// <summary>A number with a fixed number of decimals, or "not known"; never "-0".</summary>
    public static string Number(double? value, int decimals)
    {
        if (value is not { } known || !double.IsFinite(known))
        {
            return NotKnown;
        }

        double rounded = Math.Round(known, decimals, MidpointRounding.AwayFromZero) + 0.0;
        return Language.Current.Number((rounded == 0 ? 0 : rounded).ToString("F" + decimals, CultureInfo.InvariantCulture)).Replace('-', '−');
    }

    /// <summary>
    /// A threshold of the review in this system, for example "1.0 K"; units that have no US form stay as they are.
    /// </summary>
    /// <param name="value">Value in <paramref name="ucum"/>.</param>
    /// <param name="ucum">UCUM code.</param>
    public string Threshold(double value, string ucum) => ucum switch
    {
        "Cel" => Temperature(value),
        "K" => Difference(value),
        "L" => Volume(value),
        "1" or "" => Plain(value),
        _ => $"{Plain(value)}\u00A0{ucum}",
    };

    private static string Plain(double value) => Language.Current.Number(value.ToString("0.####", CultureInfo.InvariantCulture)).Replace('-', '−');

    // A no-break space: a number and its unit stay on one line.
    private static string With(double? value, int decimals, string symbol)
    {
        string number = Number(value, decimals);
        return number == NotKnown ? number : $"{number}\u00A0{symbol}";
    }

    private static Unit Get(Quantity quantity, string code)
        => UnitCatalogue.TryGet(quantity, code, out Unit? unit) ? unit : throw new InvalidOperationException($"The unit catalogue lacks {code} of {quantity}.");
}
