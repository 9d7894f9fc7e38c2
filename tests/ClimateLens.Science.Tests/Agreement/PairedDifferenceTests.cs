using ClimateLens.Science.Agreement;
using ClimateLens.Science.Tests.CheckRows;
using ClimateLens.Science.Tests.Statistics;

namespace ClimateLens.Science.Tests.Agreement;

public class PairedDifferenceTests
{
    public static TheoryData<int, string> Rows => CheckRow.Theory("agreement_checks", row => row.Quantity.StartsWith("bland", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Rows))]
    public void Of_PublishedPairs_GiveThePublishedLimits(int index, string source)
    {
        CheckRow row = CheckRow.Of("agreement_checks")[index];
        double actual = row.Quantity == "bland_altman_se_limit"
            ? new PairedDifference((int)row.Input("n"), default, row.Input("sd")).LimitError
            : Value(row);
        Assert.True(Math.Abs(actual - row.Expected) <= row.Tolerance, FormattableString.Invariant($"{row}: {actual:R}; {source}"));
    }

    [Fact]
    public void Of_FewPairs_SaysWhatIsNotKnown()
    {
        Assert.True(double.IsNaN(PairedDifference.Of([], []).Bias.Value));
        PairedDifference one = PairedDifference.Of([3, double.NaN], [2, 1]);
        Assert.Equal((1, 1.0), (one.Count, one.Bias.Value));
        Assert.True(double.IsNaN(one.Bias.Low) && double.IsNaN(one.Deviation));
    }

    [Fact]
    public void Pots_PairedTestOfATextbook_IsItsCount() =>
        // P. Dalgaard, Introductory statistics with R, section 8.3 (seen): difference 10, deviation 10√2, power 0.85: n = 19.96892.
        Assert.Equal(20, SideBySideRound.Pots(10 * Math.Sqrt(2), 10, 0.85));

    [Fact]
    public void Pots_HalfADeviation_IsTheTabulatedCount()
    {
        Assert.Equal(34, SideBySideRound.Pots(1, 0.5, 0.8)); // 33.367 by the exact test, from memory
        Assert.Equal(44, SideBySideRound.Pots(1, 0.5, 0.9)); // 43.995 likewise
    }

    [Fact]
    public void Pots_CoarserGraders_NeedMore()
    {
        Assert.True(SideBySideRound.Pots(1.2) > SideBySideRound.Pots(0.7));
        Assert.Throws<ArgumentOutOfRangeException>(() => SideBySideRound.Pots(0));
    }

    private static double Value(CheckRow row)
    {
        PairedDifference found = PairedDifference.Of(
            StatisticsRowTests.Numbers(row.Inputs.GetProperty("method1")), StatisticsRowTests.Numbers(row.Inputs.GetProperty("method2")));
        return row.Quantity switch
        {
            "bland_altman_bias" => found.Bias.Value,
            "bland_altman_sd" => found.Deviation,
            "bland_altman_lower_1p96" => found.LowerLimit,
            "bland_altman_upper_1p96" => found.UpperLimit,
            _ => throw new InvalidOperationException(row.Quantity),
        };
    }

    /// <summary>Student's own example: extra hours of sleep under two drugs, ten patients (Biometrika 6, 1908; the data set "sleep" of R, whose paired test gives t = 4.0621).</summary>
    [Fact]
    public void Of_StudentsSleepData_IsThePublishedMeanDeviationAndRange()
    {
        PairedDifference sleep = PairedDifference.Of([1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4], [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0]);
        double error = 1.58 / 4.0621; // t is the mean over its standard error
        Assert.Equal(1.58, sleep.Bias.Value, 9);
        Assert.Equal(error * Math.Sqrt(10), sleep.Deviation, 4);
        Assert.Equal(1.58 - (1.8331 * error), sleep.Bias.Low, 4); // 1.8331: t at 0.95 with 9 degrees of freedom, any table
        Assert.Equal(1.58 + (1.8331 * error), sleep.Bias.High, 4);
    }

    [Fact]
    public void Of_ColumnsOfDifferentLengths_AreRefused() => Assert.Throws<ArgumentException>(() => PairedDifference.Of([1, 2], [1]));

    [Fact]
    public void Of_NumbersThatCancelToInfinity_AreLeftOut() => Assert.Equal(1, PairedDifference.Of([double.PositiveInfinity, 3], [1, 2]).Count);
}
