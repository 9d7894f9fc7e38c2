using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Pages;

namespace ClimateLens.Reports.Publishing;

/// <summary>One published page as site.json keeps it.</summary>
/// <param name="Summary">The page in a line.</param>
/// <param name="Nursery">Nursery name.</param>
/// <param name="Invented">Whether the nursery is invented.</param>
/// <param name="Maker">Fingerprint of the program and of the options that made it.</param>
/// <param name="Ended">End of the period, ISO 8601 with offset.</param>
/// <param name="Said">The finding that comes first, as a sentence.</param>
/// <param name="Season">What the page of the season keeps of it.</param>
internal sealed record SiteEntry(HouseWeekSummary Summary, string Nursery, bool Invented, string Maker, string Ended, string Said, SeasonFacts Season)
{
    /// <summary>Fingerprint of what made the review behind the page; empty where not known.</summary>
    public string ReviewMaker { get; init; } = "";

    /// <summary>What the store told of the input when it was last read, so that it need not be read to know that it is the same; empty where not known.</summary>
    public string Trace { get; init; } = "";

    /// <summary>Risk hours of the seven days before; null where not known. [h]</summary>
    public Estimate? Before { get; init; }

    /// <summary>Risk hours that the page told before its data changed; null where they did not. [h]</summary>
    public double? Was { get; init; }
}

/// <summary>What a site holds. Only a note of what was done: lost or damaged, it costs the time to make the pages again.</summary>
internal sealed record SiteState(int Version, string? RunKey, string Maker, ImmutableArray<SiteEntry> Entries)
{
    public const int CurrentVersion = 2;

    public static SiteState Empty { get; } = new(CurrentVersion, null, "", []);

    /// <summary>Reads what <see cref="Write"/> wrote; anything else is an empty site.</summary>
    public static SiteState Read(ReadOnlySpan<byte> json)
    {
        try
        {
            SiteState? state = JsonSerializer.Deserialize(json, SiteStateContext.Default.SiteState);
            return state is { Version: CurrentVersion, Entries.IsDefault: false } && state.Entries.All(e => e?.Summary is not null) ? state : Empty;
        }
        catch (JsonException)
        {
            return Empty;
        }
    }

    public byte[] Write() => [.. JsonSerializer.SerializeToUtf8Bytes(this, SiteStateContext.Default.SiteState), (byte)'\n'];

    /// <summary>Newest period first, then houses as people count them.</summary>
    public static ImmutableArray<SiteEntry> InOrder(IEnumerable<SiteEntry> entries) =>
    [
        .. entries
            .OrderByDescending(e => SitePeriod.Of(e.Summary.Period).From ?? NodaTime.LocalDate.MinIsoValue)
            .ThenByDescending(e => e.Summary.Period, StringComparer.Ordinal)
            .ThenBy(e => e.Summary.House, NaturalOrder.Instance),
    ];
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    WriteIndented = true,
    NewLine = "\n",
    RespectRequiredConstructorParameters = true,
    RespectNullableAnnotations = true)]
[JsonSerializable(typeof(SiteState))]
[JsonSerializable(typeof(SiteEntry))]
internal sealed partial class SiteStateContext : JsonSerializerContext;
