using System.Globalization;
using System.Text;
using ClimateLens.Logs.Times;
using CsCheck;

namespace ClimateLens.Logs.Tests;

public sealed class StampOrderTests
{
    private const string DayFirst = "dd/MM/yyyy HH:mm";
    private const string MonthFirst = "MM/dd/yyyy HH:mm";

    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    [Fact]
    public void Decide_FiveMinuteFileMixedAtRandom_RecoversEveryRow()
    {
        Gen.Select(Gen.DateTime[new DateTime(2024, 1, 1), new DateTime(2026, 1, 1)], Gen.Int[2, 6], Gen.Bool, Gen.Bool.Array[50, 400]).Sample(
            (any, days, newestFirst, choices) =>
            {
                DateTime[] times = [.. Steps(any.Date, days * 288).Where((_, i) => i % 37 != 5)]; // with a missing row now and then
                times = newestFirst ? [.. times.Reverse()] : times;
                DateTime[] read = Read([.. times.Select((time, i) => time.ToString(choices[i % choices.Length] ? DayFirst : MonthFirst, Invariant))], DayFirst, MonthFirst);
                return read.SequenceEqual(times);
            },
            iter: 40);
    }

    [Fact]
    public void Decide_RowsByDayTurnedRound_RecoversEveryRow()
    {
        // What a spreadsheet of the other habit leaves behind: days up to 12 are turned round, the others stay.
        DateTime[] times = [.. Steps(new DateTime(2025, 9, 1), 61 * 24, minutes: 60)];
        string[] texts = [.. times.Select(t => t.ToString(t.Day <= 12 ? MonthFirst : DayFirst, Invariant))];
        StampVerdict verdict = Verdict(texts, DayFirst, MonthFirst);
        Assert.Equal(times, Read(texts, DayFirst, MonthFirst));
        Assert.Equal(0, verdict.UndecidedRows);
        Assert.Equal(texts.Length, verdict.RowsByFormat.Sum());
        Assert.InRange(verdict.RowsByFormat[1], 22 * 24, 24 * 24); // 9/9 and 10/10 read alike both ways
    }

    [Theory]
    [InlineData(DayFirst, 1)]
    [InlineData(MonthFirst, 0)]
    public void Decide_OneFormatOnly_TakesNoRowOfTheOther(string written, int other)
    {
        string[] texts = [.. Steps(new DateTime(2025, 3, 1), 12 * 288).Select(t => t.ToString(written, Invariant))];
        StampVerdict verdict = Verdict(texts, DayFirst, MonthFirst);
        Assert.Equal(0, verdict.UndecidedRows);
        Assert.InRange(verdict.RowsByFormat[other], 0, 1); // the first row may be 1/1
        Assert.False(verdict.NewestFirst);
    }

    [Fact]
    public void Decide_OneDayAlone_StaysUndecided()
    {
        string[] texts = [.. Steps(new DateTime(2025, 4, 3), 288).Select(t => t.ToString(DayFirst, Invariant))];
        Assert.Equal(288, Verdict(texts, DayFirst, MonthFirst).UndecidedRows);
    }

    [Fact]
    public void Decide_DayBetweenLongGaps_StaysUndecided()
    {
        // 4 March or 3 April: both lie between 25 February and 20 April.
        string[] texts = [.. Day(2, 25), .. Day(4, 3), .. Day(4, 20)];
        StampVerdict verdict = Verdict(texts, DayFirst, MonthFirst);
        Assert.Equal(288, verdict.UndecidedRows);
        Assert.All(verdict.Choices[288..576].ToArray(), choice => Assert.Equal(StampVerdict.Undecided, choice));
    }

    [Fact]
    public void Decide_DayThatOneMeaningPutsOutOfOrder_IsDecided()
    {
        // 4 March would lie before 20 March.
        string[] texts = [.. Day(3, 20), .. Day(4, 3), .. Day(4, 20)];
        Assert.Equal(0, Verdict(texts, DayFirst, MonthFirst).UndecidedRows);
        Assert.Equal(new DateTime(2025, 4, 3), Read(texts, DayFirst, MonthFirst)[288]);
    }

    [Fact]
    public void Decide_RowsThatNoFormatReads_AreLeftOut()
    {
        string[] texts = ["13/10/2025 00:00", "", "total", "13/10/2025 00:05", "14/13/2025 00:00"];
        StampVerdict verdict = Verdict(texts, DayFirst, MonthFirst);
        Assert.Equal([0, StampVerdict.Unreadable, StampVerdict.Unreadable, 0, StampVerdict.Unreadable], verdict.Choices.ToArray());
        Assert.Equal(3, verdict.UnreadableRows);
    }

    [Fact]
    public void Decide_OtherFormatFromSomeRowOn_NeedsNoOrder()
    {
        string[] texts = ["2025-10-01 10:00", "2025-10-01 10:05", "01.10.2025 10:10", "01.10.2025 10:15"];
        Assert.Equal([0, 0, 1, 1], Verdict(texts, "yyyy-MM-dd HH:mm", "dd.MM.yyyy HH:mm").Choices.ToArray());
    }

    [Fact]
    public void Decide_NoRows_IsEmpty() => Assert.Equal(0, Verdict([], DayFirst, MonthFirst).Choices.Length);

    private static IEnumerable<DateTime> Steps(DateTime from, int count, int minutes = 5) => Enumerable.Range(0, count).Select(i => from.AddMinutes(i * minutes));

    private static IEnumerable<string> Day(int month, int day) => Steps(new DateTime(2025, month, day), 288).Select(t => t.ToString(DayFirst, Invariant));

    private static StampVerdict Verdict(string[] texts, params string[] formats)
    {
        var order = new StampOrder([.. formats.Select(f => StampParser.TryCompile(f)!)]);
        foreach (string text in texts)
        {
            order.Add(Encoding.UTF8.GetBytes(text));
        }

        return order.Decide();
    }

    private static DateTime[] Read(string[] texts, params string[] formats)
    {
        byte[] choices = Verdict(texts, formats).Choices.ToArray();
        return [.. texts.Zip(choices).Where(p => p.Second < formats.Length).Select(p => DateTime.ParseExact(p.First, formats[p.Second], Invariant))];
    }
}
