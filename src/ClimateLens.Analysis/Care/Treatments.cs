using System.Collections.Immutable;
using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Treatments;
using NodaTime;

namespace ClimateLens.Analysis.Care;

/// <summary>The treatments of a house in time order, from its records.</summary>
internal static class Treatments
{
    private const int YearDays = 365;

    /// <summary>All that were loaded, up to the end of the period.</summary>
    public static ImmutableArray<Treatment> Of(HouseInput input)
        => [.. input.Records.Where(row => row.Kind == RecordKind.Treatments && row.At < input.Period.End).OrderBy(row => row.At).Select(Read)];

    /// <summary>Start of the season that uses are counted in: the standing crop's potting, else a year before the end of the period.</summary>
    public static LocalDate SeasonStart(HouseInput input)
    {
        LocalDate year = input.Period.End.InZone(input.Nursery.Zone).Date.PlusDays(-YearDays);
        CropSettings? crop = StandingCrop.Of(input);
        return (crop?.Potted ?? crop?.Pinched) is LocalDate start && start > year ? start : year;
    }

    private static Treatment Read(RecordRow row) => new(
        row.At,
        row.Text("bench"),
        row.Text("what"),
        row.Text("purpose").ToLowerInvariant(),
        row.Text("activeIngredient"),
        GroupRuns.CodesOf(row.Text("group")),
        row.Number("rate") is >= 0 and { } rate ? rate : null,
        row.Text("rateUnit"),
        row.Number("volumePerPot") is >= 0 and { } litres ? litres * 1000 : null,
        row.Time("reentryUntil"));
}
