namespace ClimateLens.Analysis.Learned;

/// <summary>
/// What was learned of one sensor: as many models as there are blocks of days, each from all blocks but one, and how far off they were
/// on the block that they had not seen. A prediction is the mean of the models. Trees are grown where planes are off by more than
/// twice what the sensor itself may be, and kept where they are better on days not learned from; not for the sky, which the house foretells poorly anyway
/// (it is judged so that a fault of the weather station is not laid at the door of the house).
/// </summary>
internal sealed class SensorFit
{
    /// <summary>Blocks of days in a row, each held out once; choice of this project.</summary>
    public const int Blocks = 4;

    /// <summary>With fewer whole days than this nothing is learned; choice of this project. [d]</summary>
    public const int FewestDays = 21;

    /// <summary>Trees are grown where the plane is off by more than so many times the sensor's accuracy; choice of this project. [1]</summary>
    private const double TreesFrom = 2;

    /// <summary>A day counts when this much of it has all values; choice of this project. [h]</summary>
    private const int FewestHoursOfADay = 12;

    private readonly SensorModel[] _models;

    private SensorFit(int target, SensorModel[] models, bool usesTrees, int days, UsualError usual)
        => (Target, _models, UsesTrees, Days, Usual) = (target, models, usesTrees, days, usual);

    /// <summary>Column of the sensor.</summary>
    public int Target { get; }

    /// <summary>Whether trees made the held-out error smaller than the plane alone.</summary>
    public bool UsesTrees { get; }

    /// <summary>Days learned from.</summary>
    public int Days { get; }

    /// <summary>How far off it usually is.</summary>
    public UsualError Usual { get; }

    /// <summary>Learns a sensor; null with too few days that have it and its inputs.</summary>
    /// <param name="past">Readings to learn from.</param>
    /// <param name="target">Column of the sensor.</param>
    /// <param name="inputs">Columns to predict it from.</param>
    /// <param name="accuracy">What the sensor may be off anyway; NaN: not known. [SI unit of the channel]</param>
    public static SensorFit? Of(SensorTable past, int target, int[] inputs, double accuracy)
    {
        bool[] complete = [.. Enumerable.Range(0, past.Count).Select(i => double.IsFinite(past.Columns[target][i]) && inputs.All(c => double.IsFinite(past.Columns[c][i])))];
        double perHour = 60 / past.Axis.Step.TotalMinutes;
        int[] days = [.. Enumerable.Range(0, past.Count).Where(i => complete[i]).GroupBy(i => past.Days[i]).Where(d => d.Count() >= FewestHoursOfADay * perHour).Select(d => d.Key).Order()];
        if (days.Length < FewestDays)
        {
            return null;
        }

        Dictionary<int, int> blocks = days.Select((day, n) => (day, Block: n * Blocks / days.Length)).ToDictionary(d => d.day, d => d.Block);
        int[] blockOf = [.. Enumerable.Range(0, past.Count).Select(i => complete[i] && blocks.TryGetValue(past.Days[i], out int block) ? block : -1)];
        // A step more than an hour apart, so that the rows walk through the hour.
        int stride = perHour > 1 ? (int)perHour + 1 : 1;
        int[][] rows = [.. Enumerable.Range(0, Blocks).Select(block => Enumerable.Range(0, past.Count).Where(i => i % stride == 0 && blockOf[i] >= 0 && blockOf[i] != block).ToArray())];
        SensorModel[] planes = [.. rows.Select(r => SensorModel.Plane(past.Columns, target, inputs, r))];
        double[] errors = HeldOut(past, target, planes, blockOf);
        UsualError usual = UsualError.Of(past, errors, accuracy);
        if (past.Sensors[target].IsOutside || usual.Of95 <= TreesFrom * accuracy)
        {
            return new SensorFit(target, planes, false, days.Length, usual);
        }

        SensorModel[] both = [.. planes.Select((plane, block) => plane.WithTrees(past.Columns, rows[block]))];
        double[] errorsOfBoth = HeldOut(past, target, both, blockOf);
        return MeanSquare(errorsOfBoth) < MeanSquare(errors)
            ? new SensorFit(target, both, true, days.Length, UsualError.Of(past, errorsOfBoth, accuracy))
            : new SensorFit(target, planes, false, days.Length, usual);
    }

    /// <summary>What the sensor should read at a step, with the error in the middle that its predictions usually have; NaN where an input is missing. [SI unit of the channel]</summary>
    public double Expected(double[][] columns, int row)
    {
        double sum = 0;
        foreach (SensorModel model in _models)
        {
            sum += model.Predict(columns, row);
        }

        return (sum / _models.Length) + Usual.Middle;
    }

    /// <summary>Logged less predicted by the model that has not seen the day; NaN on days that are in no block.</summary>
    private static double[] HeldOut(SensorTable past, int target, SensorModel[] models, int[] blockOf)
        => [.. Enumerable.Range(0, past.Count).Select(i => blockOf[i] < 0 ? double.NaN : past.Columns[target][i] - models[blockOf[i]].Predict(past.Columns, i))];

    private static double MeanSquare(double[] errors) => errors.Where(double.IsFinite).Average(e => e * e);
}
