using ClimateLens.Analysis.Reviews;
using ClimateLens.TestKit;

namespace ClimateLens.Analysis.Tests;

public sealed class PipelineTests
{
    [Fact]
    public void Run_AutumnWeek_GivesAWholeReview()
    {
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir).Input);
        Assert.Equal("2025-W42", review.Period.Week);
        Assert.Equal(168, review.Hours.Length);
        Assert.Equal(168, review.Coverage.HoursWithData);
        Assert.NotNull(review.RiskHours);
        Assert.NotNull(review.RiskHoursBefore);
        Assert.Equal(review.Hours.Count(h => h.Risk == true), review.RiskHours.Value);
        Assert.InRange(review.RiskHours.Value, review.RiskHours.Low, review.RiskHours.High);
    }
}
