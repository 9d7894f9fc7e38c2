using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery;

namespace ClimateLens.Analysis;

/// <summary>The whole program in one method: what a review does, in the order in which it does it.</summary>
public static class ReviewPipeline
{
    /// <summary>Reviews one house period. Pure: equal inputs give equal reviews.</summary>
    public static Review Run(HouseInput input) => throw new InvalidOperationException("The stages are not wired yet.");
}
