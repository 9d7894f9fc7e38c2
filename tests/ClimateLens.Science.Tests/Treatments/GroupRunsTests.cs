using ClimateLens.Science.Treatments;

namespace ClimateLens.Science.Tests.Treatments;

public class GroupRunsTests
{
    [Theory]
    [InlineData("9 + 12", "12,9")]
    [InlineData(" 04 ", "4")]
    [InlineData("bm 02", "BM02")]
    [InlineData("4/28", "28,4")]
    [InlineData("", "")]
    public void CodesOf_Text_IsTheCodes(string written, string codes) => Assert.Equal(codes, string.Join(',', GroupRuns.CodesOf(written)));

    [Fact]
    public void Longest_MixtureThatSharesACode_Counts()
        => Assert.Equal(3, GroupRuns.Longest([GroupRuns.CodesOf("4"), GroupRuns.CodesOf("4 + 12"), GroupRuns.CodesOf("4"), GroupRuns.CodesOf("12")]));

    [Fact]
    public void Longest_CodesThatAlternate_IsOne() => Assert.Equal(1, GroupRuns.Longest([GroupRuns.CodesOf("4"), GroupRuns.CodesOf("28"), GroupRuns.CodesOf("4")]));

    [Fact]
    public void Groups_EachCodeOnce_AsItIsRead()
        => Assert.All(ResistanceGroups.All, g => Assert.Equal(g.Code, Assert.Single(GroupRuns.CodesOf(g.Code))));

    [Fact]
    public void Of_CodeThatIsNotListed_IsNull() => Assert.Null(ResistanceGroups.Of("999"));

    [Theory]
    [InlineData("03", "3")]
    [InlineData("M03", "M03")]
    [InlineData("0", "0")]
    [InlineData("u", "U")]
    public void CodesOf_LeadingNoughts_BelongToNoNumber(string written, string code) => Assert.Equal([code], GroupRuns.CodesOf(written));

    [Fact]
    public void CodesOf_EmptyPlaces_AreNoCodes() => Assert.Equal(["12", "9"], GroupRuns.CodesOf(" 9 + + 12 /"));

    [Fact]
    public void Longest_SeveralGroupsRunning_IsThatOfTheLongest()
        => Assert.Equal(3, GroupRuns.Longest([GroupRuns.CodesOf("1"), GroupRuns.CodesOf("1 + 2"), GroupRuns.CodesOf("1 + 2")]));

    /// <summary>[FRAC18] was seen for two of them; docs/references.md says so, and that the rest is memory.</summary>
    [Fact]
    public void Groups_RiskSeenInTheSource_IsThatOfTwo() => Assert.Equal(["32", "4"], ResistanceGroups.All.Where(g => g.Seen).Select(g => g.Code).Order(StringComparer.Ordinal));
}
