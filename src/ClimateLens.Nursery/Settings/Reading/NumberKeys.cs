using System.Globalization;
using System.Text.RegularExpressions;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>Keys that hold a number or true and false.</summary>
internal static partial class NumberKeys
{
    /// <summary>A number within limits, both included; null when it is left out or wrong.</summary>
    /// <param name="reader">The table.</param>
    /// <param name="key">The key.</param>
    /// <param name="low">Lowest that is possible.</param>
    /// <param name="high">Highest that is possible.</param>
    /// <param name="unit">In words, for messages.</param>
    /// <param name="example">Shown when the key is missing; null where it may be left out.</param>
    public static double? Number(this TableReader reader, string key, double low, double high, string unit, string? example = null)
    {
        if (reader.Find(key) is not { } entry)
        {
            if (example is not null)
            {
                reader.Missing(key, example);
            }

            return null;
        }

        if (Value(entry.Value) is not { } number)
        {
            string? digits = entry.Value is TomlScalar { Value: string text } && Digits().Match(text) is { Success: true } match ? match.Value.Replace(',', '.') : null;
            string mend = digits is not null ? $"write the number alone: {key} = {digits}" : $"write for example {key} = {example ?? Show(low > 0 ? low : high)}";
            reader.WrongType(key, entry.Value, $"a number ({unit})", mend);
            return null;
        }

        if (!(number >= low && number <= high))
        {
            reader.Faults.Error(FaultCodes.Range, entry.Value.At, $"{key} = {Excerpt.Of(((TomlScalar)entry.Value).Source)}", $"{Show(low)} to {Show(high)} {unit}", "look at the figure and its unit again.");
            return null;
        }

        return number;
    }

    /// <summary>A whole number within limits.</summary>
    public static int? Whole(this TableReader reader, string key, int low, int high, string unit)
    {
        if (reader.Number(key, low, high, unit) is not { } number)
        {
            return null;
        }

        if (number != Math.Floor(number))
        {
            reader.Faults.Error(FaultCodes.Range, reader.PlaceOf(key), $"{key} = {Show(number)}", $"a whole number {unit}", "write it without a fraction.");
            return null;
        }

        return (int)number;
    }

    /// <summary>True or false; null when it is left out or wrong.</summary>
    public static bool? Flag(this TableReader reader, string key)
    {
        switch (reader.Find(key)?.Value)
        {
            case null:
                return null;
            case TomlScalar { Value: bool flag }:
                return flag;
            case { } other:
                reader.WrongType(key, other, "true or false", $"write {key} = true or {key} = false, without quotes.");
                return null;
        }
    }

    /// <summary>The shortest form that reads back alike.</summary>
    public static string Show(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static double? Value(TomlNode node) => node is TomlScalar scalar
        ? scalar.Value switch
        {
            double number => number,
            long whole => whole,
            _ => null,
        }
        : null;

    [GeneratedRegex(@"-?[0-9]+([.,][0-9]+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Digits();
}
