using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ClimateLens.Science.Balance;

/// <summary>Runs a balance over its drivers under four sets of parameters at once, without looking at the humidity it is to find.</summary>
internal static class BalanceRun
{
    /// <summary>Humidity at the end of each step under one to four sets.</summary>
    /// <param name="sets">All parameters of each set.</param>
    /// <param name="drivers">What drives it.</param>
    /// <param name="daily">Start from the measured humidity anew with each day; else only after a gap in the drivers.</param>
    /// <param name="result">Receives the humidity of each set side by side, see <see cref="Of"/>; NaN at the steps from which it starts and where it cannot be told. [g/m³]</param>
    /// <remarks>A free run forgets wet surfaces at no midnight: water left on leaves is carried over.</remarks>
    public static void Run(ReadOnlySpan<double[]> sets, BalanceDrivers drivers, bool daily, Span<Vector256<double>> result)
    {
        Span<Vector256<double>> parameters = stackalloc Vector256<double>[sets[0].Length];
        SideBySide(sets, parameters);
        BalanceInputs inputs = drivers.Inputs;
        ReadOnlySpan<double> measured = inputs.HumidityGm3.Span;
        ReadOnlySpan<int> day = inputs.Day.Span;
        ReadOnlySpan<StepDrivers> steps = drivers.Steps;
        VapourState state = default;
        Vector256<double> unknown = Vector256.Create(double.NaN);
        bool running = false;
        for (int i = 0; i < result.Length; i++)
        {
            result[i] = unknown;
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
                state = running ? state.At(measured[i]) : new VapourState(Vector256.Create(measured[i]));
                running = true;
                result[i] = unknown;
            }
        }
    }

    /// <summary>What a run gave for one set.</summary>
    /// <param name="result">The result of the run.</param>
    /// <param name="set">Which set, 0 for the first.</param>
    /// <param name="humidityGm3">Receives it. [g/m³]</param>
    public static void Of(ReadOnlySpan<Vector256<double>> result, int set, Span<double> humidityGm3)
    {
        ReadOnlySpan<double> all = MemoryMarshal.Cast<Vector256<double>, double>(result);
        for (int i = 0; i < humidityGm3.Length; i++)
        {
            humidityGm3[i] = all[(i * Lanes.Count) + set];
        }
    }

    /// <summary>Each parameter of all sets; the last set fills what is left.</summary>
    public static void SideBySide(ReadOnlySpan<double[]> sets, Span<Vector256<double>> parameters)
    {
        int last = sets.Length - 1;
        for (int j = 0; j < parameters.Length; j++)
        {
            parameters[j] = Vector256.Create(sets[0][j], sets[Math.Min(1, last)][j], sets[Math.Min(2, last)][j], sets[last][j]);
        }
    }
}
