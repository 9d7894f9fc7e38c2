using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Tests.Time;

/// <summary>Letters as in Unicode UTS 35, Part 4, "Date Field Symbol Table".</summary>
public class StampPatternTests
{
    private static readonly LocalDateTime Afternoon = new(2025, 8, 4, 16, 5);

    [Theory]
    [InlineData("yyyy-MM-dd HH:mm", "2025-08-04 16:05")]
    [InlineData("dd-MM-yyyy HH:mm", "04-08-2025 16:05")]
    [InlineData("dd.MM.yyyy HH:mm:ss", "04.08.2025 16:05:00")]
    [InlineData("M/d/yyyy h:mm a", "8/4/2025 4:05 PM")]
    [InlineData("MM/dd/yy hh:mm a", "08/04/25 04:05 pm")]
    [InlineData("yyyyMMddHHmm", "202508041605")]
    [InlineData("yyyy-MM-dd'T'HH:mm:ss.SSS", "2025-08-04T16:05:00.000")]
    [InlineData("d.M.yyyy 'kl.' H:mm", "4.8.2025 kl. 16:05")]
    [InlineData("HH:mm dd/MM/yyyy", "16:05 04/08/2025")]
    public void Pattern_OfAnExport_ReadsItsStamp(string pattern, string stamp)
    {
        Assert.Null(StampPattern.FaultOf(pattern, timeNeeded: true));
        Assert.Equal(Afternoon, StampPattern.ToParser(pattern).Parse(stamp).GetValueOrThrow());
    }

    [Theory]
    [InlineData("dd-MM-yyyy HH:mm", "2025-08-04 16:05")]
    [InlineData("yyyy-MM-dd HH:mm", "2025-02-30 16:05")]
    [InlineData("yyyy-MM-dd HH:mm", "2025-08-04 24:01")]
    [InlineData("yyyy-MM-dd HH:mm", "2025-08-04 16:05 ")]
    [InlineData("yyyy-MM-dd HH:mm", "2025/08/04 16:05")]
    [InlineData("dd/MM/yyyy HH:mm", "04-08-2025 16:05")]
    public void Pattern_WithAnotherStamp_Refuses(string pattern, string stamp)
        => Assert.False(StampPattern.ToParser(pattern).Parse(stamp).Success);

    [Theory]
    [InlineData("69", 2069)]
    [InlineData("70", 1970)]
    [InlineData("00", 2000)]
    public void Year_OfTwoDigits_TurnsAtSeventy(string year, int expected)
        => Assert.Equal(expected, StampPattern.ToParser("dd/MM/yy").Parse("04/08/" + year).GetValueOrThrow().Year);

    [Theory]
    [InlineData("dd-MM-yyyy HH:mm", true)]
    [InlineData("M/d/yy h:mm a", true)]
    [InlineData("yyyyMMddHHmm", false)]
    [InlineData("HH:mm dd-MM-yyyy", false)]
    [InlineData("dd MM yyyy HH:mm", false)]
    [InlineData("yyyy-MM-dd'T'HH:mm", false)]
    public void Pattern_OfDateBlankTime_CanStandInTwoColumns(string pattern, bool can) => Assert.Equal(can, StampPattern.IsDateBlankTime(pattern));

    [Theory]
    [InlineData("YYYY-MM-dd HH:mm", "YYYY")]
    [InlineData("yyyy-MM-DD HH:mm", "DD")]
    [InlineData("yyyy-mm-dd HH:mm", "mm twice")]
    [InlineData("yyyy-MM-dd HH:MM", "MM twice")]
    [InlineData("yyyy-MM-dd hh:mm", "without a")]
    [InlineData("yyyy-MM-dd HH:mm a", "without hh")]
    [InlineData("yyyy-MM-dd HH hh:mm a", "HH twice")]
    [InlineData("dd-MM HH:mm", "no year")]
    [InlineData("dd-yyyy HH:mm", "no month")]
    [InlineData("MM-yyyy HH:mm", "no day")]
    [InlineData("yyyy-MM-dd HH", "no minutes")]
    [InlineData("yyyy-MM-dd mm:ss", "no hour")]
    [InlineData("yyyy-MM-dd HH:mm.SSS", "smaller part")]
    [InlineData("EEE yyyy-MM-dd HH:mm", "day of the week")]
    [InlineData("dd MMM yyyy HH:mm", "month's name")]
    [InlineData("yyyy-'W'ww HH:mm", "week number")]
    [InlineData("yyyy-MM-ddTHH:mm", "T")]
    [InlineData("yyyy-MM-dd 'HH:mm", "quote")]
    [InlineData("%Y-%m-%d %H:%M", "Y")]
    public void Pattern_ThatCannotBeUsed_SaysWhy(string pattern, string why)
    {
        Assert.Contains(why, StampPattern.FaultOf(pattern, timeNeeded: true), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("MM/DD/YYYY hh:mm", "MM/dd/yyyy HH:mm")]
    [InlineData("MM/DD/YYYY hh:mm A", "MM/dd/yyyy hh:mm a")]
    [InlineData("yyyy-mm-dd HH:mm", "yyyy-MM-dd HH:mm")]
    [InlineData("yyyy-MM-dd HH:MM", "yyyy-MM-dd HH:mm")]
    [InlineData("yyyy-MM-ddTHH:mm:ss", "yyyy-MM-dd'T'HH:mm:ss")]
    [InlineData("%Y-%m-%d %H:%M:%S", "yyyy-MM-dd HH:mm:ss")]
    [InlineData("%m/%d/%Y %I:%M %p", "MM/dd/yyyy hh:mm a")]
    [InlineData("dd MMM yyyy HH:mm", null)]
    [InlineData("whenever", null)]
    [InlineData("yyyy-MM-dd 'at HH:mm", null)]
    public void Pattern_OfAnotherHabit_IsRepairedOrNot(string written, string? meant) => Assert.Equal(meant, StampRepair.Of(written, timeNeeded: true));

    [Fact]
    public void Pattern_OfADayAlone_IsEnoughForRecords()
    {
        Assert.Null(StampPattern.FaultOf("yyyy-MM-dd", timeNeeded: false));
        Assert.NotNull(StampPattern.FaultOf("yyyy-MM-dd", timeNeeded: true));
    }

    [Fact]
    public void Pattern_WithAnOffset_HasNoFaultAndNoLocalParser()
    {
        Assert.Null(StampPattern.FaultOf("yyyy-MM-dd HH:mm:ss XXX", timeNeeded: true));
        Assert.Throws<ArgumentException>(() => StampPattern.ToParser("yyyy-MM-dd HH:mm:ss XXX"));
    }

    [Theory]
    [InlineData("YYYY")]
    [InlineData("yyyy-MM-dd 'x")]
    public void Parser_OfAFaultyPattern_Throws(string pattern) => Assert.Throws<ArgumentException>(() => StampPattern.ToParser(pattern));
}
