namespace ClimateLens.Analysis.Learned;

/// <summary>Predicts one sensor from the other columns of the same step: a plane, and trees on what it leaves over where they help.</summary>
internal sealed class SensorModel
{
    private readonly int[] _inputs;
    private readonly double[] _means;
    private readonly double[] _spreads;
    private readonly LinearPart _plane;
    private readonly TreePart _trees;

    private SensorModel(int[] inputs, double[] means, double[] spreads, LinearPart plane, TreePart trees)
        => (_inputs, _means, _spreads, _plane, _trees) = (inputs, means, spreads, plane, trees);

    /// <summary>Learns from rows of a table.</summary>
    /// <param name="columns">The table's columns.</param>
    /// <param name="target">Column to predict.</param>
    /// <param name="inputs">Columns to predict it from.</param>
    /// <param name="rows">Rows to learn from; all of these columns have a value in each.</param>
    public static SensorModel Fit(double[][] columns, int target, int[] inputs, int[] rows)
    {
        double[] means = [.. inputs.Select(c => rows.Average(r => columns[c][r]))];
        double[] spreads = [.. inputs.Select((c, i) => SpreadOf(rows.Select(r => columns[c][r] - means[i])))];
        double[][] scaled = [.. rows.Select(_ => new double[inputs.Length])];
        double[] targets = [.. rows.Select(r => columns[target][r])];
        for (int r = 0; r < rows.Length; r++)
        {
            Scale(columns, rows[r], inputs, means, spreads, scaled[r]);
        }

        LinearPart plane = LinearPart.Fit(scaled, targets);
        double[] left = [.. targets.Select((t, r) => t - plane.Predict(scaled[r]))];
        return new SensorModel(inputs, means, spreads, plane, TreePart.Fit(scaled, left));
    }

    /// <summary>What the sensor should read at a step, by the plane alone and by plane and trees; NaN where an input is missing. [SI unit of the channel]</summary>
    public (double Plane, double Both) Predict(double[][] columns, int row)
    {
        Span<double> scaled = stackalloc double[_inputs.Length];
        Scale(columns, row, _inputs, _means, _spreads, scaled);
        double plane = _plane.Predict(scaled);
        return double.IsNaN(plane) ? (plane, plane) : (plane, plane + _trees.Predict(scaled));
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
