using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using NodaTime;

namespace ClimateLens.Analysis.Crops;

/// <summary>Which crop of a house stands in the period.</summary>
internal static class StandingCrop
{
    /// <summary>The first crop of the nursery file that stands in the period: potted before its end, not sold before its start; null when there is none.</summary>
    public static CropSettings? Of(HouseInput input)
    {
        DateTimeZone zone = input.Nursery.Zone;
        LocalDate first = input.Period.Start.InZone(zone).Date, end = input.Period.End.InZone(zone).Date;
        return input.House.Crops.FirstOrDefault(crop => (crop.Potted is null || crop.Potted < end) && (crop.Sale is null || crop.Sale > first));
    }
}
