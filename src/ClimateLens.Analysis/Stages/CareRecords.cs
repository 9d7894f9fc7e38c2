using System.Collections.Immutable;
using ClimateLens.Analysis.Care;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery;

namespace ClimateLens.Analysis.Stages;

/// <summary>What the records of treatments, floors, tanks and plants say: rotation, doses, floors, tanks, re-entry, growth. It never picks a product or a rate.</summary>
internal static class CareRecords
{
    /// <summary>Judges the records of a period.</summary>
    public static CareState Of(HousePeriod house)
    {
        HouseInput input = house.Input;
        ImmutableSortedDictionary<string, RecordCount> kinds = KeptRecords.Kinds(input);
        ImmutableArray<Treatment> treatments = Treatments.Of(input);
        return new(
            kinds.Count == 0 ? null : new RecordsReport(
                kinds,
                Doses.Of(input, treatments),
                Treatments.SeasonStart(input),
                Rotation.Groups(input, treatments),
                FloorHistory.Of(house, treatments),
                TankRecords.Of(house),
                Reentry.Of(input, treatments),
                Growth.Of(input),
                KeptRecords.Scouted(input)))
        {
            Treatments = treatments,
        };
    }
}
