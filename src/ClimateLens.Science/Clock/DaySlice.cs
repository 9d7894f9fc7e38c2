using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Clock;

/// <summary>The readings from one middle of the dark to the next.</summary>
/// <param name="Day">Number of the day, see <see cref="SunNoons"/>.</param>
/// <param name="From">First reading.</param>
/// <param name="To">End, exclusive.</param>
/// <param name="Dark">Reading in the dark: the tenth percentile. [unit of the curve]</param>
/// <param name="Noise">How far the dark readings spread: from the second percentile to the tenth. [unit of the curve]</param>
/// <param name="Top">Light of the brightest two hours or so, the ninetieth percentile, above the dark. [unit of the curve]</param>
internal sealed record DaySlice(int Day, int From, int To, double Dark, double Noise, double Top)
{
    /// <summary>Days to either side that are looked at for a bright one. [d]</summary>
    private const int Neighbours = 3;

    /// <summary>Light of a bright day of the same time of year. [unit of the curve]</summary>
    public double Bright { get; private init; }

    /// <summary>Cuts a curve half a day away from where its light lies.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="sun">The sun's days.</param>
    /// <param name="aroundMin">Where the light lies, after solar noon. [min]</param>
    public static DaySlice[] Cut(LightCurve curve, SunNoons sun, double aroundMin)
    {
        List<DaySlice> slices = [];
        for (int from = 0; from < curve.Count;)
        {
            int day = sun.DayOf(curve.Minutes[from] - aroundMin);
            double noon = sun.NoonMin(day);
            if (double.IsNaN(noon))
            {
                return []; // outside the years of the almanac
            }

            int to = Math.Max(from + 1, curve.IndexOf(noon + aroundMin + (SunNoons.DayMin / 2)));
            double[] sorted = curve.Sorted(from, to);
            double dark = Quantiles.Of(sorted, 0.1);
            slices.Add(new DaySlice(day, from, to, dark, dark - Quantiles.Of(sorted, 0.02), Quantiles.Of(sorted, 0.9) - dark));
            from = to;
        }

        return [.. slices.Select((slice, at) => slice with { Bright = BrightAround(slices, at) })];
    }

    private static double BrightAround(List<DaySlice> slices, int at)
    {
        double bright = 0;
        for (int i = Math.Max(0, at - (2 * Neighbours)); i <= Math.Min(slices.Count - 1, at + (2 * Neighbours)); i++)
        {
            bright = Math.Abs(slices[i].Day - slices[at].Day) <= Neighbours ? Math.Max(bright, slices[i].Top) : bright;
        }

        return bright;
    }
}
