using ClimateLens.Science.Matching;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Matching;

/// <summary>
/// Four weeks of absolute humidity in half hours: a daily swing, more on sunny days, a level that wanders from day to day, noise that hangs together, and a rise
/// after each watering that is known exactly.
/// </summary>
internal sealed class MadeUpHouse
{
    public const int Day = 48, Days = 28, Steps = Day * Days, After = 12;

    public MadeUpHouse(ulong seed, double rise, Func<int, double, bool> watered)
    {
        var random = new SeededRandom(seed);
        double wander = 0, noise = 0;
        List<int> starts = [];
        for (int day = 0; day < Days; day++)
        {
            double bright = random.NextDouble();
            wander = (0.7 * wander) + (0.8 * random.NextNormal());
            for (int i = 0; i < Day; i++)
            {
                int step = (day * Day) + i;
                double hour = i / 2.0;
                Hour[step] = hour;
                Sun[step] = 600 * bright * Math.Max(0, Math.Sin((hour - 6) * Math.PI / 12));
                noise = (0.8 * noise) + (0.15 * random.NextNormal());
                Humidity[step] = 12 + wander + (Sun[step] / 200) + noise;
                Outside[step] = 8 + wander + (0.2 * random.NextNormal());
            }

            if (watered(day, bright))
            {
                starts.Add((day * Day) + 24 + (2 * (int)(random.NextDouble() * 3)));
            }
        }

        Starts = starts;
        foreach (int start in starts)
        {
            Treated[start] = true;
            for (int lag = 0; lag < 2 * Day && start + lag < Steps; lag++)
            {
                Humidity[start + lag] += rise * Math.Exp(-lag / 6.0); // three hours
            }
        }

        Truth = rise * Enumerable.Range(0, After).Average(lag => Math.Exp(-lag / 6.0));
    }

    public double[] Hour { get; } = new double[Steps];

    public double[] Sun { get; } = new double[Steps];

    public double[] Outside { get; } = new double[Steps];

    public double[] Humidity { get; } = new double[Steps];

    public bool[] Treated { get; } = new bool[Steps];

    public IReadOnlyList<int> Starts { get; }

    /// <summary>True mean rise over the six hours after the start.</summary>
    public double Truth { get; }

    public static MatchDesign Design { get; } = new() { StepHours = 0.5, Draws = 500 };

    public MatchCovariate[] Covariates =>
    [
        new("hour", CovariateKind.HourOfDay, Hour),
        new("sun", CovariateKind.Throughout, Sun),
        new("outside humidity", CovariateKind.Throughout, Outside),
    ];

    public MatchedEffect Effect(MatchDesign? design = null) => EventMatching.Of(Humidity, Treated, Starts, Covariates, design ?? Design);
}
