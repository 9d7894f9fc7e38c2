using System.Text.Json;
using ClimateLens.Science.Statistics;
using ClimateLens.Science.Tests.CheckRows;

namespace ClimateLens.Science.Tests.Statistics;

/// <summary>Shares, blocks and skill against published games and values worked out by a separate program.</summary>
public class StatisticsRowTests
{
    public static TheoryData<int, string> Games => Rows("shapley");

    public static TheoryData<int, string> Blocks => Rows("block_length_n_cuberoot");

    public static TheoryData<int, string> Skills => Rows("mse_skill_vs_persistence");

    [Theory]
    [MemberData(nameof(Games))]
    public void Shapley_PublishedGames_GiveThePublishedShares(int index, string source)
    {
        CheckRow row = CheckRow.Of("stats_checks")[index];
        double[] expected = Numbers(row.Json.GetProperty("expected")), actual = ShapleyValues.Of(Numbers(row.Inputs.GetProperty("values")));
        Assert.Equal(expected.Length, actual.Length);
        for (int i = 0; i < actual.Length; i++)
        {
            Assert.True(Math.Abs(expected[i] - actual[i]) <= row.Tolerance, FormattableString.Invariant($"{row}: {actual[i]:R}; {source}"));
        }
    }

    [Theory]
    [MemberData(nameof(Blocks))]
    public void BlockLength_IsTheCubeRootRoundedUp(int index, string source)
    {
        CheckRow row = CheckRow.Of("stats_checks")[index];
        Assert.True(MovingBlockBootstrap.BlockLength((int)row.Input("n")) == (int)Math.Ceiling(row.Expected), $"{row}; {source}");
    }

    [Theory]
    [MemberData(nameof(Skills))]
    public void Skill_OverPersistence_IsTheKnownOne(int index, string source)
    {
        CheckRow row = CheckRow.Of("stats_checks")[index];
        var score = ForecastSkill.Of(
            Numbers(row.Inputs.GetProperty("obs")), Numbers(row.Inputs.GetProperty("forecast")), Numbers(row.Inputs.GetProperty("persistence")));
        Assert.True(Math.Abs(score.Skill - row.Expected) <= row.Tolerance, FormattableString.Invariant($"{row}: {score.Skill:R}; {source}"));
    }

    private static TheoryData<int, string> Rows(string quantity) => CheckRow.Theory("stats_checks", row => row.Quantity == quantity);

    internal static double[] Numbers(JsonElement array) => [.. array.EnumerateArray().Select(n => n.GetDouble())];
}
