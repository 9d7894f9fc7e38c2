namespace ClimateLens.Science.Balance;

/// <summary>Runs a balance over its drivers without looking at the humidity it is to find.</summary>
internal static class BalanceRun
{
    /// <summary>Humidity at the end of each step.</summary>
    /// <param name="parameters">All parameters.</param>
    /// <param name="drivers">What drives it.</param>
    /// <param name="daily">Start from the measured humidity anew with each day; else only after a gap in the drivers.</param>
    /// <param name="result">Receives the humidity; NaN at the steps from which it starts and where it cannot be told. [g/m³]</param>
    /// <remarks>A free run forgets wet surfaces at no midnight: water left on leaves is carried over.</remarks>
    public static void Run(ReadOnlySpan<double> parameters, BalanceDrivers drivers, bool daily, Span<double> result)
    {
        BalanceInputs inputs = drivers.Inputs;
        ReadOnlySpan<double> measured = inputs.HumidityGm3.Span;
        ReadOnlySpan<int> day = inputs.Day.Span;
        ReadOnlySpan<StepDrivers> steps = drivers.Steps;
        VapourState state = default;
        bool running = false;
        for (int i = 0; i < result.Length; i++)
        {
            result[i] = double.NaN;
            if (!drivers.IsKnown(i))
            {
                running = false;
                continue;
            }

            if (running)
            {
                state.Step(parameters, steps[i], inputs.HeightM, inputs.StepHours);
                result[i] = state.HumidityGm3;
            }

            bool newDay = daily && i > 0 && day[i] != day[i - 1];
            if ((!running || newDay) && double.IsFinite(measured[i]))
            {
                state = running ? state.At(measured[i]) : new VapourState(measured[i]);
                running = true;
                result[i] = double.NaN;
            }
        }
    }
}
