using ClimateLens.TestKit.Simulated;

namespace ClimateLens.EndToEnd.Tests.Simulator;

/// <summary>A small share of the table in docs/validation.md.</summary>
public sealed class RiskRecoveryTests
{
    private static readonly string[] Weeks = ["2025-W38", "2025-W41", "2025-W44"];

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void RiskHours_OfSimulatedWeeks_LieInTheRangeAndNearTheTruthOnAverage(bool canopySensor)
    {
        RecoveredWeek[] weeks = [.. ((ulong[])[1, 2]).SelectMany(seed => RiskRecovery.Of(seed, canopySensor, biased: true, drawnHouses: true, Weeks))];
        Assert.Equal(12, weeks.Length);
        Assert.True(weeks.Count(w => w.Covers) >= 10, string.Join(Environment.NewLine, weeks.Select(w => w.ToString())));
        Assert.InRange(weeks.Average(w => w.Found.Value - w.Truth), -12, 12);
        Assert.True(weeks.Where(w => w.House == "1").Average(w => w.Found.Value) > weeks.Where(w => w.House == "2").Average(w => w.Found.Value) + 20);
    }
}
