using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Learned;

/// <summary>Predicts one sensor from the other columns of the same step: a plane, or a plane and trees on what it leaves over.</summary>
internal sealed class SensorModel
{
    private readonly int _target;
    private readonly int[] _inputs;
    private readonly double[] _means;
    private readonly double[] _spreads;
    private readonly LinearPart _plane;

    private SensorModel(int target, int[] inputs, double[] means, double[] spreads, LinearPart plane)
        => (_target, _inputs, _means, _spreads, _plane) = (target, inputs, means, spreads, plane);

    private BoostedTrees? Trees { get; init; }

    /// <summary>Learns a plane from rows of a table.</summary>
    /// <param name="columns">The table's columns.</param>
    /// <param name="target">Column to predict.</param>
    /// <param name="inputs">Columns to predict it from.</param>
    /// <param name="rows">Rows to learn from; all of these columns have a value in each.</param>
    /// <param name="penalty">Penalty on the slopes, a row. [1]</param>
    public static SensorModel Plane(double[][] columns, int target, int[] inputs, int[] rows, double penalty = LinearPart.Penalty)
    {
        double[] means = [.. inputs.Select(c => rows.Average(r => columns[c][r]))];
        double[] spreads = [.. inputs.Select((c, i) => SpreadOf(rows.Select(r => columns[c][r] - means[i])))];
        double[][] scaled = [.. rows.Select(r => Scaled(columns, r, inputs, means, spreads))];
        return new SensorModel(target, inputs, means, spreads, LinearPart.Fit(scaled, [.. rows.Select(r => columns[target][r])], penalty));
    }

    /// <summary>This plane, and trees on what it leaves over in the rows that it was learned from.</summary>
    public SensorModel WithTrees(double[][] columns, int[] rows)
    {
        double[][] scaled = [.. rows.Select(r => Scaled(columns, r, _inputs, _means, _spreads))];
        double[] left = [.. rows.Select((r, i) => columns[_target][r] - _plane.Predict(scaled[i]))];
        return new SensorModel(_target, _inputs, _means, _spreads, _plane) { Trees = BoostedTrees.Fit(scaled, left) };
    }

    /// <summary>What the sensor should read at a step; NaN where an input is missing. [SI unit of the channel]</summary>
    public double Predict(double[][] columns, int row)
    {
        Span<double> scaled = stackalloc double[_inputs.Length];
        Scale(columns, row, _inputs, _means, _spreads, scaled);
        double plane = _plane.Predict(scaled);
        return double.IsNaN(plane) || Trees is null ? plane : plane + Trees.Predict(scaled);
    }

    private static double[] Scaled(double[][] columns, int row, int[] inputs, double[] means, double[] spreads)
    {
        double[] scaled = new double[inputs.Length];
        Scale(columns, row, inputs, means, spreads, scaled);
        return scaled;
    }

    private static void Scale(double[][] columns, int row, int[] inputs, double[] means, double[] spreads, Span<double> scaled)
    {
        for (int i = 0; i < inputs.Length; i++)
        {
            scaled[i] = (columns[inputs[i]][row] - means[i]) / spreads[i];
        }
    }

    /// <summary>Spread of an input; 1 for one that never moves, which then has no say.</summary>
    private static double SpreadOf(IEnumerable<double> deviations)
    {
        double spread = Math.Sqrt(deviations.Average(d => d * d));
        return spread > 1e-9 ? spread : 1;
    }
}
