using ClimateLens.Analysis.Reviews;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

/// <summary>A page can be made again from its review.json: what was read says what was written.</summary>
public sealed class ReviewRoundTripTests
{
    [Theory]
    [InlineData("2025-W43")]
    [InlineData("2026-W13")]
    public void Read_WhatWasWritten_IsWrittenAlike(string week)
    {
        byte[] written = ReviewJson.Write(SampleReviews.Rich(week));
        Review read = ReviewJson.Read(written);
        Assert.Equal(written, ReviewJson.Write(read));
    }

    [Fact]
    public void Read_EmptyReview_IsWrittenAlike()
    {
        byte[] written = ReviewJson.Write(SampleReviews.Empty());
        Assert.Equal(written, ReviewJson.Write(ReviewJson.Read(written)));
    }
}
