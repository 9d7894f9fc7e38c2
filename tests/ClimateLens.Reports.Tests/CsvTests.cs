using System.Text;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Data;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

public class CsvTests
{
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1", "'+1")]
    [InlineData("-1", "'-1")]
    [InlineData("@x", "'@x")]
    [InlineData("\tx", "'\tx")]
    [InlineData("\0x", "'\0x")]
    [InlineData("\rx", "\"'\rx\"")]
    [InlineData("a=b", "a=b")]
    [InlineData("a,\"b\"", "\"a,\"\"b\"\"\"")]
    [InlineData("two\nlines", "\"two\nlines\"")]
    [InlineData("", "")]
    public void Text_Anything_CannotRunAsFormula(string text, string expected)
    {
        CsvTable table = new("a", "b");
        table.Text(text).Number(-3.25).EndRow();
        Assert.Equal($"a,b\r\n{expected},-3.25\r\n", Encoding.UTF8.GetString(table.ToBytes()));
    }

    [Fact]
    public void Hours_RichReview_HaveOneRowAnHourAndEmptyFieldsInTheGap()
    {
        Review review = SampleReviews.Rich();
        string[] rows = Lines(review, DataFiles.Hours);
        Assert.Equal(review.Hours.Length + 1, rows.Length);
        Assert.StartsWith("2025-10-13T00:00:00+01:00,", rows[1], StringComparison.Ordinal);
        Assert.Equal("2025-10-15T12:00:00+01:00,,,,,,,,,,,,,false", rows[61]);
        Assert.All(rows, r => Assert.Equal(14, r.Split(',').Length));
    }

    [Fact]
    public void Waterings_RichReview_HaveTheMethodsOfTheFiles()
    {
        string[] rows = Lines(SampleReviews.Rich(), DataFiles.Waterings);
        Assert.Equal(7, rows.Length);
        Assert.Contains(",overheadBoom,true,north bench,210,", rows[1], StringComparison.Ordinal);
        Assert.Contains(",drip,false,,216,", rows[4], StringComparison.Ordinal);
    }

    [Fact]
    public void Files_WateringsNotKnown_AreLeftOut()
        => Assert.DoesNotContain(DataFiles.Waterings, DataFiles.Of(SampleReviews.Empty()).Keys);

    [Fact]
    public void Files_AnyReview_AreAmongTheNamesThatThePublisherClears()
        => Assert.Equal(DataFiles.Names, DataFiles.Of(SampleReviews.Rich()).Keys);

    [Fact]
    public void Flags_ReviewWithFaults_HaveOneRowAStretchAndFitTheSchemaOfTheReview()
    {
        SyntheticHouse week = SyntheticHouse.Week("2025-W42");
        NodaTime.Instant at = week.Input.Period.Start + NodaTime.Duration.FromHours(30);
        Review review = Analysis.ReviewPipeline.Run(week.WithAir(t => t == at ? new Air(80, 102) : SyntheticHouse.AutumnAir(t)).Input);
        Assert.Equal(
            ["source,channel,sensor,start,end,flag,checks", "climate,airTemperature,,2025-10-14T06:00:00+01:00,2025-10-14T06:05:00+01:00,fail,grossRange", "climate,relativeHumidity,,2025-10-14T06:00:00+01:00,2025-10-14T06:05:00+01:00,suspect,grossRange"],
            Lines(review, DataFiles.Flags));
        Assert.Contains("flags.csv", Rendered.Page(review).Html, StringComparison.Ordinal);
        ReviewSchemaTests.AssertHolds(ReviewJson.Write(review));
    }

    [Fact]
    public void SecondOpinion_RichReview_HasARowAStretchAndAShift()
    {
        Assert.Equal(
            [
                "channel,sensor,kind,start,end,steps,days,logged,expected,part,difference,differenceLow,differenceHigh",
                "airTemperature,,suspect,2025-10-14T14:00:00+01:00,2025-10-14T14:05:00+01:00,1,,22.4,18.3,,4.1,,",
                "relativeHumidity,north <bay>,shift,2025-10-16T00:00:00+01:00,2025-10-20T00:00:00+01:00,,4,,,whole,7.9,6.8,8.8",
                "canopyTemperature,,shift,2025-10-18T00:00:00+01:00,2025-10-19T00:00:00+01:00,,1,,,sunUp,-2.5,-2.9,-2.1",
            ],
            Lines(SampleReviews.Rich(), DataFiles.SecondOpinion));
        Assert.DoesNotContain(DataFiles.SecondOpinion, DataFiles.Of(SampleReviews.Empty()).Keys);
    }

    private static string[] Lines(Review review, string file)
        => Encoding.UTF8.GetString(DataFiles.Of(review)[file]).TrimEnd().Split("\r\n");
}
