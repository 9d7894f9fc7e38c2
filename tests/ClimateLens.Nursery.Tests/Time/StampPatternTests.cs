using ClimateLens.Nursery.Time;

namespace ClimateLens.Nursery.Tests.Time;

/// <summary>Letters as in Unicode UTS 35, Part 4, "Date Field Symbol Table".</summary>
public class StampPatternTests
{
    [Theory]
    [InlineData("yyyy-MM-dd HH:mm")]
    [InlineData("dd-MM-yyyy HH:mm")]
    [InlineData("dd.MM.yyyy HH:mm:ss")]
    [InlineData("M/d/yyyy h:mm a")]
    [InlineData("MM/dd/yy hh:mm a")]
    [InlineData("yyyyMMddHHmm")]
    [InlineData("yyyy-MM-dd'T'HH:mm:ss.SSS")]
    [InlineData("yyyy-MM-dd HH:mm:ss XXX")]
    [InlineData("d.M.yyyy 'kl.' H:mm")]
    [InlineData("HH:mm dd/MM/yyyy")]
    public void Pattern_OfAnExport_HasNoFault(string pattern) => Assert.Null(StampPattern.FaultOf(pattern, timeNeeded: true));

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
}
