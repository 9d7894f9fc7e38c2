namespace ClimateLens.Analysis.Foliage;

/// <summary>How the air of a house would differ from what was measured, step by step; nothing at first.</summary>
/// <param name="steps">Steps of run-in and period.</param>
/// <param name="stepsPerHour">Steps in an hour.</param>
internal sealed class AirChange(int steps, int stepsPerHour)
{
    /// <summary>Added to the air temperature. [K]</summary>
    public double[] TemperatureK { get; } = new double[steps];

    /// <summary>Added to the relative humidity, at the changed temperature. [points of %]</summary>
    public double[] HumidityPct { get; } = new double[steps];

    /// <summary>Mean over an hour of <see cref="TemperatureK"/>. [K]</summary>
    public double HourTemperatureK(int hour) => Mean(TemperatureK, hour);

    /// <summary>Mean over an hour of <see cref="HumidityPct"/>. [points of %]</summary>
    public double HourHumidityPct(int hour) => Mean(HumidityPct, hour);

    private double Mean(double[] values, int hour)
    {
        int from = hour * stepsPerHour, to = Math.Min(values.Length, from + stepsPerHour);
        double sum = 0;
        for (int i = from; i < to; i++)
        {
            sum += values[i];
        }

        return sum / (to - from);
    }
}
