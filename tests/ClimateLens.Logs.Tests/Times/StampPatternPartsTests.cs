using System.Globalization;
using System.Text;
using ClimateLens.Logs.Times;
using CsCheck;

namespace ClimateLens.Logs.Tests.Times;

/// <summary>The parts of a pattern: hours and minutes in one number, blanks, times of day alone, and stamps read one after the other.</summary>
public sealed class StampPatternPartsTests
{
    [Theory]
    [InlineData("HHmm dd-MM-yyyy", "830 13-10-2025", "2025-10-13T08:30:00")]
    [InlineData("Hmmss dd-MM-yyyy", "83009 13-10-2025", "2025-10-13T08:30:09")]
    [InlineData("HmmddMMyyyy", "83013102025", "2025-10-13T08:30:00")]
    [InlineData("yyyy-MM-dd hhmm a", "2025-10-13 830 PM", "2025-10-13T20:30:00")]
    [InlineData("yyyy-MM-dd hhmm a", "2025-10-13 1205 AM", "2025-10-13T00:05:00")]
    [InlineData("yyyy-MM-dd hmma", "2025-10-13 205p", "2025-10-13T14:05:00")]
    [InlineData("dd-MM-yyyy h:mma", "13-10-2025 2:05pm", "2025-10-13T14:05:00")]
    [InlineData("dd-MM-yyyy HH mm", "13-10-2025 14 05", "2025-10-13T14:05:00")]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025   14:05", "2025-10-13T14:05:00")]
    public void TryRead_FittingText_IsRead(string pattern, string text, string expected)
        => Assert.Equal(DateTime.Parse(expected, CultureInfo.InvariantCulture), DateTime.UnixEpoch.AddTicks(Read(Parser(pattern), text)!.Value.LocalMicros * 10));

    [Theory]
    [InlineData("yyyyMMddHHmm", "20251013830")] // digits before it: two letters take exactly two
    [InlineData("yyyy-MM-dd HHmm", "2025-10-13 14050")]
    [InlineData("yyyy-MM-dd hhmm a", "2025-10-13 1305 am")]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-202514:05")] // only the blank before AM and PM may be missing
    [InlineData("d MMM yyyy HH:mm", "13oct 2025 14:05")]
    [InlineData("dd-MM-yyyy h:mma", "13-10-2025 2:pm")]
    [InlineData("iso", "2025-10-13_14:05")]
    [InlineData("iso", "2025-10-13T")]
    [InlineData("iso", "2025-10-13T14:")]
    public void TryRead_OtherText_IsRefused(string pattern, string text) => Assert.Null(Read(Parser(pattern), text));

    /// <summary>A stamp means the same behind any other, here one of the same day.</summary>
    [Theory]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025 14:05", "13-10-2025 14:05:09", null)]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025 14:05", "13-10-2025 14:05Z", null)]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025 14:05", "13-10-2025 14", null)]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025 14:05", "13-10-2025 14:05 x", null)]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025 14:05", "13-10-2025 24:00", "2025-10-14T00:00:00")]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025 14:05", "13-10-2025 24:01", null)]
    [InlineData("yyyy-MM-dd HH:mm", "2025-10-13 14:05", "2025-10-14 14:05", "2025-10-14T14:05:00")]
    [InlineData("yyyy-MM-dd HH:mm", "2025-10-13 14:05", "2025-11-13 14:05", "2025-11-13T14:05:00")]
    [InlineData("yyyy-dd-MM HH:mm", "2025-13-10 14:05", "2025-14-10 14:05", "2025-10-14T14:05:00")]
    [InlineData("yyyy-D HH:mm", "2025-286 14:05", "2025-287 14:05", "2025-10-14T14:05:00")]
    [InlineData("yyyy-MM-dd HHmm", "2025-10-13 5", "2025-10-13 530", "2025-10-13T05:30:00")]
    [InlineData("yyyy-MM-dd H", "2025-10-13 1", "2025-10-13 14", "2025-10-13T14:00:00")]
    [InlineData("d/M/yyyy H:mm", "1/1/2025 9:05", "1/12/2025 9:05", "2025-12-01T09:05:00")]
    [InlineData("iso", "2025-10-13T14:05", "2025-10-13T", null)]
    [InlineData("iso", "2025-10-13T14:05", "2025-10-13T14:05x", null)]
    [InlineData("iso", "2025-10-13T14:05", "2025-10-13T14", "2025-10-13T14:00:00")]
    [InlineData("iso", "2025-10-13T14:05", "2025-10-13T14:05:09.25", "2025-10-13T14:05:09.25")]
    public void TryRead_BehindAnotherStamp_MeansTheSame(string pattern, string before, string text, string? expected)
    {
        StampParser parser = Parser(pattern);
        Assert.NotNull(Read(parser, before));
        DateTime? read = Read(parser, text) is LocalStamp stamp ? DateTime.UnixEpoch.AddTicks(stamp.LocalMicros * 10) : null;
        Assert.Equal(expected is null ? null : DateTime.Parse(expected, CultureInfo.InvariantCulture), read);
    }

    /// <summary>What a parser makes of a text does not hang on what it read before: whole, cut off, or with one sign changed.</summary>
    [Fact]
    public void TryRead_AnyOrderOfTexts_AgreesWithAFreshParser()
    {
        string[] patterns = ["dd-MM-yyyy HH:mm", "yyyy-MM-dd HHmm", "d/M/yyyy H:mm:ss", "yyyyMMddHHmm", "dMMyyyy HHmm", "yyyy D HHmm", "yyyyDDDHHmm", "d MMM yyyy HH:mm", "yyyy-MM-dd h:mm a", "HH:mm dd-MM-yyyy", "yyyy-MM-dd HH:mmxxx", "iso"];
        string[] cultures = ["dd-MM-yyyy HH:mm", "yyyy-MM-dd Hmm", "d/M/yyyy H:mm:ss", "yyyyMMddHHmm", "dMMyyyy HHmm", "", "", "d MMM yyyy HH:mm", "yyyy-MM-dd h:mm tt", "HH:mm dd-MM-yyyy", "yyyy-MM-dd HH:mm'+01:00'", "yyyy-MM-dd'T'HH:mm"];
        string Text(int pattern, DateTime time) => pattern switch
        {
            5 => string.Create(CultureInfo.InvariantCulture, $"{time.Year} {time.DayOfYear} {time:HHmm}"),
            6 => string.Create(CultureInfo.InvariantCulture, $"{time.Year}{time.DayOfYear:000}{time:HHmm}"),
            _ => time.ToString(cultures[pattern], CultureInfo.InvariantCulture),
        };
        Gen<(int, int, int, char)> change = Gen.Select(Gen.Int[0, 40_000], Gen.Int[0, 4], Gen.Int[0, 20], Gen.Char["0123456789 :-T"]);
        Gen.Select(Gen.Int[0, patterns.Length - 1], change.Array[2, 30]).Sample((pattern, changes) =>
        {
            StampParser one = Parser(patterns[pattern]);
            return Array.TrueForAll(changes, c =>
            {
                string text = Text(pattern, new DateTime(2025, 1, 9).AddMinutes(c.Item1));
                int at = Math.Min(c.Item3, text.Length);
                text = c.Item2 switch { 0 => text[..at], 1 => text[..at] + c.Item4 + text[at..], _ => text };
                return Read(one, text) == Read(Parser(patterns[pattern]), text);
            });
        });
    }

    [Theory]
    [InlineData("dd-MM-yyyy HH:mm", "10:20", 620)]
    [InlineData("dd-MM-yyyy HH:mm", "24:00", 1440)]
    [InlineData("dd-MM-yyyy HH:mm", "25:00", null)]
    [InlineData("dd-MM-yyyy HH:mm", "10:20x", null)]
    [InlineData("dd-MM-yyyy HH:mm", "10", null)]
    [InlineData("dd-MM-yyyy HH:mm", "", null)]
    [InlineData("dd-MM-yyyy h:mm a", "2:05 PM", 845)]
    [InlineData("dd-MM-yyyy a h:mm", "PM 2:05", 845)]
    [InlineData("dd-MM-yyyy HHmm", "830", 510)]
    [InlineData("HH:mm dd-MM-yyyy", "10:20", null)] // the date is not behind the time
    [InlineData("HH:mm dd-MM-yyyy", "10:20 13-10-2025", null)]
    [InlineData("dd-MM-yyyy", "", null)]
    [InlineData("iso", "10:20", 620)]
    [InlineData("iso", "10:20x", null)]
    [InlineData("iso", "", null)]
    [InlineData("excel1900", "", null)] // an empty cell is no midnight
    [InlineData("unixSeconds", "", null)]
    public void TryReadTimeOfDay_TextAlone_IsMinutesOfTheDay(string pattern, string text, int? minutes)
        => Assert.Equal(minutes, Parser(pattern).TryReadTimeOfDay(Encoding.UTF8.GetBytes(text), out long time) ? (int)(time / 60_000_000) : null);

    [Theory]
    [InlineData("iso")]
    [InlineData("excel1900")]
    [InlineData("dd/MM/yyyy HH:mm")]
    [InlineData("dd/MM/yy")]
    [InlineData("yyyy D HH:mm")]
    public void LacksYear_FormatThatNamesIt_IsNot(string pattern) => Assert.False(Parser(pattern).LacksYear);

    [Fact]
    public void TryCompile_WithAYear_GivesItToStampsThatNameNone()
    {
        StampParser parser = StampParser.TryCompile("dd/MM HH:mm", year: 2024)!;
        Assert.True(parser.LacksYear);
        Assert.Equal(new DateTime(2024, 2, 29, 12, 0, 0), DateTime.UnixEpoch.AddTicks(Read(parser, "29/02 12:00")!.Value.LocalMicros * 10));
        Assert.Equal(new DateTime(2024, 2, 28, 12, 0, 0), DateTime.UnixEpoch.AddTicks(Read(parser, "28/02 12:00")!.Value.LocalMicros * 10));
        parser.Year = 2025;
        Assert.Null(Read(parser, "29/02 12:00"));
        Assert.Equal(new DateTime(2025, 2, 28, 12, 5, 0), DateTime.UnixEpoch.AddTicks(Read(parser, "28/02 12:05")!.Value.LocalMicros * 10));
    }

    [Theory]
    [InlineData("dd/MM HH:mm")] // no year
    [InlineData("HH:mm")]
    [InlineData("dd/MM/yyyy 'at")]
    [InlineData("dd/MM/yyyy QQ")]
    [InlineData("")]
    public void TryCompile_FormatThatCannotBeUsed_IsNull(string pattern) => Assert.Null(StampParser.TryCompile(pattern));

    private static StampParser Parser(string pattern) => StampParser.TryCompile(pattern)!;

    private static LocalStamp? Read(StampParser parser, string text) => parser.TryRead(Encoding.UTF8.GetBytes(text), out LocalStamp stamp) ? stamp : null;
}
