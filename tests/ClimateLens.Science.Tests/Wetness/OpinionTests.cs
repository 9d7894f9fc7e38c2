using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Wetness;
using CsCheck;

namespace ClimateLens.Science.Tests.Wetness;

/// <summary>What each second opinion does with noise, gaps and edges.</summary>
public class OpinionTests
{
    /// <summary>The reason why the tree is unfit under glass: in slow air it is nothing but a limit of humidity, far below that of wet leaves.</summary>
    [Fact]
    public void Tree_InSlowAir_IsNothingButALimitOfHumidity() =>
        Gen.Select(Gen.Double[8, 35], Gen.Double[40, 100], Gen.Double[0, 0.5]).Sample((t, humidity, speed) =>
            DecisionTree.State(t, humidity, t - DewPoint.FromRelativeHumidity(new(t), new(humidity)).Value, speed)
                is var state && (humidity is > 77 and < 83 || state == (humidity >= 83 ? 1 : 0)));

    [Theory]
    [InlineData(18, 78.99)]
    [InlineData(25, 79.97)]
    public void Tree_InSlowWarmAir_IsALimitOfTheDepression(double t, double limitPct)
    {
        // Humidities of a depression of 3.7 K: computed by a separate program (leafwet_checks.json).
        Assert.Equal((0.0, 1.0), (TreeAt(t, limitPct - 0.1), TreeAt(t, limitPct + 0.1)));
    }

    [Fact]
    public void Tree_UnknownOrFrost_IsNotKnown()
    {
        double[] wet = new double[4];
        DecisionTree.Of([18, -1, 18, 18], [90, 90, double.NaN, 90], [16, -3, 16, 16], [0.1, 0.1, 0.1, double.NaN], wet);
        Assert.Equal([1, double.NaN, double.NaN, double.NaN], wet);
    }

    [Fact]
    public void Threshold_AtTheLimitAndGaps_IsWetFromItOn()
    {
        double[] wet = new double[4];
        HumidityThreshold.Default.Of([89.99, 90, double.NaN, 100], wet);
        Assert.Equal([0, 1, double.NaN, 1], wet);
    }

    [Fact]
    public void Depression_NoiseBetweenTheLimits_NeverToggles() =>
        Gen.Double[2.01, 3.79].Array[1, 50].Sample(noise =>
        {
            double[] air = [.. Enumerable.Repeat(18.0, noise.Length + 1)];
            double[] dewPoint = [17, .. noise.Select(d => 18 - d)];
            double[] wet = new double[air.Length];
            DewPointDepression.Default.Of(air, dewPoint, wet);
            return wet.All(state => state == 1);
        });

    [Fact]
    public void Depression_StartAndGapBetweenTheLimits_IsNotKnown()
    {
        double[] wet = new double[5];
        DewPointDepression.Default.Of([18, 18, 18, 18, 18], [15, 17, double.NaN, 15, 14], wet);
        Assert.Equal([double.NaN, 1, double.NaN, double.NaN, 0], wet);
    }

    [Fact]
    public void ExtendedHumidity_FinerSteps_TellTheSameAsHalfHours()
    {
        double[] halfHours = [65, 72, 74, 78, 82, 88, 92, 95, 91, 88.5, 85, 80, 78, 69];
        double[] coarse = new double[halfHours.Length];
        ExtendedHumidity.Default.Of(halfHours, 1800, coarse);
        double[] fiveMinutes = [.. Enumerable.Range(0, (6 * (halfHours.Length - 1)) + 1).Select(i => At(halfHours, i / 6.0))];
        double[] fine = new double[fiveMinutes.Length];
        ExtendedHumidity.Default.Of(fiveMinutes, 300, fine);
        Assert.Equal(coarse, Enumerable.Range(0, halfHours.Length).Select(i => fine[6 * i]));
    }

    [Fact]
    public void ExtendedHumidity_StartBetweenTheLimits_IsNotKnownUntilItMoves()
    {
        double[] wet = new double[4];
        ExtendedHumidity.Default.Of([80, 81, 85, 84], 1800, wet);
        Assert.Equal([double.NaN, double.NaN, 1, 1], wet);
    }

    [Fact]
    public void HourStates_HalfOfTheKnownSteps_Rules()
    {
        double[] hours = new double[4];
        HourStates.Of([1, 1, 0, 0, 1, 0, 0, double.NaN, 1, double.NaN, double.NaN, double.NaN, 1, 0, double.NaN, double.NaN], 4, hours);
        Assert.Equal([1, 0, double.NaN, 1], hours);
    }

    [Fact]
    public void Votes_OpinionsThatPart_AreASharedHour()
    {
        int[] wet = new int[4], known = new int[4];
        double[] share = new double[4];
        var votes = new WetnessVotes(wet, known);
        votes.Add([1, 0, 1, double.NaN]);
        votes.Add([1, 0, 0, double.NaN]);
        votes.Add([1, double.NaN, 0, double.NaN]);
        votes.ShareWet(share);
        Assert.Equal([1, 0, 1 / 3.0, double.NaN], share);
    }

    [Fact]
    public void Opinions_WholeWeeks_AllocateNothing()
    {
        double[] air = new double[2016], humidity = new double[2016], dew = new double[2016], wet = new double[2016], hours = new double[168];
        Array.Fill(humidity, 91);
        void All()
        {
            HumidityThreshold.Default.Of(humidity, wet);
            ExtendedHumidity.Default.Of(humidity, 300, wet);
            DewPointDepression.Default.Of(air, dew, wet);
            DecisionTree.Of(air, humidity, dew, air, wet);
            HourStates.Of(wet, 12, hours);
            WetnessCounts.Of(wet, wet, 300);
        }

        All();
        long before = GC.GetAllocatedBytesForCurrentThread();
        All();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static double TreeAt(double t, double humidity) =>
        DecisionTree.State(t, humidity, t - DewPoint.FromRelativeHumidity(new(t), new(humidity)).Value, 0.1);

    private static double At(double[] values, double place)
    {
        int before = Math.Min((int)place, values.Length - 2);
        return values[before] + ((place - before) * (values[before + 1] - values[before]));
    }
}
