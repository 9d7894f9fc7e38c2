using System.Text;
using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Tests.Times;

/// <summary>Small files of d/M beside M/d whose direction is not known beforehand; the days between dates are counted by hand, in 2025.</summary>
public sealed class StampDirectionTests
{
    private const string DayFirst = "dd/MM/yyyy HH:mm", MonthFirst = "MM/dd/yyyy HH:mm";
    private const byte Undecided = StampVerdict.Undecided;
    private const long Minute = 60_000_000;

    [Theory]
    // 4 March is 15 days before 19 March and 3 April 15 days behind it: the file may run either way.
    [InlineData("04/03 19/03", new[] { Undecided, 0 })]
    [InlineData("19/03 04/03", new[] { 0, Undecided })]
    // 4 March to 24 March is 20 days forward, 3 April to 24 March 10 days back: a gap twice as long is not clearly worse.
    [InlineData("04/03 24/03", new[] { Undecided, 0 })]
    // 4 March to 14 March is 10 days forward, 3 April to 14 March 20 days back.
    [InlineData("04/03 14/03", new[] { Undecided, 0 })]
    public void Decide_BothDirectionsFit_StaysUndecided(string days, int[] choices) => Assert.Equal(choices, Choices(days));

    [Theory]
    [InlineData("05/02 13/02 21/02", 0)] // 8 days each; 2 May is far off and out of order
    [InlineData("02/05 13/02 21/02", 1)]
    [InlineData("21/02 13/02 05/02", 0)]
    [InlineData("21/02 13/02 02/05", 1)]
    [InlineData("13/02 21/02 01/03", 0)] // 1 March, not 3 January
    [InlineData("13/02 21/02 03/01", 1)]
    public void Decide_OneDirectionFits_IsDecided(string days, byte ambiguous)
    {
        string[] rows = days.Split(' ');
        Assert.Equal(rows.Select(r => int.Parse(r[..2], System.Globalization.CultureInfo.InvariantCulture) > 12 ? 0 : ambiguous), Choices(days));
    }

    [Theory]
    // A row each 9 days (17 and 26 February), then 4 March, 6 days on, or 3 April, 36 days on: four steps are a clear gap.
    [InlineData("17/02 26/02 04/03", 0)]
    // A row each 10 days, then 4 March, 7 days on, or 3 April, 37 days on: less than four steps.
    [InlineData("15/02 25/02 04/03", Undecided)]
    public void Decide_GapOfFourSteps_IsClear(string days, int choice) => Assert.Equal([0, 0, choice], Choices(days));

    [Fact]
    public void Decide_NewestFirstWithLongSteps_IsReadBackwards()
    {
        // Every 6 hours from 12 June back to 28 May; months and days turned round at random places.
        DateTime[] times = [.. Enumerable.Range(0, 60).Select(i => new DateTime(2025, 6, 12, 18, 0, 0).AddHours(-6 * i))];
        byte[] written = [.. Enumerable.Range(0, 60).Select(i => (byte)(i * 7 % 5 % 2))];
        StampVerdict verdict = Verdict([.. times.Select((t, i) => t.ToString(written[i] == 0 ? DayFirst : MonthFirst, System.Globalization.CultureInfo.InvariantCulture))], DayFirst, MonthFirst);
        Assert.True(verdict.NewestFirst);
        Assert.Equal(6 * 60 * Minute, verdict.StepMicros);
        for (int i = 0; i < times.Length; i++)
        {
            Assert.True(verdict.Choices[i] == written[i] || times[i].Day == times[i].Month, $"{times[i]}");
        }
    }

    [Theory]
    [InlineData("04/03", false)] // nothing tells
    [InlineData("13/02 14/02", false)]
    [InlineData("14/02 13/02", true)]
    [InlineData("13/02 13/02", false)]
    public void Decide_Direction_IsNewestFirstOnlyWhereRowsRunBack(string days, bool newestFirst) => Assert.Equal(newestFirst, Verdict(Rows(days), DayFirst, MonthFirst).NewestFirst);

    [Theory]
    [InlineData("10:00 10:05 11:05 11:10", 5)] // 5, 60, 5
    [InlineData("10:00 11:00 11:05 11:10 12:10", 60)] // 60, 5, 5, 60: the upper one of the middle
    [InlineData("10:00 10:00 10:00 10:05", 5)] // a time again is no step
    [InlineData("11:10 11:05 11:00", 5)]
    [InlineData("10:00", 24 * 60)]
    [InlineData("10:00 10:00", 24 * 60)]
    public void Decide_UsualStep_IsTheMedian(string times, int minutes)
    {
        string[] rows = times.Split(' ');
        Assert.Equal(minutes * Minute, Verdict([.. rows.Select(t => $"13/02/2025 {t}")], DayFirst, MonthFirst).StepMicros);
        Assert.Equal(minutes * Minute, Verdict([.. rows.Select((t, i) => i % 2 == 0 ? $"2025-02-13 {t}" : $"13.02.2025 {t}")], "yyyy-MM-dd HH:mm", "dd.MM.yyyy HH:mm").StepMicros);
    }

    [Fact]
    public void Decide_StampsWithOffsets_AreComparedAsInstants()
    {
        // The autumn of Europe/London: 00:30, 01:30 of summer time and 01:30 of winter time are 23:30, 00:30 and 01:30 UTC.
        StampVerdict verdict = Verdict(["2025-10-26 00:30+0100", "26/10/2025 01:30+0100", "2025-10-26 01:30+0000"], "yyyy-MM-dd HH:mmxx", "dd/MM/yyyy HH:mmxx");
        Assert.Equal((60 * Minute, false), (verdict.StepMicros, verdict.NewestFirst));
        // Local times that run down, instants that run up: 23:00, 23:30 and 00:00 UTC.
        verdict = Verdict(["2025-10-26 01:00+0200", "26/10/2025 00:30+0100", "2025-10-26 00:00+0000"], "yyyy-MM-dd HH:mmxx", "dd/MM/yyyy HH:mmxx");
        Assert.Equal((30 * Minute, false), (verdict.StepMicros, verdict.NewestFirst));
    }

    [Fact]
    public void Decide_SameInstant_TheFirstFormatThatReadsIt()
        => Assert.Equal([1, 0, 0], Verdict(["05/05/2025 10:00", "2025-05-05 10:05", "2025-05-05 10:10"], "yyyy-MM-dd HH:mm", DayFirst, MonthFirst).Choices.ToArray());

    [Fact]
    public void Decide_SameInstant_TheFormatOfTheRowBefore()
        => Assert.Equal([1, 1, 1, 0], Verdict(["05/13/2025 10:00", "05/05/2025 10:05", "05/14/2025 10:00", "15/05/2025 10:00"], DayFirst, MonthFirst).Choices[..4].ToArray());

    [Fact]
    public void Add_TellsWhetherSomeFormatReads()
    {
        var order = new StampOrder([StampParser.TryCompile(DayFirst)!, StampParser.TryCompile(MonthFirst)!]);
        string[] rows = ["13/10/2025 00:00", "10/13/2025 00:00", "05/04/2025 00:00", "13/13/2025 00:00", "total"];
        Assert.Equal([true, true, true, false, false], rows.Select(t => order.Add(Encoding.UTF8.GetBytes(t))));
        Assert.Equal(5, order.Count);
    }

    [Fact]
    public void Decide_AsManyFormatsAsAFileMayMix_AreTold()
    {
        string[] formats = [DayFirst, MonthFirst, "yyyy-MM-dd HH:mm", "yyyy/MM/dd HH:mm", "dd.MM.yyyy HH:mm", "dd-MM-yyyy HH:mm", "d MMM yyyy HH:mm", "iso"];
        Assert.Equal(StampOrder.MostFormats, formats.Length);
        string[] rows = ["13/02/2025 10:00", "02/13/2025 10:05", "2025/02/13 10:10", "13.02.2025 10:15", "13-02-2025 10:20", "13 feb 2025 10:25", "2025-02-13T10:30"];
        Assert.Equal([0, 1, 3, 4, 5, 6, 7], Verdict(rows, formats).Choices.ToArray());
        Assert.Throws<ArgumentOutOfRangeException>(() => Verdict(rows, [.. formats, "excel1900"]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Verdict(rows));
        Assert.Equal([0], Verdict(rows[..1], DayFirst).Choices.ToArray());
    }

    private static string[] Rows(string days) => [.. days.Split(' ').Select(d => $"{d}/2025 12:00")];

    private static IEnumerable<int> Choices(string days) => Verdict(Rows(days), DayFirst, MonthFirst).Choices.ToArray().Select(c => (int)c);

    private static StampVerdict Verdict(string[] texts, params string[] formats)
    {
        var order = new StampOrder([.. formats.Select(f => StampParser.TryCompile(f)!)]);
        foreach (string text in texts)
        {
            order.Add(Encoding.UTF8.GetBytes(text));
        }

        return order.Decide();
    }
}
