using System.Globalization;
using ClimateLens.Analysis.Comparison;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Comparing;

/// <summary>Names, units and verdicts of a comparison in plain words.</summary>
internal static class CompareWords
{
    /// <summary>A quantity.</summary>
    public static string Name(string name) => name switch
    {
        "airTemperatureC" => Phrase.Of("Air temperature"),
        "relativeHumidityPct" => Phrase.Of("Relative humidity"),
        "vpdKPa" => Phrase.Of("VPD"),
        "absoluteHumidityGm3" => Phrase.Of("Water in the air"),
        "dewPointMarginK" => Phrase.Of("Dew-point margin"),
        _ => name,
    };

    /// <summary>A name inside a sentence.</summary>
    public static string Lower(string name) => name.Length == 0 ? name : char.ToLowerInvariant(name[0]) + name[1..];

    /// <summary>A quantity within a sentence.</summary>
    public static string InSentence(string name) => name == "vpdKPa" ? Phrase.Of("VPD") : Name(name).ToLowerInvariant();

    /// <summary>A value of a quantity, with its unit in the reader's system.</summary>
    public static string Value(string name, double value, DisplayUnits units) => name switch
    {
        "airTemperatureC" => units.Temperature(value),
        "dewPointMarginK" => units.Difference(value),
        "relativeHumidityPct" => $"{DisplayUnits.Number(value, 1)}\u00A0%",
        "vpdKPa" => DisplayUnits.Vpd(value),
        _ => DisplayUnits.VapourDensity(value),
    };

    /// <summary>A difference of a quantity with its range.</summary>
    public static string Difference(MeanDifference d, DisplayUnits units)
    {
        string At(double v) => d.Name is "airTemperatureC" ? units.Difference(v) : Value(d.Name, v, units);
        return d.Difference.Low == d.Difference.High ? Phrase.Of($"{At(d.Difference.Value)} (too few days for a range)") : Phrase.Of($"{At(d.Difference.Value)} ({At(d.Difference.Low)} to {At(d.Difference.High)})");
    }

    /// <summary>A verdict.</summary>
    public static string Verdict(string verdict) => verdict switch
    {
        "none" => Phrase.Of("no difference beyond chance"),
        "withinSensors" => Phrase.Of("beyond chance, but two such sensors may part by as much"),
        "maybeOffset" => Phrase.Of("beyond chance, but an offset between the sensors could make it"),
        "beyondSensors" => Phrase.Of("beyond chance and beyond what both sensors may be off"),
        _ => DisplayUnits.NotKnown,
    };

    /// <summary>A number with its sign.</summary>
    public static string Signed(double value, int decimals) => Math.Round(value, decimals) == 0 ? "0" : (value > 0 ? "+" : "") + Language.Current.Number(value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)).Replace('-', '\u2212');
}
