using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Leaf;
using ClimateLens.Science.Wetness;
using NodaTime;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>How much water leaves could still have lost on a day after a watering.</summary>
/// <remarks>
/// <b>Formula:</b> what evaporates of a film that is kept full, by <see cref="FoliageFilm"/>, from the end of the watering to sunset. Leaves hold some 0.2 mm: with less than that left they go wet into the night. <b>Source, error:</b> those of the film.
/// </remarks>
internal sealed class DryingLeft(HousePeriod period, FoliageHours foliage)
{
    private const double MostUnknown = 0.1;

    /// <summary>What could evaporate from one moment to another; null where the weather of the leaves is not known for more than a tenth of it, 0 for no time. [mm]</summary>
    public double? Mm(Instant from, Instant to)
    {
        TimeAxis axis = period.Frame.Axis;
        int first = axis.IndexOf(from), last = axis.IndexOf(to);
        if (first < 0 || last > axis.Count)
        {
            return null;
        }

        if (last <= first)
        {
            return 0;
        }

        LeafClimate day = foliage.Climate.Between(first, last);
        double[] leaf = new double[day.Length], film = new double[day.Length], water = new double[day.Length];
        Array.Fill(water, WaterOnLeaves.Plenty);
        FilmBudget budget = FoliageFilm.Run(day, water, axis.Step.TotalSeconds, foliage.Film, foliage.Film.CapacityMm, leaf, film);
        int unknown = leaf.Count(double.IsNaN);
        return unknown > MostUnknown * leaf.Length ? null : budget.EvaporatedMm * leaf.Length / (leaf.Length - unknown);
    }
}
