using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>
/// Waterings that a water meter tells of: stretches on the house's grid in which it ran, those ten minutes apart or less as one. A step counts as running with more than a fiftieth of the amount that the meter
/// usually counts in a step while it runs, so that a dripping tap is none (both choices of this project, no source).
/// </summary>
internal static class MeteredWaterings
{
    private static readonly Duration MergeGap = Duration.FromMinutes(10);
    private const double Trickle = 0.02;

    /// <summary>Whether the house has a meter of its own.</summary>
    public static bool HasColumns(HouseInput input)
        => input.Batches.Any(b => b.House == input.House.Id && b.Columns.Keys.Any(k => ColumnKey.Parse(k).Channel == "waterVolume"));

    /// <summary>All waterings, by meter and in time order within each.</summary>
    /// <param name="input">The house's settings.</param>
    /// <param name="frame">Its aligned columns.</param>
    /// <param name="series">Its series.</param>
    /// <param name="overGap">Steps whose amount came in a gap before them: nobody knows when.</param>
    public static IEnumerable<WateringEvent> Of(HouseInput input, Frame frame, IEnumerable<Series> series, IReadOnlyDictionary<ColumnKey, bool[]> overGap)
        => series.Where(s => s.Channel.Name == "waterVolume" && s.House == input.House.Id)
            .SelectMany(s => Events(input, frame, s, overGap.TryGetValue(s.Key, out bool[]? gaps) ? gaps : []));

    private static IEnumerable<WateringEvent> Events(HouseInput input, Frame frame, Series meter, bool[] overGap)
    {
        ColumnSettings? settings = input.Nursery.Exports
            .Where(e => e.Kind is null && e.Name == meter.Source && e.House == meter.House)
            .SelectMany(e => e.Columns)
            .FirstOrDefault(c => c.Channel == meter.Channel.Name && c.Sensor == meter.Sensor);
        ImmutableArray<double> litres = frame.Values(meter.Key);
        double usual = Usual(litres);
        int apart = (int)Math.Floor(MergeGap / frame.Axis.Step);
        for (int first = 0; first < litres.Length;)
        {
            if (!Runs(first))
            {
                first++;
                continue;
            }

            int last = first;
            for (int i = first + 1; i < litres.Length && i - last <= apart + 1; i++)
            {
                last = Runs(i) ? i : last;
            }

            double amount = litres.AsSpan()[first..(last + 1)].ToArray().Where(double.IsFinite).Sum();
            yield return new WateringEvent(frame.Axis.StartOf(first), frame.Axis.StartOf(last + 1), settings?.Method, settings?.Bench ?? "", amount, Phrase.Of($"water meter {meter.Key} of \"{meter.Source}\""));
            first = last + 1;
        }

        bool Runs(int step) => litres[step] > Trickle * usual && !(step < overGap.Length && overGap[step]);
    }

    /// <summary>Median of the amounts above a fiftieth of the largest. [L]</summary>
    private static double Usual(ImmutableArray<double> litres)
    {
        double largest = litres.Where(double.IsFinite).DefaultIfEmpty(0).Max();
        double[] running = [.. litres.Where(v => v > Trickle * largest).Order()];
        return running.Length == 0 ? double.PositiveInfinity : running[running.Length / 2];
    }
}
