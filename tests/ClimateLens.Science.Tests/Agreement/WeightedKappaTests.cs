using System.Text.Json;
using ClimateLens.Science.Agreement;
using ClimateLens.Science.Tests.CheckRows;
using ClimateLens.Science.Tests.Statistics;
using CsCheck;

namespace ClimateLens.Science.Tests.Agreement;

public class WeightedKappaTests
{
    public static TheoryData<int, string> Kappas => CheckRow.Theory("agreement_checks", row => row.Quantity.StartsWith("kappa", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Kappas))]
    public void Of_CheckRows_IsTheirValue(int index, string source)
    {
        CheckRow row = CheckRow.Of("agreement_checks")[index];
        AgreementTable table = TableOf(row);
        double actual = row.Has("disagreement_weights")
            ? WeightedKappa.Of(table, (i, j) => row.Inputs.GetProperty("disagreement_weights")[i][j].GetDouble())
            : WeightedKappa.Of(table, row.Quantity switch
            {
                "kappa_unweighted" => KappaWeights.None,
                "kappa_weighted_linear" => KappaWeights.Linear,
                "kappa_weighted_quadratic" => KappaWeights.Quadratic,
                _ => throw new InvalidOperationException(row.Quantity),
            });
        Assert.True(Math.Abs(actual - row.Expected) <= row.Tolerance, FormattableString.Invariant($"{row}: {actual:R}; {source}"));
    }

    [Theory]
    [InlineData(KappaWeights.None, 0.1293, 0.06860)]
    [InlineData(KappaWeights.Linear, 0.2374, 0.07832)]
    public void StandardError_MarriedCouplesTable_IsThePrintedOne(KappaWeights weights, double kappa, double error)
    {
        // Data and output of Kappa in the R package vcd, from memory; its code for the standard error was seen [VCD].
        var table = AgreementTable.Of(4, 7, 7, 2, 3, 2, 8, 3, 7, 1, 5, 4, 9, 2, 8, 9, 14);
        Assert.Equal(kappa, WeightedKappa.Of(table, weights), 4);
        Assert.Equal(error, WeightedKappa.StandardError(table, weights), 5);
    }

    [Fact]
    public void Of_LevelsThatNobodyUsed_ChangesNothing()
    {
        (int, int)[] pairs = [(0, 0), (1, 2), (2, 2), (1, 1), (2, 1), (0, 1), (2, 2)];
        foreach (KappaWeights weights in Enum.GetValues<KappaWeights>())
        {
            Assert.Equal(WeightedKappa.Of(AgreementTable.OfPairs(3, pairs), weights), WeightedKappa.Of(AgreementTable.OfPairs(5, pairs), weights), 12);
        }
    }

    [Fact]
    public void Of_WholeLevelsCountedInHalves_IsTheSameKappa()
    {
        // Levels on a scale of halves: distances double, and kappa does not mind.
        (int First, int Second)[] pairs = [(0, 0), (1, 2), (2, 2), (1, 1), (4, 3), (0, 1), (3, 3)];
        Assert.Equal(
            WeightedKappa.Of(AgreementTable.OfPairs(5, pairs), KappaWeights.Quadratic),
            WeightedKappa.Of(AgreementTable.OfPairs(9, pairs.Select(p => (2 * p.First, 2 * p.Second))), KappaWeights.Quadratic), 12);
    }

    [Fact]
    public void Of_SameLevelsThroughout_IsOneAndOfOneLevelNotKnown()
    {
        Assert.Equal(1, WeightedKappa.Of(AgreementTable.OfPairs(5, [(0, 0), (3, 3), (4, 4)]), KappaWeights.Linear));
        Assert.True(double.IsNaN(WeightedKappa.Of(AgreementTable.OfPairs(5, [(2, 2), (2, 2)]), KappaWeights.Linear)));
    }

    [Fact]
    public void Of_PeopleChanged_IsTheSame() =>
        Gen.Int[0, 4].Select(Gen.Int[0, 4]).Array[3, 40].Sample(pairs =>
        {
            double one = WeightedKappa.Of(AgreementTable.OfPairs(5, pairs), KappaWeights.Quadratic);
            double other = WeightedKappa.Of(AgreementTable.OfPairs(5, pairs.Select(p => (p.Item2, p.Item1))), KappaWeights.Quadratic);
            return double.IsNaN(one) ? double.IsNaN(other) : Math.Abs(one - other) < 1e-12 && one <= 1;
        });

    [Fact]
    public void OfPairs_LevelOutsideTheScale_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => AgreementTable.OfPairs(5, [(5, 0)]));
        Assert.Throws<ArgumentException>(() => AgreementTable.Of(3, 1, 2, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => AgreementTable.Of(2, 1, -1, 0, 1));
    }

    private static AgreementTable TableOf(CheckRow row)
    {
        if (row.Has("table"))
        {
            JsonElement table = row.Inputs.GetProperty("table");
            return AgreementTable.Of(table.GetArrayLength(), [.. table.EnumerateArray().SelectMany(StatisticsRowTests.Numbers)]);
        }

        double[] first = StatisticsRowTests.Numbers(row.Inputs.GetProperty("rater1")), second = StatisticsRowTests.Numbers(row.Inputs.GetProperty("rater2"));
        return AgreementTable.OfPairs(row.Inputs.GetProperty("categories").GetArrayLength(), first.Zip(second, (a, b) => ((int)a - 1, (int)b - 1)));
    }

    [Fact]
    public void Table_LevelThatIsNone_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => AgreementTable.Of(1, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => AgreementTable.OfPairs(3, [(0, 3)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => AgreementTable.OfPairs(3, [(3, 0)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => AgreementTable.OfPairs(3, [(0, -1)]));
    }
}
