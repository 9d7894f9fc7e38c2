using ClimateLens.Science.Balance;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Balance;

/// <summary>A house whose humidity is made by the equations themselves with known parameters, under made-up weather and waterings.</summary>
internal static class MadeUpBalance
{
    public const double StepHours = 0.25;
    public const int Day = 96;

    public static readonly BalanceTerms AllTerms = new(true, true, true, true, true, true, true, true);

    /// <summary>Weather, vents and waterings of some days; the humidity is still 12 g/m³ throughout.</summary>
    public static BalanceInputs Drivers(ulong seed, int days)
    {
        var random = new SeededRandom(seed);
        int steps = days * Day;
        double[] air = new double[steps], outside = new double[steps], sun = new double[steps], cover = new double[steps];
        double[] vent = new double[steps], wind = new double[steps], fan = new double[steps], coverC = new double[steps];
        double[] leaf = new double[steps], floor = new double[steps], humidity = new double[steps];
        int[] day = new int[steps];
        double moist = 7, cold = 8;
        for (int d = 0; d < days; d++)
        {
            double bright = random.NextDouble(), windy = 1 + (5 * random.NextDouble()), fans = random.NextDouble() < 0.4 ? 1 : 0;
            moist = Math.Clamp(moist + random.NextNormal(), 3, 11);
            cold = Math.Clamp(cold + random.NextNormal(), 3, 14);
            for (int i = 0; i < Day; i++)
            {
                int step = (d * Day) + i;
                double noon = Math.Max(0, Math.Sin((i - 26) * Math.PI / 44));
                day[step] = d;
                sun[step] = 450 * bright * noon;
                air[step] = 17 + (sun[step] / 70);
                outside[step] = moist;
                cover[step] = 0.4 + (0.5 * d / days);
                vent[step] = Math.Clamp((air[step] - 19) / 6, 0, 1) * (0.5 + (0.5 * random.NextDouble()));
                wind[step] = windy * (0.7 + (0.6 * random.NextDouble()));
                fan[step] = i is > 30 and < 50 ? fans : 0;
                coverC[step] = cold + (sun[step] / 60);
                humidity[step] = 12;
            }

            Water(d % 3 == 0 ? leaf : d % 3 == 1 ? floor : [], (d * Day) + 30 + (30 * random.NextDouble()));
        }

        return new()
        {
            StepHours = StepHours, Day = day, HumidityGm3 = humidity, AirC = air, OutsideGm3 = outside, SunWm2 = sun, Cover = cover, Vent = vent,
            WindMs = wind, Fan = fan, CoverC = coverC, LeafWetted = leaf, FloorWetted = floor,
        };
    }

    /// <summary>The humidity that the parameters make, with an error of a sensor that hangs together from step to step.</summary>
    public static BalanceInputs Measured(BalanceInputs drivers, double[] parameters, ulong seed, double errorGm3)
    {
        var random = new SeededRandom(seed);
        double[] humidity = BalanceReplay.Run(drivers, AllTerms, parameters);
        humidity[0] = drivers.HumidityGm3.Span[0];
        double error = 0;
        for (int i = 0; i < humidity.Length; i++)
        {
            error = (0.8 * error) + (0.6 * errorGm3 * random.NextNormal());
            humidity[i] += error;
        }

        return drivers with { HumidityGm3 = humidity };
    }

    /// <summary>Parameters that a house could have: typical ones times 0.5 to 1.6.</summary>
    public static double[] Parameters(SeededRandom random) =>
        [.. TermCatalogue.All.Select(info => Math.Clamp(info.Typical * random.NextUniform(0.5, 1.6), info.Low, info.High))];

    private static void Water(double[] column, double start) => WettedShare.Add(column, start, start + 2, 1);
}
