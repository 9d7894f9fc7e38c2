using System.Collections.Frozen;
using System.Text;

namespace ClimateLens.Logs.Times;

/// <summary>
/// Names of months and weekdays in English, Dutch, German, Danish, French, Spanish and Italian, whole or cut short, in any case, with
/// or without accents and a point behind. A short form is any beginning that means one month only: "jui" could be June or July and is none.
/// </summary>
internal static class CalendarNames
{
    private const int ShortestMonth = 3;
    private const int ShortestWeekday = 2;
    private const int LongestName = 24;

    // Accents of U+00E0 to U+00FF taken off.
    private const string WithoutAccents = "aaaaaaaceeeeiiiidnooooo/ouuuuypy";

    private static readonly string[] MonthNames =
    [
        "january januari januar janner jaenner janvier enero gennaio",
        "february februari februar feber fevrier febrero febbraio",
        "march maart marz maerz mrz mrt marts mars marzo",
        "april avril abril aprile",
        "may mei mai maj mayo maggio",
        "june juni juin junio giugno",
        "july juli juillet julio luglio",
        "august augustus aout agosto",
        "september septembre septiembre setiembre settembre",
        "october oktober octobre octubre ottobre",
        "november novembre noviembre",
        "december dezember decembre diciembre dicembre",
    ];

    private static readonly string[] WeekdayNames =
    [
        "monday maandag montag mandag lundi lunes lunedi",
        "tuesday dinsdag dienstag tirsdag mardi martes martedi",
        "wednesday woensdag mittwoch onsdag mercredi miercoles mercoledi",
        "thursday donderdag donnerstag torsdag jeudi jueves giovedi",
        "friday vrijdag freitag fredag vendredi viernes venerdi",
        "saturday zaterdag samstag sonnabend lordag loerdag samedi sabado sabato",
        "sunday zondag sonntag sondag soendag dimanche domingo domenica",
    ];

    private static readonly FrozenDictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> Months = ByBeginning(MonthNames, ShortestMonth)
        .Where(pair => pair.Value.Distinct().Count() == 1)
        .ToFrozenDictionary(pair => pair.Key, pair => pair.Value[0], StringComparer.Ordinal)
        .GetAlternateLookup<ReadOnlySpan<char>>();

    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> Weekdays = ByBeginning(WeekdayNames, ShortestWeekday)
        .Select(pair => pair.Key)
        .ToFrozenSet(StringComparer.Ordinal)
        .GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Reads a month's name and the point of a short form.</summary>
    /// <param name="scan">The text.</param>
    /// <param name="beforePoint">Whether a point has to follow, as in 13.okt.2025; then only a second one belongs to the name.</param>
    /// <param name="month">1 to 12.</param>
    public static bool TryMonth(ref DigitScan scan, bool beforePoint, out int month)
    {
        Span<char> name = stackalloc char[LongestName];
        month = 0;
        return TryName(ref scan, beforePoint, name, out int length) && Months.TryGetValue(name[..length], out month);
    }

    /// <summary>Reads past a weekday's name and its point, as <see cref="TryMonth"/> does.</summary>
    public static bool TryWeekday(ref DigitScan scan, bool beforePoint)
    {
        Span<char> name = stackalloc char[LongestName];
        return TryName(ref scan, beforePoint, name, out int length) && Weekdays.Contains(name[..length]);
    }

    /// <summary>Reads a run of letters, in lower case and without accents.</summary>
    private static bool TryName(ref DigitScan scan, bool beforePoint, scoped Span<char> name, out int length)
    {
        length = 0;
        ReadOnlySpan<byte> rest = scan.Rest;
        int read = 0;
        while (read < rest.Length && Rune.DecodeFromUtf8(rest[read..], out Rune rune, out int bytes) == System.Buffers.OperationStatus.Done && Folded(rune) is char letter)
        {
            read += bytes;
            if (letter != '\0')
            {
                if (length == name.Length)
                {
                    return false;
                }

                name[length++] = letter;
            }
        }

        scan.Skip(read);
        if (length > 0 && (!beforePoint || scan.Rest.StartsWith(".."u8)))
        {
            _ = scan.Mark((byte)'.');
        }

        return length > 0;
    }

    /// <summary>The letter a to z under a letter; '\0' for an accent that stands by itself; null for what is no letter.</summary>
    private static char? Folded(Rune rune) => Rune.ToLowerInvariant(rune).Value switch
    {
        >= 'a' and <= 'z' and int plain => (char)plain,
        >= 0xE0 and <= 0xFF and not 0xF7 and int accented => WithoutAccents[accented - 0xE0],
        >= 0x300 and <= 0x36F => '\0',
        _ => null,
    };

    private static Dictionary<string, List<int>> ByBeginning(string[] names, int shortest)
    {
        var beginnings = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        for (int number = 1; number <= names.Length; number++)
        {
            foreach (string name in names[number - 1].Split(' '))
            {
                for (int length = shortest; length <= name.Length; length++)
                {
                    if (!beginnings.TryGetValue(name[..length], out List<int>? meant))
                    {
                        beginnings.Add(name[..length], meant = []);
                    }

                    meant.Add(number);
                }
            }
        }

        return beginnings;
    }
}
