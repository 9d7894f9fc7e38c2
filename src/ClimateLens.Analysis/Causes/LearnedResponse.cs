using ClimateLens.Analysis.Learned;
using ClimateLens.Science.Balance;

namespace ClimateLens.Analysis.Causes;

/// <summary>The challenger of the house balance: the humidity of the house learned from the same days, without physics.</summary>
/// <remarks>
/// <para><b>Method:</b> a plane, and boosted trees on what it leaves over ([HK70], [FRIEDMAN01]); which of the two is better is decided by two halves of the days that are not held out, each predicted by the other. The one chosen is
/// learned anew from all of these days and scored on the days held out, which are those of the balance (<see cref="HeldOutDays"/>).</para>
/// <para><b>Range:</b> the house as it was run in these weeks; it knows no law and may not be asked of what never happened. <b>Error:</b> its score.</para>
/// </remarks>
internal sealed class LearnedResponse
{
    private readonly SensorModel _model;
    private readonly SensorModel[] _halves;

    private LearnedResponse(SensorModel model, SensorModel[] halves, bool usesTrees, HeldOutScore score)
        => (_model, _halves, UsesTrees, Score) = (model, halves, usesTrees, score);

    /// <summary>Whether trees did better than the plane alone.</summary>
    public bool UsesTrees { get; }

    /// <summary>How it did on the days held out.</summary>
    public HeldOutScore Score { get; }

    /// <summary>Learns; null with too few days or none that could be scored.</summary>
    /// <param name="inputs">The weeks before the period.</param>
    public static LearnedResponse? Of(BalanceInputs inputs)
    {
        BalanceInputs house = ThinnedInputs.Of(inputs, BalanceFit.JoinedSteps(inputs.StepHours));
        double[][] columns = LearnedColumns.Of(house);
        int[] used = LearnedColumns.Inputs(columns);
        HeldOutDays heldOut = HeldOutDays.Of(house);
        int[] rows = [.. Enumerable.Range(0, house.Steps).Where(i => !heldOut.Contains(house.Day.Span[i]) && double.IsFinite(columns[LearnedColumns.Target][i]) && used.All(c => double.IsFinite(columns[c][i])))];
        int[] days = [.. rows.Select(i => house.Day.Span[i]).Distinct()];
        if (days.Length < BalanceFit.FewestDays)
        {
            return null;
        }

        HashSet<int> second = [.. days.Where((_, n) => n % 2 == 1)];
        int[][] half = [[.. rows.Where(i => second.Contains(house.Day.Span[i]))], [.. rows.Where(i => !second.Contains(house.Day.Span[i]))]];
        SensorModel[] planes = [.. half.Select(r => SensorModel.Plane(columns, LearnedColumns.Target, used, r))];
        SensorModel[] trees = [.. planes.Select((plane, n) => plane.WithTrees(columns, half[n]))];
        bool usesTrees = Missed(columns, trees, half) < Missed(columns, planes, half);
        SensorModel model = SensorModel.Plane(columns, LearnedColumns.Target, used, rows);
        model = usesTrees ? model.WithTrees(columns, rows) : model;
        return HeldOutScore.Of(house, Predict(model, columns), heldOut) is HeldOutScore score ? new LearnedResponse(model, usesTrees ? trees : planes, usesTrees, score) : null;
    }

    /// <summary>What the waterings put into the air by this reading: predicted with them less predicted without. [g/m³]</summary>
    /// <param name="with">The house, with its waterings, in the steps of the balance.</param>
    /// <param name="without">The same without them.</param>
    /// <param name="mean">The mean effect over the waterings, from the effect at each step.</param>
    /// <returns>The effect, and the two that the halves of the days give by themselves.</returns>
    public (double Value, double OneHalf, double OtherHalf) Effect(BalanceInputs with, BalanceInputs without, Func<double[], double> mean)
    {
        double[][] wet = LearnedColumns.Of(with), dry = LearnedColumns.Of(without);
        double[] all = [.. ((SensorModel[])[_model, .. _halves]).Select(model => mean([.. Predict(model, wet).Zip(Predict(model, dry), (w, d) => w - d)]))];
        return (all[0], all[1], all[2]);
    }

    private static double[] Predict(SensorModel model, double[][] columns) => [.. Enumerable.Range(0, columns[0].Length).Select(i => model.Predict(columns, i))];

    /// <summary>Sum of squares on the half that a model has not seen.</summary>
    private static double Missed(double[][] columns, SensorModel[] models, int[][] half)
        => models.Select((model, n) => half[1 - n].Sum(i => Math.Pow(columns[LearnedColumns.Target][i] - model.Predict(columns, i), 2))).Sum();
}
