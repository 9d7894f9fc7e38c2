using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.Science.Statistics;

namespace ClimateLens.HouseSimulator.Sensors;

/// <summary>A sensor: a bias that stays, a drift that wanders for hours, a little noise, and an end stop.</summary>
/// <param name="random">Its own stream.</param>
/// <param name="bias">Read too high all the time.</param>
/// <param name="driftDeviation">Standard deviation of the drift.</param>
/// <param name="noiseDeviation">Standard deviation of the noise.</param>
/// <param name="highest">It reads no higher.</param>
public sealed class Sensor(
    SeededRandom random, double bias, double driftDeviation, double noiseDeviation, double highest = double.MaxValue)
{
    private readonly Wanderer _drift = new(random, 72, driftDeviation);

    /// <summary>The next reading, five minutes after the last.</summary>
    public double Read(double truth)
        => Math.Min(highest, truth + bias + _drift.Next() + (noiseDeviation * random.NextNormal()));
}
