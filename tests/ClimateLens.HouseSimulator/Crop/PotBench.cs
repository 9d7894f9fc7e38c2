using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.Science.Statistics;

namespace ClimateLens.HouseSimulator.Crop;

/// <summary>
/// The pots that stand for a house's: two benches, A and B, each with pots that get and use a little more or less
/// than the mean. Water a pot in millilitres.
/// </summary>
public sealed class PotBench
{
    public const int PotsABench = 8;
    public const double WiltingMl = 110, ContainerMl = 480, SaturatedMl = 570;
    private readonly double[] _gain, _use;

    public PotBench(ulong seed, string houseId)
    {
        SeededRandom random = Seeds.Stream(seed, "pots " + houseId);
        WaterMl = new double[2 * PotsABench];
        _gain = Spread(random, 0.06);
        _use = Spread(random, 0.07);
        for (int i = 0; i < WaterMl.Length; i++)
        {
            WaterMl[i] = random.NextUniform(320, 400);
        }
    }

    /// <summary>Water in each pot; bench A first. [mL]</summary>
    public double[] WaterMl { get; }

    public static string BenchOf(int pot) => pot < PotsABench ? "A" : "B";

    /// <summary>Mean over all pots. [mL]</summary>
    public double MeanMl
    {
        get
        {
            double sum = 0;
            foreach (double water in WaterMl)
            {
                sum += water;
            }

            return sum / WaterMl.Length;
        }
    }

    /// <summary>Mean over a bench, or over all for an empty name. [mL]</summary>
    public double BenchMeanMl(string bench)
    {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < WaterMl.Length; i++)
        {
            if (bench.Length == 0 || BenchOf(i) == bench)
            {
                sum += WaterMl[i];
                count++;
            }
        }

        return sum / count;
    }

    /// <summary>Moisture level 1 (wilting point) to 4 (holds all it can against gravity) and on to 5 (free water). [1]</summary>
    public static double Level(double waterMl)
    {
        double share = (waterMl - WiltingMl) / (ContainerMl - WiltingMl);
        double level = share <= 1 ? 1 + (3 * share) : 4 + ((share - 1) * (ContainerMl - WiltingMl) / (SaturatedMl - ContainerMl));
        return Math.Clamp(level, 1, 5);
    }

    /// <summary>Gives a bench water: that much a pot in its mean. What a pot cannot hold runs through. Returns the run-through, mean over all pots. [mL]</summary>
    public double Water(string bench, double meanMl)
    {
        double lost = 0;
        for (int i = 0; i < WaterMl.Length; i++)
        {
            if (bench.Length > 0 && BenchOf(i) != bench)
            {
                continue;
            }

            double filled = WaterMl[i] + (meanMl * _gain[i]);
            WaterMl[i] = Math.Min(filled, SaturatedMl);
            lost += filled - WaterMl[i];
        }

        return lost / WaterMl.Length;
    }

    /// <summary>Takes water from all pots: that much a pot in the mean; negative gives (dew on the medium).</summary>
    public void Use(double meanMl)
    {
        for (int i = 0; i < WaterMl.Length; i++)
        {
            WaterMl[i] -= meanMl * _use[i];
        }
    }

    /// <summary>Free water drains to what the medium holds within about an hour. Returns it, mean over all pots. [mL]</summary>
    public double DrainMinute()
    {
        double lost = 0;
        for (int i = 0; i < WaterMl.Length; i++)
        {
            double free = Math.Max(0, WaterMl[i] - ContainerMl) / 60;
            WaterMl[i] -= free;
            lost += free;
        }

        return lost / WaterMl.Length;
    }

    // Factors with a mean of exactly one within each bench, so that the mean given is the mean received.
    private static double[] Spread(SeededRandom random, double deviation)
    {
        double[] factors = new double[2 * PotsABench];
        for (int bench = 0; bench < 2; bench++)
        {
            Span<double> part = factors.AsSpan(bench * PotsABench, PotsABench);
            double sum = 0;
            for (int i = 0; i < part.Length; i++)
            {
                part[i] = Math.Max(0.6, 1 + (deviation * random.NextNormal()));
                sum += part[i];
            }

            for (int i = 0; i < part.Length; i++)
            {
                part[i] *= part.Length / sum;
            }
        }

        return factors;
    }
}
