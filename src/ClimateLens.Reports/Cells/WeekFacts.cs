using ClimateLens.Analysis.Reviews;
using NodaTime;

namespace ClimateLens.Reports.Cells;

/// <summary>Counts taken from a review that several cells show.</summary>
/// <param name="LeafWettings">Waterings known to wet leaves, or null when nothing tells of waterings.</param>
/// <param name="LateLeafWettings">Those of them known to have ended after the cut-off.</param>
/// <param name="UnknownHours">Hours of which the risk is not known.</param>
/// <param name="UnjudgedWaterings">Waterings of which the data do not tell whether they wetted leaves, or whether in time.</param>
/// <param name="WetHours">Hours in which leaves were wet for at least half of the time.</param>
/// <param name="LongestRun">Longest unbroken run of risk hours, the first of equals; null when there is none.</param>
public sealed record WeekFacts(int? LeafWettings, int LateLeafWettings, int UnknownHours, int UnjudgedWaterings, int WetHours, RiskRun? LongestRun)
{
    /// <summary>Counts.</summary>
    public static WeekFacts Of(Review review)
    {
        ArgumentNullException.ThrowIfNull(review);
        var wettings = review.Waterings?.Where(w => w.WetsLeaves == true).ToList();
        return new WeekFacts(
            wettings?.Count,
            wettings?.Count(w => w.AfterCutOff == true) ?? 0,
            review.Hours.Count(h => RiskLevels.Of(h) == RiskLevel.Unknown),
            review.Waterings?.Count(w => w.WetsLeaves is null || (w.WetsLeaves == true && w.AfterCutOff is null)) ?? 0,
            review.Hours.Count(h => h.Wet == true),
            Longest(review));
    }

    private static RiskRun? Longest(Review review)
    {
        RiskRun? best = null;
        RiskRun? run = null;
        foreach (ReviewHour hour in review.Hours)
        {
            run = hour.Risk != true ? null : run is null ? new RiskRun(hour.Start, 1) : run with { Hours = run.Hours + 1 };
            best = run is not null && run.Hours > (best?.Hours ?? 0) ? run : best;
        }

        return best;
    }
}

/// <summary>An unbroken run of risk hours.</summary>
/// <param name="Start">Start.</param>
/// <param name="Hours">Length. [h]</param>
public sealed record RiskRun(OffsetDateTime Start, int Hours)
{
    /// <summary>End, exclusive, at the offset of the start.</summary>
    public OffsetDateTime End => Start + Duration.FromHours(Hours);
}
