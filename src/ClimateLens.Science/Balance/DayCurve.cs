namespace ClimateLens.Science.Balance;

/// <summary>What one would say of a day's humidity without any model.</summary>
internal sealed class DayCurve
{
    /// <param name="inputs">The readings.</param>
    /// <param name="leaveOut">Days that the mean curve may not know.</param>
    public DayCurve(BalanceInputs inputs, Predicate<int> leaveOut)
    {
        ReadOnlySpan<double> measured = inputs.HumidityGm3.Span;
        ReadOnlySpan<int> day = inputs.Day.Span;
        int[] ofDay = StepsOfDay.Of(inputs);
        int length = (int)Math.Round(24 / inputs.StepHours);
        double[] sums = new double[length + (int)Math.Ceiling(1 / inputs.StepHours) + 1]; // a day may have 25 hours
        int[] counts = new int[sums.Length];
        for (int i = 0; i < ofDay.Length; i++)
        {
            ofDay[i] = Math.Min(ofDay[i], sums.Length - 1);
            if (double.IsFinite(measured[i]) && !leaveOut(day[i]))
            {
                sums[ofDay[i]] += measured[i];
                counts[ofDay[i]]++;
            }
        }

        Mean = new double[inputs.Steps];
        DayBefore = new double[inputs.Steps];
        for (int i = 0; i < Mean.Length; i++)
        {
            Mean[i] = sums[ofDay[i]] / counts[ofDay[i]];
            DayBefore[i] = i >= length ? measured[i - length] : double.NaN;
        }
    }

    /// <summary>Mean of the other days at the same time of day. [g/m³]</summary>
    public double[] Mean { get; }

    /// <summary>Humidity 24 hours before. [g/m³]</summary>
    public double[] DayBefore { get; }
}
