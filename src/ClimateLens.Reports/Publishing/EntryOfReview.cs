using System.Text.Json;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Data;

namespace ClimateLens.Reports.Publishing;

/// <summary>What the site's index says of a page, read out of the page's review.json.</summary>
internal static class EntryOfReview
{
    /// <summary>The entry; null where the review cannot be read or tells of another page. Its maker is not known.</summary>
    public static SiteEntry? Read(SiteFolder site, string folder)
    {
        try
        {
            if (site.Read($"{folder}/{DataFiles.Review}") is not { } json)
            {
                return null;
            }

            using JsonDocument review = JsonDocument.Parse(json);
            return Of(review.RootElement, folder);
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null; // of another version, or damaged: the next run makes the page again
        }
    }

    private static SiteEntry? Of(JsonElement review, string folder)
    {
        JsonElement house = review.GetProperty("house"), coverage = review.GetProperty("coverage"), provenance = review.GetProperty("provenance");
        string id = house.GetProperty("id").GetString()!;
        string period = folder[(folder.LastIndexOf('/') + 1)..];
        Estimate? risk = EstimateOf(review, "riskHours");
        return folder != SitePublisher.FolderOf(id, period) ? null : new SiteEntry(
            new HouseWeekSummary(
                id,
                house.GetProperty("name").GetString()!,
                period,
                risk?.Value,
                risk?.Low,
                risk?.High,
                coverage.GetProperty("expectedHours").GetInt32(),
                coverage.GetProperty("hoursWithData").GetInt32(),
                provenance.GetProperty("files").EnumerateArray().Sum(f => f.GetProperty("setAside").GetInt32()),
                $"{folder}/index.html",
                provenance.GetProperty("inputHash").GetString()!),
            house.GetProperty("nursery").GetString()!,
            house.GetProperty("invented").GetBoolean(),
            Maker: "",
            review.GetProperty("period").GetProperty("to").GetString()!,
            SaidFirst(review),
            SeasonOf(review))
        {
            Before = EstimateOf(review, "riskHoursBefore"),
        };
    }

    /// <summary>As <see cref="SeasonFacts.Of"/>, from the written review.</summary>
    private static SeasonFacts SeasonOf(JsonElement review)
    {
        JsonElement[] hours = [.. review.GetProperty("hours").EnumerateArray().Select(h => h.GetProperty("wet"))];
        JsonElement[]? waterings = Items(review, "waterings");
        JsonElement canopy = review.GetProperty("canopy"), pots = review.GetProperty("pots"), records = review.GetProperty("records");
        JsonElement[] wetting = [.. (waterings ?? []).Where(w => w.GetProperty("wetsLeaves").ValueKind == JsonValueKind.True)];
        return new SeasonFacts(
            hours.Any(h => h.ValueKind != JsonValueKind.Null) ? hours.Count(h => h.ValueKind == JsonValueKind.True) : null,
            canopy.ValueKind == JsonValueKind.Object ? canopy.GetProperty("cover").GetProperty("value").GetDouble() : null,
            waterings is null ? null : wetting.Length,
            wetting.Count(w => w.GetProperty("afterCutOff").ValueKind == JsonValueKind.True),
            pots.ValueKind == JsonValueKind.Object ? pots.GetProperty("count").GetInt32() : 0,
            Items(pots, "jumps")?.Length ?? 0,
            Items(pots, "dryDowns")?.Length ?? 0,
            Items(records, "treatments")?.Length ?? 0);
    }

    private static JsonElement[]? Items(JsonElement of, string key)
        => of.ValueKind == JsonValueKind.Object && of.TryGetProperty(key, out JsonElement list) && list.ValueKind == JsonValueKind.Array ? [.. list.EnumerateArray()] : null;

    private static string SaidFirst(JsonElement review)
    {
        JsonElement[] findings = [.. review.GetProperty("findings").EnumerateArray()];
        return findings.Length == 0 ? "" : findings.MinBy(f => f.GetProperty("rank").GetInt32()).GetProperty("text").GetString()!;
    }

    private static Estimate? EstimateOf(JsonElement review, string key)
        => review.TryGetProperty(key, out JsonElement e) && e.ValueKind == JsonValueKind.Object
            ? new Estimate(e.GetProperty("value").GetDouble(), e.GetProperty("low").GetDouble(), e.GetProperty("high").GetDouble())
            : null;
}
