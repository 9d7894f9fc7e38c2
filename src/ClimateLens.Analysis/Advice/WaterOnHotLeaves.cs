using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>
/// Waterings over leaves that were hot or in strong sun: drops, and feed in them above all, may scorch. Common practice, no source; so are both limits, which are from memory of what growers say. Each counts as half an hour at stake, a choice of this
/// project.
/// </summary>
internal static class WaterOnHotLeaves
{
    public const string Id = "waterOnHotLeaves";

    /// <summary>Leaves from this temperature on are hot. [°C]</summary>
    public const double HotC = 28;

    /// <summary>Sun over the crop from this on is strong. [W/m²]</summary>
    public const double StrongSunWm2 = 350;

    private const int MostFacts = 10;

    public static Candidate? Of(Evidence evidence)
    {
        Watering[] hot = [.. evidence.Waterings.Where(w => w.WetsLeaves == true && (w.LeafTemperatureC >= HotC || w.SunOverCropWm2 >= StrongSunWm2))];
        return hot.Length == 0 ? null : new Candidate(
            Id,
            hot.Length / 2.0,
            Phrase.Of($"{Say.Count(hot.Length, "watering")} over the leaves fell on leaves of {Say.Number(HotC)} °C or more, or in sun of {Say.Number(StrongSunWm2)} W/m² or more over the crop: leaves may scorch, with feed in the water above all."),
            Phrase.Of("Water over the leaves before the sun is on them, or keep water off them; rinse feed off with clear water."),
            Phrase.Of("Common practice, no source, limits too: a caution, not a verdict. Leaf temperature by the model is good to about a kelvin at night and less by day."),
            [.. hot.Take(MostFacts).Select(w => Fact(evidence, w))]);
    }

    private static string Fact(Evidence evidence, Watering w)
    {
        string leaf = w.LeafTemperatureC is double c ? Phrase.Of($"leaves at {c:0} °C") : Phrase.Of("leaf temperature not known");
        string sun = w.SunOverCropWm2 is double watt ? Phrase.Of($", sun over the crop {watt:0} W/m²") : Phrase.Of(", sun not known");
        return $"{Say.Time(w.Start.ToInstant(), evidence.Zone)}{(w.Bench.Length == 0 ? "" : Phrase.Of($", bench {w.Bench}"))}: {leaf}{sun}.";
    }
}
