using System.Globalization;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>Small pieces of wording that several cells share.</summary>
internal static class Words
{
    /// <summary>"1 watering", "3 waterings".</summary>
    public static string Count(int count, string one, string many) => Phrase.Count(count, one, many);

    /// <summary>A whole number.</summary>
    public static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>"33 to 52", whole numbers.</summary>
    public static string Range(Estimate estimate) => Phrase.Of($"{DisplayUnits.Number(estimate.Low, 0)} to {DisplayUnits.Number(estimate.High, 0)}");

    /// <summary>"41 (33 to 52)".</summary>
    public static string WithRange(Estimate estimate) => $"{DisplayUnits.Number(estimate.Value, 0)} ({Range(estimate)})";

    /// <summary>"yes", "no" or "not known".</summary>
    public static string YesNo(bool? answer) => answer switch { true => Phrase.Of("yes"), false => Phrase.Of("no"), null => DisplayUnits.NotKnown };

    /// <summary>A probability as a whole per cent.</summary>
    public static string Share(double? share)
        => share is { } known && double.IsFinite(known) ? $"{DisplayUnits.Number(known * 100, 0)}\u00A0%" : DisplayUnits.NotKnown;

    /// <summary>A watering method as growers say it.</summary>
    public static string Method(WateringMethod? method) => method switch
    {
        WateringMethod.OverheadBoom => Phrase.Of("overhead boom"),
        WateringMethod.Sprinkler => Phrase.Of("sprinkler"),
        WateringMethod.Hose => Phrase.Of("hose"),
        WateringMethod.Drip => Phrase.Of("drip"),
        WateringMethod.EbbAndFlow => Phrase.Of("ebb and flow"),
        WateringMethod.FloodFloor => Phrase.Of("flood floor"),
        WateringMethod.Fog => Phrase.Of("fog"),
        _ => DisplayUnits.NotKnown,
    };

    /// <summary>"a, b and c"; at least one.</summary>
    public static string List(string[] parts) => parts.Length == 1 ? parts[0] : string.Join(", ", parts[..^1]) + Phrase.Of(" and ") + parts[^1];

    /// <summary>The first letter in upper case.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>"noReadings" as "no readings": a code of the review in words.</summary>
    public static string Spaced(string camelCase)
        => Phrase.Of(string.Concat(camelCase.Select((c, i) => char.IsUpper(c) && i > 0 ? " " + char.ToLowerInvariant(c) : c.ToString())));
}
