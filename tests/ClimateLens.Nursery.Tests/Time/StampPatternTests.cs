using ClimateLens.Nursery.Time;

namespace ClimateLens.Nursery.Tests.Time;

/// <summary>Letters as in Unicode UTS 35, Part 4, "Date Field Symbol Table".</summary>
public class StampPatternTests
{
    [Theory]
    [InlineData("yyyy-MM-dd HH:mm")]
    [InlineData("dd.MM.yyyy HH:mm:ss")]
    [InlineData("M/d/yyyy h:mm a")]
    [InlineData("yyyyMMddHHmm")]
    [InlineData("yyyyMMddHHmmssSSS")]
    [InlineData("yyyyMMdd Hmm")]
    [InlineData("yyyy-MM-dd'T'HH:mm:ss.SSS")]
    [InlineData("yyyy-MM-dd'T'HH:mm:ssXXX")]
    [InlineData("d.M.yyyy 'kl.' H:mm")]
    [InlineData("HH:mm dd/MM/yyyy")]
    [InlineData("EEEE d MMMM yyyy H:mm")]
    [InlineData("dd-MMM-yy hh:mm:ss a")]
    [InlineData("yyyy D HHmm")]
    [InlineData("yyyyDDDHHmm")]
    [InlineData("yyyy M d H")]
    public void Pattern_OfAnExport_HasNoFault(string pattern) => Assert.Null(StampPattern.FaultOf(pattern, timeNeeded: true));

    [Theory]
    [InlineData("dd/MM HH:mm", null)]
    [InlineData("d MMM HHmm", null)]
    [InlineData("D HHmm", null)]
    [InlineData("dd/MM/yy HH:mm", "year is given as well")]
    public void Pattern_BesideAGivenYear_HasNone(string pattern, string? why)
        => Assert.Equal(why is null, StampPattern.FaultOf(pattern, timeNeeded: true, yearNeeded: false) is not { } fault || !fault.Contains(why!, StringComparison.Ordinal));

    [Theory]
    [InlineData("dd-MM-yyyy HH:mm", true)]
    [InlineData("M/d/yy h:mm a", true)]
    [InlineData("yyyyMMddHHmm", false)]
    [InlineData("HH:mm dd-MM-yyyy", false)]
    [InlineData("dd MM yyyy HH:mm", true)]
    [InlineData("d MMM yyyy h:mm a", true)]
    [InlineData("yyyy D HHmm", true)]
    [InlineData("HH:mm", false)]
    [InlineData("yyyy-MM-dd'T'HH:mm", false)]
    public void Pattern_OfDateBlankTime_CanStandInTwoColumns(string pattern, bool can) => Assert.Equal(can, StampPattern.IsDateBlankTime(pattern));

    [Theory]
    [InlineData("YYYY-MM-dd HH:mm", "YYYY")]
    [InlineData("yyyy-MM-DD HH:mm", "DD, the day of the year, beside MM")]
    [InlineData("yyyyMd HH:mm", "M and d without a mark")]
    [InlineData("yyyy-MM-dd HH:mm z", "name of a zone")]
    [InlineData("yyyy-MM-dd HH:mm X x", "X twice")]
    [InlineData("yyyy-mm-dd HH:mm", "mm twice")]
    [InlineData("yyyy-MM-dd HH:MM", "MM twice")]
    [InlineData("yyyy-MM-dd hh:mm", "without a")]
    [InlineData("yyyy-MM-dd HH:mm a", "without hh")]
    [InlineData("yyyy-MM-dd HH hh:mm a", "HH twice")]
    [InlineData("dd-MM HH:mm", "no year")]
    [InlineData("dd-yyyy HH:mm", "no month")]
    [InlineData("MM-yyyy HH:mm", "no day")]
    [InlineData("yyyy-MM-dd", "no hour")]
    [InlineData("yyyy-MM-dd mm:ss", "no hour")]
    [InlineData("yyyy-MM-dd HH:mm.SSS", "smaller part")]
    [InlineData("e yyyy-MM-dd HH:mm", "number of the weekday")]
    [InlineData("dd MMMMM yyyy HH:mm", "MMMMM")]
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
    [InlineData("DD-MMM-YYYY hh:mm", "dd-MMM-yyyy HH:mm")]
    [InlineData("%d-%b-%Y %H:%M", "dd-MMM-yyyy HH:mm")]
    [InlineData("%A %d %B %Y %H:%M", "EEEE dd MMMM yyyy HH:mm")]
    [InlineData("%-d/%-m/%Y %T", "dd/MM/yyyy HH:mm:ss")]
    [InlineData("dddd d/m/yyyy h:mm AM/PM", "EEEE d/M/yyyy h:mm a")]
    [InlineData("M/d/yyyy h:mm:ss tt", "M/d/yyyy h:mm:ss a")]
    [InlineData("%Y-%j %H%M", "yyyy-DDD HHmm")]
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
