using ClimateLens.Science.Matching;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Matching;

/// <summary>Window means, covariates and ranges by days of small columns, worked out by hand.</summary>
public class MatchingPartsTests
{
    /// <summary>Steps of an hour, one before a start and two after it.</summary>
    private static readonly MatchDesign Hourly = new() { StepHours = 1, BeforeHours = 1, AfterHours = 2, WashoutHours = 1 };

    private static readonly double[] Squares = [0, 1, 4, 9, 16, 25, 36, 49];

    [Theory]
    [InlineData(0, 6, 5)] // three of six known: half is enough
    [InlineData(0, 3, 3)]
    [InlineData(4, 6, 9)]
    [InlineData(1, 4, double.NaN)] // one of three
    [InlineData(1, 2, double.NaN)]
    [InlineData(2, 2, double.NaN)]
    public void Mean_Window_IsThatOfTheKnownWhereHalfAre(int from, int until, double mean)
        => Assert.Equal(mean, new WindowMeans([2, double.NaN, 4, double.PositiveInfinity, double.NaN, 9]).Mean(from, until));

    [Fact]
    public void ShareKnown_IsKnownOverAll()
    {
        Assert.Equal(0.75, new WindowMeans([1, 2, double.NaN, 4]).ShareKnown);
        Assert.Equal(0, new WindowMeans([]).ShareKnown);
    }

    /// <summary>
    /// Squares: before starts 1 and 4 stand 0 and 9, standard deviation 4.5; over their whole stretches the means are 5/3 and 50/3, deviation 7.5. Start 6 has 25 and 110/3.
    /// </summary>
    [Fact]
    public void Row_Levels_AreMeansOverTheDeviationOfThePool()
    {
        CovariateTable table = Table(Hourly, [1, 4], new("before", CovariateKind.Before, Squares), new("throughout", CovariateKind.Throughout, Squares));
        AssertRow([0, 5.0 / 3 / 7.5], table.Row(1));
        AssertRow([2, 50.0 / 3 / 7.5], table.Row(4));
        AssertRow([25 / 4.5, 110.0 / 3 / 7.5], table.Row(6));
        Assert.Empty(table.LeftOut);
        Assert.Equal(2, table.Distance(table.Row(1), table.Row(4), 9), 12); // two values are always two deviations apart
    }

    /// <summary>Half past eleven at night is as near to half past midnight as ten is to eleven: a chord of 2 sin(π/24) over the π/12 of an hour, 0.997 h.</summary>
    [Fact]
    public void Distance_Hours_AreOnADial()
    {
        CovariateTable table = Table(Hourly, [], new MatchCovariate("hour", CovariateKind.HourOfDay, new[] { 23.5, 0.5, 10, 11, 6 }));
        double hour = 2 * Math.Sin(Math.PI / 24) / (Math.PI / 12);
        Assert.Equal(hour, table.Distance(table.Row(0), table.Row(1), 9), 9);
        Assert.Equal(hour, table.Distance(table.Row(2), table.Row(3), 9), 9);
        AssertRow([12 / Math.PI, 0], table.Row(4)); // six o'clock: sine 1, cosine 0
    }

    /// <summary>The limit itself counts, beyond it all is infinite; by the mean over the covariates.</summary>
    [Fact]
    public void Distance_Limit_IsWhereItBecomesInfinite()
    {
        CovariateTable one = Table(Hourly, [1, 4], new MatchCovariate("a", CovariateKind.Before, Squares));
        Assert.Equal(2, one.Distance([0], [2], 3));
        Assert.Equal(2, one.Distance([0], [2], 2));
        Assert.Equal(double.PositiveInfinity, one.Distance([0], [2], 1.99));
        CovariateTable two = Table(Hourly, [1, 4], new("a", CovariateKind.Before, Squares), new("b", CovariateKind.Before, Squares));
        Assert.Equal(Math.Sqrt(2), two.Distance([0, 5], [2, 5], 1.5), 12);
        Assert.Equal(double.PositiveInfinity, two.Distance([0, 5], [2, 5], 1.4));
        Assert.Equal(0, Table(Hourly, []).Distance([], [], 0.5));
    }

    [Fact]
    public void LeftOut_KnownTooRarelyOrOnceOrUnvarying_IsNamed()
    {
        double[] half = [0, 1, double.NaN, 9, double.NaN, double.NaN, 36, double.NaN], third = [0, double.NaN, double.NaN, 9, double.NaN, double.NaN, 36, double.NaN];
        Assert.Equal(["third"], Table(Hourly, [1, 4], new("half", CovariateKind.Before, half), new("third", CovariateKind.Before, third)).LeftOut);
        CovariateTable once = Table(Hourly, [1], new MatchCovariate("once", CovariateKind.Before, Squares));
        Assert.Equal(["once"], once.LeftOut);
        Assert.Equal(0, once.Width);
    }

    /// <summary>What varies by less than a billionth of itself varies by rounding alone; a small unit is no reason.</summary>
    [Theory]
    [InlineData(1e6, 1e-5, false)]
    [InlineData(1e6, 1, true)]
    [InlineData(0, 1e-7, true)]
    public void LeftOut_Variation_IsHeldAgainstTheMean(double level, double step, bool used)
    {
        CovariateTable table = Table(Hourly, [1, 4], new MatchCovariate("a", CovariateKind.Before, Array.ConvertAll(Squares, s => level + (s * step))));
        Assert.Equal(used ? 0 : 1, table.LeftOut.Count);
    }

    /// <summary>All events on one day and all of their likes on another: no draw of days can part them, so the range is the value, (0 + 1 + … + 5)/6 + 1.</summary>
    [Fact]
    public void Ranges_EventsOfOneDay_AreOneDraw()
    {
        List<MatchedEvent> events = [.. Enumerable.Range(0, 6).Select(i => Event(72 + i, 168 + i))];
        Interval range = new DayBlocks(240, Hourly).Ranges(events, 1, (start, _) => start < 168 ? start - 72 : -1, 200, new SeededRandom(1))[0];
        Assert.Equal((3.5, 3.5, 3.5), (range.Value, Math.Round(range.Low, 9), Math.Round(range.High, 9)));
    }

    /// <summary>Two days are one block of both (∛2 rounded up is 2), so there is one draw, however the days differ; at each point.</summary>
    [Fact]
    public void Ranges_TwoDays_AreOneDrawAtEachPoint()
    {
        List<MatchedEvent> events = [Event(2, 30), Event(3, 30), Event(26, 5), Event(28, 5), Event(40, 5)];
        Interval[] ranges = new DayBlocks(48, Hourly).Ranges(events, 2, (start, point) => events.Exists(e => e.Start == start) ? start * (point + 1) : 100, 50, new SeededRandom(1));
        double mean = (2 + 3 + 26 + 28 + 40) / 5.0;
        Assert.Equal(2, ranges.Length);
        Assert.All(ranges.Zip([mean - 100, (2 * mean) - 100]), pair => Assert.All([pair.First.Value, pair.First.Low, pair.First.High], v => Assert.Equal(pair.Second, v, 9)));
    }

    /// <summary>A stretch that is not known at a point is none there, and an event without any counts for nothing: 7 - 2.</summary>
    [Fact]
    public void Ranges_StretchesNotKnown_AreLeftOut()
    {
        List<MatchedEvent> events = [Event(1, 30, 31), Event(2, 30)];
        Interval range = new DayBlocks(48, Hourly).Ranges(events, 1, (start, _) => start == 30 ? double.NaN : start == 31 ? 2 : 7, 50, new SeededRandom(1))[0];
        Assert.Equal((5, double.NaN, double.NaN), (range.Value, range.Low, range.High)); // two events carry no range
    }

    private static MatchedEvent Event(int start, params int[] stretches) => new(start, MatchOutcome.Matched, stretches, 0, 0);

    private static CovariateTable Table(MatchDesign design, List<int> pool, params MatchCovariate[] covariates) => new(covariates, design, pool);

    private static void AssertRow(double[] expected, double[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        Assert.All(expected.Zip(actual), pair => Assert.Equal(pair.First, pair.Second, 12));
    }
}
