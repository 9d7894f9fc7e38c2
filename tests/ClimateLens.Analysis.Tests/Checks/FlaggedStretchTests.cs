using ClimateLens.Analysis.Reviews;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Checks;

/// <summary>The flag of each value leaves the review with it.</summary>
public sealed class FlaggedStretchTests
{
    private static readonly Instant Start = SyntheticHouse.Week("2025-W42").Input.Period.Start;

    [Fact]
    public void Run_FaultsOfSeveralKinds_AreStretchesThatAddUpToTheCounts()
    {
        Instant off = Start + Duration.FromHours(20), stuck = Start + Duration.FromHours(60), wet = Start + Duration.FromHours(100);
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithAir(t => (t - off).TotalHours is >= 0 and < 2 ? new Air(0, 0)
            : (t - stuck).TotalHours is >= 0 and < 14 ? SyntheticHouse.AutumnAir(t) with { RelativeHumidityPct = 77 }
            : (t - wet).TotalHours is >= 0 and < 3 ? SyntheticHouse.AutumnAir(t) with { RelativeHumidityPct = 102 + Math.Sin(t.ToUnixTimeSeconds()) }
            : SyntheticHouse.AutumnAir(t)).Input);
        foreach (SensorReport sensor in review.Sensors)
        {
            int Steps(string flag) => (int)sensor.Flagged.Where(f => f.Flag == flag).Sum(f => (f.End.ToInstant() - f.Start.ToInstant()).TotalMinutes / 5);
            Assert.Equal((sensor.Flags.Fail, sensor.Flags.Suspect), (Steps("fail"), Steps("suspect")));
            Assert.Equal(sensor.Flagged.OrderBy(f => f.Start.ToInstant()), sensor.Flagged);
        }

        FlaggedStretch zero = review.Sensors.Single(s => s.Channel == "airTemperature").Flagged.Single();
        Assert.Equal((off, off + Duration.FromHours(2), "fail"), (zero.Start.ToInstant(), zero.End.ToInstant(), zero.Flag));
        Assert.Equal(["zero"], zero.Checks.ToArray());
        Assert.Contains(review.Sensors.Single(s => s.Channel == "relativeHumidity").Flagged, f => f.Checks.SequenceEqual(["flatLine"]) && f.Flag == "fail");
    }

    [Fact]
    public void Run_CleanWeek_HasNone()
        => Assert.All(ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir).Input).Sensors, s => Assert.Empty(s.Flagged));
}
