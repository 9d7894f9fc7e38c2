using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ClimateLens.Logs.Times;
using ClimateLens.TestKit;
using CsCheck;

namespace ClimateLens.Logs.Tests;

/// <summary>What is written in any of the formats reads back as the same time.</summary>
public sealed partial class StampRoundTripTests
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    private static readonly Gen<DateTime> Seconds = Gen.DateTime[new DateTime(1975, 1, 1), new DateTime(2068, 12, 31)]
        .Select(t => new DateTime(t.Year, t.Month, t.Day, t.Hour, t.Minute, t.Second, DateTimeKind.Utc));

    // Whole and short names as in the Unicode CLDR ("MMMM", "MMM", "EEEE"), from memory.
    private static readonly (string Months, string Short, string Days)[] Languages =
    [
        ("January February March April May June July August September October November December", "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec", "Sunday Monday Tuesday Wednesday Thursday Friday Saturday"),
        ("januari februari maart april mei juni juli augustus september oktober november december", "jan feb mrt apr mei jun jul aug sep okt nov dec", "zondag maandag dinsdag woensdag donderdag vrijdag zaterdag"),
        ("Januar Februar März April Mai Juni Juli August September Oktober November Dezember", "Jan. Feb. März Apr. Mai Juni Juli Aug. Sept. Okt. Nov. Dez.", "Sonntag Montag Dienstag Mittwoch Donnerstag Freitag Samstag"),
        ("januar februar marts april maj juni juli august september oktober november december", "jan. feb. mar. apr. maj jun. jul. aug. sep. okt. nov. dec.", "søndag mandag tirsdag onsdag torsdag fredag lørdag"),
        ("janvier février mars avril mai juin juillet août septembre octobre novembre décembre", "janv. févr. mars avr. mai juin juil. août sept. oct. nov. déc.", "dimanche lundi mardi mercredi jeudi vendredi samedi"),
        ("enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre", "ene feb mar abr may jun jul ago sept oct nov dic", "domingo lunes martes miércoles jueves viernes sábado"),
        ("gennaio febbraio marzo aprile maggio giugno luglio agosto settembre ottobre novembre dicembre", "gen feb mar apr mag giu lug ago set ott nov dic", "domenica lunedì martedì mercoledì giovedì venerdì sabato"),
    ];

    [Fact]
    public void Names_OfEveryLanguage_ReadBack()
        => Gen.Select(Seconds, Gen.Int[0, 6], Gen.Int[0, 3], Gen.Bool, Gen.Bool).Sample((time, language, casing, whole, accents) =>
        {
            (string months, string shorts, string days) = Languages[language];
            string text = $"{days.Split(' ')[(int)time.DayOfWeek]} {time.Day} {(whole ? months : shorts).Split(' ')[time.Month - 1]} {time.ToString("yyyy HH:mm:ss", Invariant)}";
            text = casing switch { 0 => text, 1 => text.ToUpperInvariant(), 2 => text.ToLowerInvariant(), _ => text.Replace(' ', '\u00A0') };
            text = accents ? text : Plain(text);
            return Read("EEEE d MMMM yyyy HH:mm:ss", text) == time;
        }, iter: 2000);

    [Theory]
    [InlineData("AM", "PM")]
    [InlineData("am", "pm")]
    [InlineData("a.m.", "p.m.")]
    [InlineData("a. m.", "p. m.")]
    [InlineData("a.\u00A0m.", "p.\u00A0m.")]
    [InlineData("A", "P")]
    public void HalvesOfTheDay_AsPeopleWriteThem_ReadBack(string morning, string afternoon)
        => Gen.Select(Seconds, Gen.Int[0, 2].Select(i => i == 0 ? "" : i == 1 ? " " : "\u202F")).Sample((time, blank) =>
            Read("M/d/yyyy h:mm:ss a", time.ToString("M/d/yyyy h:mm:ss", Invariant) + blank + (time.Hour < 12 ? morning : afternoon)) == time);

    [Fact]
    public void PackedDigits_WithAndWithoutFirstZeros_ReadBack()
        => Seconds.Sample(time =>
        {
            var minute = new DateTime(time.Year, time.Month, time.Day, time.Hour, time.Minute, 0, DateTimeKind.Utc);
            string bare = ((time.Hour * 100) + time.Minute).ToString(Invariant);
            return Read("yyyy D HHmm", $"{time.Year} {time.DayOfYear} {bare}") == minute
                && Read("yyyy D Hmm", $"{time.Year} {time.DayOfYear} {bare.PadLeft(3, '0')}") == minute
                && Read("yyyyDDDHHmm", time.ToString("yyyy", Invariant) + time.DayOfYear.ToString("000", Invariant) + time.ToString("HHmm", Invariant)) == minute
                && Read("yyyyMMddHmm", time.ToString("yyyyMMddHmm", Invariant)) == minute
                && Read("dMMyyHHmmss", time.ToString("dMMyyHHmmss", Invariant)) == time;
        });

    [Fact]
    public void SerialDays_WrittenToNineDigits_ReadBackToTheSecond()
        => Gen.Select(Seconds, Gen.Int[5, 15], Gen.Bool).Sample((time, digits, comma) =>
        {
            decimal days = (decimal)time.Ticks / TimeSpan.TicksPerDay;
            string Written(DateTime zero) => (days - ((decimal)zero.Ticks / TimeSpan.TicksPerDay)).ToString("F" + digits.ToString(Invariant), Invariant).Replace('.', comma ? ',' : '.');

            // Five digits hold a day to half a second only.
            TimeSpan allowed = digits == 5 ? TimeSpan.FromSeconds(1) : TimeSpan.Zero;
            return (Read("excel1900", Written(new DateTime(1899, 12, 30)))!.Value - time).Duration() <= allowed
                && (Read("excel1904", Written(new DateTime(1904, 1, 1)))!.Value - time).Duration() <= allowed;
        });

    [Theory]
    [InlineData("61", null)] // before 1950
    [InlineData("18264", "1950-01-01T00:00:00")]
    [InlineData("36526", "2000-01-01T00:00:00")] // ECMA-376 Part 1, 18.17.4.1 counts 1 January 1900 as 1 and has a 29 February 1900
    [InlineData("43831.25", "2020-01-01T06:00:00")]
    [InlineData("45943.999999", "2025-10-14T00:00:00")]
    public void SerialDays_Known_AreTheDays(string text, string? expected)
        => Assert.Equal(expected is null ? null : DateTime.Parse(expected, Invariant), Read("excel1900", text));

    [Fact]
    public void Epochs_ReadBackExactly()
        => Gen.Select(Seconds, Gen.Int[0, 999_999]).Sample((time, micros) =>
        {
            DateTime exact = time.AddMicroseconds(micros);
            long all = (exact - DateTime.UnixEpoch).Ticks / 10;
            return Read("unixMicroseconds", all.ToString(Invariant)) == exact
                && Read("unixMilliseconds", (all / 1000m).ToString("F3", Invariant)) == exact
                && Read("unixSeconds", (all / 1_000_000m).ToString("F6", Invariant)) == exact
                && Read("unixSeconds", (all / 1_000_000).ToString(Invariant)) == time;
        });

    [Fact]
    public void Parser_WithTheDateOfTheRowBefore_ReadsAsAFreshOne()
    {
        string[] patterns = ["d/M/yyyy H:mm:ss", "yyyyMMddHHmmss", "dd-MM-yyyy HH:mm:ss", "d MMM yyyy h:mm:ss a", "yyyy D Hmmss", "M/d HH:mm:ss"];
        foreach (string pattern in patterns)
        {
            int? year = pattern.Contains('y', StringComparison.Ordinal) ? null : 2024;
            StampParser reused = StampParser.TryCompile(pattern, year: year)!;
            Gen.Select(Gen.Int[1, 31], Gen.Int[1, 12], Gen.Int[0, 25], Gen.Int[0, 60], Gen.Int[1, 3]).Sample((day, month, hour, minute, blanks) =>
            {
                string text = pattern.Replace("yyyy", "2025", StringComparison.Ordinal).Replace("MMM", "jun", StringComparison.Ordinal).Replace("MM", month.ToString("00", Invariant), StringComparison.Ordinal)
                    .Replace("M", month.ToString(Invariant), StringComparison.Ordinal).Replace("dd", day.ToString("00", Invariant), StringComparison.Ordinal).Replace("d", day.ToString(Invariant), StringComparison.Ordinal)
                    .Replace("D", (day * month).ToString(Invariant), StringComparison.Ordinal).Replace("HH", hour.ToString("00", Invariant), StringComparison.Ordinal).Replace("H", hour.ToString(Invariant), StringComparison.Ordinal)
                    .Replace("h", hour.ToString(Invariant), StringComparison.Ordinal).Replace("mm", minute.ToString("00", Invariant), StringComparison.Ordinal).Replace("ss", "00", StringComparison.Ordinal)
                    .Replace("a", "pm", StringComparison.Ordinal).Replace(" ", new string(' ', blanks), StringComparison.Ordinal);
                bool read = reused.TryRead(Encoding.UTF8.GetBytes(text), out LocalStamp one);
                return read == StampParser.TryCompile(pattern, year: year)!.TryRead(Encoding.UTF8.GetBytes(text), out LocalStamp two) && (!read || one == two);
            }, iter: 300, threads: 1);
        }
    }

    [Fact]
    public void Examples_OnTheNurseryFilePage_ReadWhatTheyShow()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/nursery-file.md"));
        (string Text, string Format)[] examples = [.. Example().Matches(page).Select(m => (m.Groups[1].Value, m.Groups[2].Value))];
        Assert.InRange(examples.Length, 8, 100);
        Assert.All(examples, example => Assert.NotNull(Read(example.Format, example.Text)));
    }

    private static DateTime? Read(string format, string text)
        => StampParser.TryCompile(format, decimalComma: true)!.TryRead(Encoding.UTF8.GetBytes(text), out LocalStamp stamp) ? DateTime.UnixEpoch.AddTicks(stamp.LocalMicros * 10) : null;

    private static string Plain(string text) => string.Concat(text.Select(c => "éèêëûùúüìíîïàáâäòóôöøçñÉÈÊËÛÙÚÜÌÍÎÏÀÁÂÄÒÓÔÖØÇÑ".IndexOf(c, StringComparison.Ordinal) is >= 0 and int i
        ? "eeeeuuuuiiiiaaaaooooocnEEEEUUUUIIIIAAAAOOOOOCN"[i] : c));

    /// <summary>A line that shows one text and one format.</summary>
    [GeneratedRegex("^\\| `([^`]+)` \\| `format = \"([^\"]+)\"` \\|$", RegexOptions.Multiline)]
    private static partial Regex Example();
}
