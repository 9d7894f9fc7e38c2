using ClimateLens.Science.Statistics;

namespace ClimateLens.HouseSimulator.Numbers;

/// <summary>A first-order autoregressive process with mean zero: wanders and comes back.</summary>
public sealed class Wanderer
{
    private readonly SeededRandom _random;
    private readonly double _keep;
    private readonly double _kick;

    /// <param name="random">Its own stream.</param>
    /// <param name="memorySteps">Steps after which the correlation has fallen to 1/e; above zero.</param>
    /// <param name="deviation">Standard deviation in the long run.</param>
    public Wanderer(SeededRandom random, double memorySteps, double deviation)
    {
        _random = random;
        _keep = Portable.Exp(-1 / memorySteps);
        _kick = deviation * Math.Sqrt(1 - (_keep * _keep));
        Value = deviation * random.NextNormal();
    }

    public double Value { get; private set; }

    public double Next() => Value = (_keep * Value) + (_kick * _random.NextNormal());
}
