using System.Collections.Immutable;

namespace ClimateLens.Reports.Publishing;

/// <summary>A page that says something else than when the site was last complete.</summary>
/// <param name="Now">The page.</param>
/// <param name="IsNew">Whether it was not there.</param>
/// <param name="RiskHours">Risk hours that it told then; null where not known. [h]</param>
internal sealed record SiteChange(SiteEntry Now, bool IsNew, double? RiskHours)
{
    /// <summary>The changes, in the order of the pages; none for a site's first run.</summary>
    /// <param name="before">Pages of the last complete run.</param>
    /// <param name="now">All pages.</param>
    public static ImmutableArray<SiteChange> Between(ImmutableArray<SiteEntry> before, ImmutableArray<SiteEntry> now)
    {
        if (before.IsEmpty)
        {
            return [];
        }

        Dictionary<string, SiteEntry> old = before.ToDictionary(e => e.Summary.Page, StringComparer.Ordinal);
        return
        [
            .. now.Where(e => !old.TryGetValue(e.Summary.Page, out SiteEntry? was) || was.Summary.RiskHours != e.Summary.RiskHours || was.Summary.HoursWithData != e.Summary.HoursWithData)
                .Select(e => new SiteChange(e, !old.ContainsKey(e.Summary.Page), old.GetValueOrDefault(e.Summary.Page)?.Summary.RiskHours)),
        ];
    }
}
