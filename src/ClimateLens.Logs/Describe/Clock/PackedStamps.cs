using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>Formats of stamps that are one number: packed digits, days of a spreadsheet, seconds since 1970.</summary>
internal static class PackedStamps
{
    /// <summary>The formats that a run of digits, or a number with decimals, may have.</summary>
    public static IEnumerable<StampFormat> Of(IReadOnlyList<StampToken> tokens)
    {
        bool whole = tokens.Count == 1 && tokens[0].Digits > 0;
        bool split = tokens.Count == 3 && tokens[0].Digits > 0 && tokens[2].Digits > 0 && (tokens[1].Is('.') || tokens[1].Is(','));
        if (!whole && !split)
        {
            return [];
        }

        return tokens[0].Digits switch
        {
            5 => [new StampFormat(StampWords.Excel1900, "serial", StampHolds.Both)],
            9 => [new StampFormat(StampWords.UnixSeconds, "unix", StampHolds.Both)],
            10 => [new StampFormat(StampWords.UnixSeconds, "unix", StampHolds.Both), .. whole ? Dates(StampHolds.Both, "yyMMddHHmm", "ddMMyyHHmm", "MMddyyHHmm", "yyyyMMddHH") : []],
            13 => [new StampFormat(StampWords.UnixMilliseconds, "unixMs", StampHolds.Both)],
            16 => [new StampFormat(StampWords.UnixMicroseconds, "unixUs", StampHolds.Both)],
            7 when whole => Dates(StampHolds.Date, "yyyyDDD"),
            8 when whole => Dates(StampHolds.Date, "yyyyMMdd", "ddMMyyyy", "MMddyyyy"),
            12 when whole => Dates(StampHolds.Both, "yyyyMMddHHmm", "ddMMyyyyHHmm", "MMddyyyyHHmm", "yyMMddHHmmss"),
            14 when whole => Dates(StampHolds.Both, "yyyyMMddHHmmss", "ddMMyyyyHHmmss", "MMddyyyyHHmmss"),
            _ => [],
        };
    }

    private static StampFormat[] Dates(StampHolds holds, params string[] patterns)
        => [.. patterns.Select(p => new StampFormat(p, string.Concat(p.Where(c => c is 'y' or 'M' or 'd' or 'D').Distinct()), holds))];
}
