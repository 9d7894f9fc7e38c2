using System.Text.Json;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Data;
using NodaTime.Text;

namespace ClimateLens.Reports.Publishing;

/// <summary>What a site keeps of a page, from the review behind it.</summary>
internal static class EntryOfReview
{
    /// <summary>The entry of a review; its makers are not known.</summary>
    /// <param name="review">The review.</param>
    /// <param name="folder">Folder of its page.</param>
    public static SiteEntry Of(Review review, string folder) => new(
        new HouseWeekSummary(
            review.House.Id,
            review.House.Name,
            folder[(folder.LastIndexOf('/') + 1)..],
            review.RiskHours?.Value,
            review.RiskHours?.Low,
            review.RiskHours?.High,
            review.Coverage.ExpectedHours,
            review.Coverage.HoursWithData,
            review.Provenance.Files.Sum(f => f.SetAside),
            $"{folder}/index.html",
            review.Provenance.InputHash),
        review.House.Nursery,
        review.House.Invented,
        Maker: "",
        OffsetDateTimePattern.Rfc3339.Format(review.Period.To),
        review.Findings.MinBy(f => f.Rank)?.Text ?? "",
        SeasonFacts.Of(review))
    {
        Before = review.RiskHoursBefore,
    };

    /// <summary>The entry of the review that stands in a folder; null where it cannot be read or tells of another page.</summary>
    public static SiteEntry? Read(SiteFolder site, string folder)
        => ReadReview(site, folder) is { } review && folder == SitePublisher.FolderOf(review.House.Id, folder[(folder.LastIndexOf('/') + 1)..]) ? Of(review, folder) : null;

    /// <summary>The review of a folder; null where there is none, or it is of another version or damaged.</summary>
    public static Review? ReadReview(SiteFolder site, string folder)
    {
        try
        {
            return site.Read($"{folder}/{DataFiles.Review}") is { } json ? ReviewJson.Read(json) : null;
        }
        catch (Exception e) when (e is JsonException or FormatException or InvalidOperationException or ArgumentException)
        {
            return null;
        }
    }
}
