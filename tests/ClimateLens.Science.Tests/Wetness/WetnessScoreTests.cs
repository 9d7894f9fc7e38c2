using ClimateLens.Science.Statistics;
using ClimateLens.Science.Wetness;

namespace ClimateLens.Science.Tests.Wetness;

public class WetnessScoreTests
{
    [Fact]
    public void Counts_AllFourCases_AreCountedInHours()
    {
        var counts = WetnessCounts.Of([1, 1, 0, 0, double.NaN, 1, 1], [1, 0, 1, 0, 1, double.NaN, 1], 1800);
        Assert.Equal(new WetnessCounts(1, 0.5, 0.5, 0.5), counts);
        Assert.Equal((2.5, 0.6, 2 / 3.0, 1 / 3.0, 0.0), (counts.Hours, counts.Right, counts.HitShare, counts.FalseAlarmShare, counts.BiasHoursADay));
    }

    [Fact]
    public void Kappa_WorkedTable_IsTheKnownValue() =>
        // Chance agreement of this table is 0.5 and observed 0.7: kappa 0.4 (worked by hand from [COHEN60]'s formula).
        Assert.Equal(0.4, new WetnessCounts(20, 10, 5, 15).Kappa, 12);

    [Fact]
    public void Score_OpinionThatIsTheSensor_HasNoError()
    {
        double[] sensor = Nights(10, 6);
        WetnessScore score = WetnessScore.Of(sensor, sensor, 3600, 1);
        Assert.Equal((10, 240.0, 60.0), (score.Days, score.Counts.Hours, score.Counts.Hits));
        Assert.Equal(new Interval(1, 1, 1), score.Right);
        Assert.Equal(new Interval(0, 0, 0), score.ErrorHoursADay);
    }

    [Fact]
    public void Score_OpinionTwoHoursADayTooLong_SaysSo()
    {
        WetnessScore score = WetnessScore.Of(Nights(10, 8), Nights(10, 6), 3600, 1);
        Assert.Equal(new Interval(2, 2, 2), score.BiasHoursADay);
        Assert.Equal(new Interval(0.25, 0.25, 0.25), score.FalseAlarmShare);
        Assert.Equal(1, score.HitShare.Value);
    }

    [Fact]
    public void Score_FewDays_HasNoRange()
    {
        WetnessScore score = WetnessScore.Of(Nights(4, 8), Nights(4, 6), 3600, 1);
        Assert.Equal((4, 2.0), (score.Days, score.BiasHoursADay.Value));
        Assert.True(double.IsNaN(score.BiasHoursADay.Low));
    }

    [Fact]
    public void Score_DaysMostlyUnknown_AreLeftOut()
    {
        double[] sensor = Nights(6, 6);
        sensor.AsSpan(24, 13).Fill(double.NaN);
        Assert.Equal(5, WetnessScore.Of(Nights(6, 6), sensor, 3600, 1).Days);
        sensor.AsSpan().Fill(double.NaN);
        WetnessScore none = WetnessScore.Of(Nights(6, 6), sensor, 3600, 1);
        Assert.Equal(0, none.Days);
        Assert.True(double.IsNaN(none.Right.Value));
    }

    /// <summary>The range from whole days drawn again holds the true bias about as often as it says.</summary>
    [Fact]
    public void BiasRange_RandomDays_HoldsTheTruthAboutAsOftenAsItSays()
    {
        var random = new SeededRandom(5);
        int held = 0;
        for (int trial = 0; trial < 300; trial++)
        {
            double[] sensor = Nights(21, 8), opinion = Nights(21, 8);
            for (int day = 0; day < 21; day++)
            {
                int more = (int)(random.NextDouble() * 5); // 0 to 4 hours: 2 on average
                opinion.AsSpan((24 * day) + 8, more).Fill(1);
            }

            Interval bias = WetnessScore.Of(opinion, sensor, 3600, (ulong)trial).BiasHoursADay;
            held += bias.Low <= 2 && bias.High >= 2 ? 1 : 0;
        }

        Assert.InRange(held / 300.0, 0.82, 0.95); // 0.9; drawing days again is a little short with 21 of them
    }

    [Theory]
    [InlineData(720, 0.9, 37.8947)] // stats_checks of the notes: computed by a separate program
    [InlineData(168, 0.8, 18.6667)]
    [InlineData(100, 0, 100)]
    [InlineData(100, -0.5, 100)]
    [InlineData(3, 0.99, 1)]
    public void EffectiveCount_OfRelatedValues_IsTheKnownOne(int count, double correlation, double expected) =>
        Assert.Equal(expected, EffectiveCount.Of(count, correlation), 4);

    [Fact]
    public void EffectiveCount_OfARun_SeesHowItHangsTogether()
    {
        var random = new SeededRandom(3);
        double[] run = new double[2000];
        for (int i = 1; i < run.Length; i++)
        {
            run[i] = (0.8 * run[i - 1]) + random.NextNormal();
        }

        Assert.InRange(EffectiveCount.Of(run), 160, 300); // 222 for 0.8
        Assert.Equal(0, EffectiveCount.Of([double.NaN]));
    }

    /// <summary>Days whose first hours are wet.</summary>
    private static double[] Nights(int days, int wetHours) =>
        [.. Enumerable.Range(0, 24 * days).Select(hour => hour % 24 < wetHours ? 1.0 : 0)];
}
