using System.Globalization;
using System.Text.RegularExpressions;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>Finds the zone that a header or a title names: "Date Time, GMT+02:00", "Time (UTC)", "Time zone: UTC+1".</summary>
internal static partial class ZoneWords
{
    private const int MostHours = 14; // the easternmost zone of the IANA list

    /// <summary>The zone that the header of a time names, <c>UTC</c> or an offset such as <c>+02:00</c>; null where it names none or is of a local time.</summary>
    public static string? Of(string header)
    {
        HeaderText words = HeaderText.Of(header);
        return words.Has(Idea.Local) ? null : OffsetIn(header) ?? (words.Has(Idea.Utc) && !Offset().IsMatch(header) ? "UTC" : null);
    }

    /// <summary>The same of a line of titles, which has to speak of times.</summary>
    public static string? OfTitle(string title) => HeaderText.Of(title).Has(Idea.Time) ? Of(title) : null;

    private static string? OffsetIn(string text)
    {
        if (Offset().Match(text) is not { Success: true } found)
        {
            return null;
        }

        int hours = int.Parse(found.Groups["h"].ValueSpan, CultureInfo.InvariantCulture);
        string minutes = found.Groups["m"].Success ? found.Groups["m"].Value : "00";
        return hours > MostHours ? null
            : hours == 0 && minutes == "00" ? "UTC"
            : string.Create(CultureInfo.InvariantCulture, $"{(found.Groups["sign"].Value == "+" ? '+' : '-')}{hours:00}:{minutes}");
    }

    [GeneratedRegex(@"\b(?:UTC|GMT)\s*(?<sign>[+\-−–])\s*(?<h>\d{1,2})(?::?(?<m>[0-5]\d))?(?!\d)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Offset();
}
