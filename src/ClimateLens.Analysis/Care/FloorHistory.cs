using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using NodaTime;

namespace ClimateLens.Analysis.Care;

/// <summary>Growth regulators on floors and benches, and what stands or flooded there since.</summary>
/// <remarks><b>Rule:</b> a growth regulator that fell on a floor or bench can stay there and be taken up by a later crop with the flood water: common practice, no source; the days are the nursery file's.</remarks>
internal static class FloorHistory
{
    /// <summary>What is still to be kept in mind at the end of the period, latest first.</summary>
    public static ImmutableArray<FloorEntry> Of(HousePeriod house, ImmutableArray<Treatment> treatments)
    {
        HouseInput input = house.Input;
        Instant oldest = input.Period.End - Duration.FromDays(input.House.Care.FloorDays);
        var floors = input.Records
            .Where(r => r.Kind == RecordKind.Floors && r.At < input.Period.End && GrowthRegulators.Named(r.Text("what"), r.Text("activeIngredient"), r.Text("note")))
            .Select(r => (r.At, Bench: r.Text("bench"), What: r.Text("activeIngredient") is { Length: > 0 } active ? active : r.Text("what")));
        var sprays = treatments
            .Where(t => GrowthRegulators.Named(t.Purpose, t.ActiveIngredient) && !IsDrench(t.What))
            .Select(t => (t.At, t.Bench, What: t.ActiveIngredient.Length > 0 ? t.ActiveIngredient : t.Purpose));
        return [.. floors.Concat(sprays).Where(f => f.At >= oldest).OrderByDescending(f => f.At).Select(f => Entry(house, f.At, f.Bench, f.What))];
    }

    private static bool IsDrench(string what) => what.Contains("drench", StringComparison.OrdinalIgnoreCase);

    private static FloorEntry Entry(HousePeriod house, Instant at, string bench, string what)
    {
        HouseInput input = house.Input;
        DateTimeZone zone = input.Nursery.Zone;
        LocalDate day = at.InZone(zone).Date, last = (input.Period.End - Duration.Epsilon).InZone(zone).Date;
        CropSettings? next = input.House.Crops.FirstOrDefault(c => c.Potted > day && c.Potted <= last && !(c.Sale < input.Period.Start.InZone(zone).Date));
        int floods = house.Events.Count(e => input.Period.Contains(e.Start) && e.Start > at && e.IsFlood && RecordText.SameBench(e.Bench, bench));
        return new(
            at.InZone(zone).ToOffsetDateTime(),
            bench,
            what,
            Period.DaysBetween(day, last),
            next?.Species,
            next is not null && input.House.Care.SensitiveCrops.Contains(next.Species),
            floods);
    }
}
