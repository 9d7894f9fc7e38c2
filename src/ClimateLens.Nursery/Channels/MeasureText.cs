using System.Globalization;

namespace ClimateLens.Nursery.Channels;

/// <summary>Amounts as people write them on a command line: a number with a decimal point and a unit, such as <c>120 mL</c>, <c>4 fl oz</c>, <c>2 L/h</c>, <c>0.5 gph</c> or <c>50 ppm</c>.</summary>
public static class MeasureText
{
    private const double MinutesAnHour = 60;

    /// <summary>A volume. [mL]</summary>
    public static bool TryVolume(string text, out double millilitres) => TryRead(text, unit => Volume(unit) is { } litres ? 1000 * litres : null, out millilitres);

    /// <summary>A flow. [L/h]</summary>
    public static bool TryFlow(string text, out double litresAnHour) => TryRead(text, Flow, out litresAnHour);

    /// <summary>A concentration of active ingredient: mg/L, g/L or ppm of mass in volume. [mg/L]</summary>
    public static bool TryConcentration(string text, out double milligramsALitre)
        => TryRead(text, unit => unit.ToLowerInvariant() switch { "mg/l" or "ppm" => 1, "g/l" => 1000, _ => null }, out milligramsALitre);

    /// <summary>Amounts without a unit, parted by commas or blanks.</summary>
    public static bool TryAmounts(string text, out double[] amounts)
    {
        ArgumentNullException.ThrowIfNull(text);
        double?[] read = [.. text.Split([',', ' ', ';'], StringSplitOptions.RemoveEmptyEntries).Select(Number)];
        amounts = [.. read.Select(r => r ?? double.NaN)];
        return read.Length > 0 && read.All(r => r is >= 0);
    }

    private static bool TryRead(string text, Func<string, double?> factorOf, out double value)
    {
        ArgumentNullException.ThrowIfNull(text);
        string trimmed = text.Trim();
        int digits = 0;
        while (digits < trimmed.Length && (char.IsAsciiDigit(trimmed[digits]) || trimmed[digits] == '.'))
        {
            digits++;
        }

        double? factor = factorOf(trimmed[digits..].Trim()), number = Number(trimmed[..digits]);
        value = factor * number ?? double.NaN;
        return double.IsFinite(value) && value > 0;
    }

    private static double? Number(string digits)
        => double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : null;

    /// <summary>Litres in a unit of volume; null for none of them.</summary>
    private static double? Volume(string unit)
    {
        string code = unit.Equals("fl oz", StringComparison.OrdinalIgnoreCase) || unit.Equals("floz", StringComparison.OrdinalIgnoreCase) ? "[foz_us]" : unit;
        return UnitCatalogue.TryGet(Quantity.Volume, code, out Unit? known) ? known.ToSi(1) : null;
    }

    private static double? Flow(string unit) => unit.ToLowerInvariant() switch
    {
        "l/h" or "lph" => 1,
        "ml/min" => MinutesAnHour / 1000,
        "l/min" or "lpm" => MinutesAnHour,
        "gph" or "gal/h" => Volume("[gal_us]"),
        "gpm" or "gal/min" => MinutesAnHour * Volume("[gal_us]"),
        _ => null,
    };
}
