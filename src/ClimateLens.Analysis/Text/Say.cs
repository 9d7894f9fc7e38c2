using System.Globalization;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Text;

/// <summary>Numbers and times in sentences, in the language of the moment: local time of the nursery, no more digits than the data carry.</summary>
internal static class Say
{
    /// <summary>A number as it stands.</summary>
    public static string Number(double value) => Language.Current.Number(value.ToString("0.######", CultureInfo.InvariantCulture)).Replace('-', '\u2212');

    /// <summary>A number with fixed decimals.</summary>
    public static string Number(double value, int decimals)
        => Language.Current.Number(Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)).Replace('-', '\u2212');

    /// <summary>"1 step", "2 steps".</summary>
    public static string Count(int count, string noun)
        => Phrase.Count(count, noun, noun + "s");

    /// <summary>A length of time in hours, to a tenth under ten hours.</summary>
    public static string Hours(Duration length)
        => length.TotalHours >= 9.95 ? $"{Number(length.TotalHours, 0)} h" : $"{Number(Math.Round(length.TotalHours, 1))} h";

    /// <summary>"Mon 13 Oct 16:10".</summary>
    public static string Time(Instant instant, DateTimeZone zone) => TimeWords.Moment(instant.InZone(zone).ToOffsetDateTime());

    /// <summary>"Mon 13 Oct".</summary>
    public static string Day(LocalDate date) => TimeWords.Day(date);

    /// <summary>"16:10".</summary>
    public static string Clock(Instant instant, DateTimeZone zone) => TimeWords.Clock(instant.InZone(zone).ToOffsetDateTime());

    /// <summary>A label inside a sentence: "Relative humidity, A" as "relative humidity, A", while "VPD" and "CO2" stay.</summary>
    public static string InSentence(string label)
        => label.Length > 1 && !char.IsUpper(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;

    /// <summary>"a, b and c".</summary>
    public static string List(IReadOnlyList<string> items) => items.Count switch
    {
        0 => "",
        1 => items[0],
        _ => string.Join(", ", items.Take(items.Count - 1)) + Phrase.Of(" and ") + items[^1],
    };
}
