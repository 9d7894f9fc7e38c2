using ClimateLens.Science.Balance;

namespace ClimateLens.Analysis.Causes;

/// <summary>What drives the humidity of a house, as columns to learn from: the drivers of the balance, with what of them lingers.</summary>
/// <remarks>
/// <b>Formula:</b> a memory of a driver x with time τ follows <c>m ← m e^(-Δt/τ) + (1 - e^(-Δt/τ)) x</c>; water counts by its amount, <c>m ← m e^(-Δt/τ) + x</c>. Which times τ stand side by side is a choice of this project.
/// </remarks>
internal static class LearnedColumns
{
    /// <summary>Column of the humidity at the end of each step, which is what is learned. [g/m³]</summary>
    public const int Target = 0;

    /// <summary>A column with fewer known steps than this is left out. Choice of this project. [1]</summary>
    private const double FewestShare = 0.8;

    private static readonly double[] WaterHours = [0.5, 2, 6], DriverHours = [2, 6];

    /// <summary>The columns: the humidity, then inputs. A column that is not logged, or hardly, is NaN throughout.</summary>
    /// <param name="inputs">The house in the steps of the balance.</param>
    public static double[][] Of(BalanceInputs inputs)
    {
        double[] hour = [.. StepsOfDay.Of(inputs).Select(step => step * inputs.StepHours)];
        List<double[]> columns =
        [
            inputs.HumidityGm3.ToArray(),
            [.. hour.Select(h => Math.Sin(2 * Math.PI * h / 24))],
            [.. hour.Select(h => Math.Cos(2 * Math.PI * h / 24))],
            .. FirstReading(inputs, hour),
        ];
        foreach (ReadOnlyMemory<double> driver in (ReadOnlyMemory<double>[])[inputs.OutsideGm3, inputs.SunWm2, inputs.AirC])
        {
            columns.Add(Logged(driver, inputs.Steps));
            columns.AddRange(DriverHours.Select(h => Memory(driver, inputs, h, isAmount: false)));
        }

        foreach (ReadOnlyMemory<double> driver in (ReadOnlyMemory<double>[])[inputs.Cover, inputs.Vent, inputs.WindMs, inputs.Fan, inputs.CoverC])
        {
            columns.Add(Logged(driver, inputs.Steps));
        }

        columns.Add([.. Logged(inputs.Vent, inputs.Steps).Zip(Logged(inputs.WindMs, inputs.Steps), (vent, wind) => vent * wind)]);
        foreach (ReadOnlyMemory<double> water in (ReadOnlyMemory<double>[])[inputs.LeafWetted, inputs.FloorWetted])
        {
            columns.AddRange(WaterHours.Select(h => Memory(water, inputs, h, isAmount: true)));
        }

        return [.. columns];
    }

    /// <summary>Columns to learn from: those that are known nearly throughout.</summary>
    public static int[] Inputs(double[][] columns)
        => [.. Enumerable.Range(1, columns.Length - 1).Where(c => columns[c].Count(double.IsFinite) >= FewestShare * columns[c].Length)];

    /// <summary>The day's first reading, as the balance starts from it, and how it fades.</summary>
    private static double[][] FirstReading(BalanceInputs inputs, double[] hour)
    {
        const double FadesHours = 3;
        double[] first = new double[inputs.Steps], fading = new double[inputs.Steps];
        double reading = double.NaN;
        for (int i = 0; i < first.Length; i++)
        {
            bool newDay = i == 0 || inputs.Day.Span[i] != inputs.Day.Span[i - 1];
            reading = newDay ? double.NaN : reading;
            (first[i], fading[i]) = (reading, reading * Math.Exp(-hour[i] / FadesHours)); // a first reading does not foretell itself
            reading = double.IsNaN(reading) ? inputs.HumidityGm3.Span[i] : reading;
        }

        return [first, fading];
    }

    private static double[] Logged(ReadOnlyMemory<double> column, int steps) => column.IsEmpty ? [.. Enumerable.Repeat(double.NaN, steps)] : column.ToArray();

    private static double[] Memory(ReadOnlyMemory<double> column, BalanceInputs inputs, double hours, bool isAmount)
    {
        double[] values = Logged(column, inputs.Steps), memory = new double[values.Length];
        double keep = Math.Exp(-inputs.StepHours / hours), state = isAmount ? 0 : double.NaN;
        for (int i = 0; i < values.Length; i++)
        {
            state = double.IsNaN(values[i]) ? state * (isAmount ? keep : 1) // what is not known adds nothing
                : double.IsNaN(state) ? values[i]
                : (state * keep) + (isAmount ? values[i] : (1 - keep) * values[i]);
            memory[i] = state;
        }

        return memory;
    }
}
