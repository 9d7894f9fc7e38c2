using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Foliage;

/// <summary>Water that waterings over the leaves and fog put onto a leaf area.</summary>
/// <remarks>
/// <b>Assumed:</b> a watering over the leaves puts more onto them in every minute than they hold (a boom gives 1 to 5 L/m², leaves hold some
/// 0.2 mm; common practice, no source), and does so on every bench; a fog line that runs puts 0.1 mm an hour onto them (no source, an assumption). A
/// watering without an end lasts one step.
/// </remarks>
internal static class WaterOnLeaves
{
    /// <summary>More than any leaf holds. [mm]</summary>
    public const double Plenty = 10;

    private const double FogMmPerHour = 0.1;

    /// <summary>Water by step. [mm]</summary>
    public static (double[] WaterMm, FoliageBasis Basis) Of(HousePeriod period, FoliageBasis basis)
    {
        TimeAxis axis = period.Frame.Axis;
        double[] water = new double[axis.Count];
        bool any = false;
        foreach (WateringEvent e in period.Events.Where(e => CutOff.Wets(e) == true))
        {
            Instant end = e.End is Instant told && told > e.Start ? told : e.Start + Duration.Epsilon;
            for (int i = Math.Max(0, axis.IndexOf(e.Start)); i < axis.Count && axis.StartOf(i) < end; i++)
            {
                water[i] = Plenty;
                any = true;
            }
        }

        FoliageBasis known = any ? basis.AndAssumed(Phrase.Of("A watering over the leaves fills them with all that they hold, on every bench (common practice, no source).")) : basis;
        if (UsedSeries.Of(period, "fogLine") is double[] fog)
        {
            double anStep = FogMmPerHour * axis.Step.TotalHours;
            for (int i = 0; i < fog.Length; i++)
            {
                water[i] += fog[i] > 0 ? anStep * fog[i] : 0;
            }

            known = known.AndMeasured(Phrase.Of("Fog line.")).AndAssumed(Phrase.Of("A running fog line puts 0.1 mm an hour onto the leaves (no source)."));
        }

        return (water, known);
    }
}
