namespace ClimateLens.Analysis.Learned;

/// <summary>Finds the steps at which a sensor lies far outside its usual error, the furthest out of a step first.</summary>
internal static class SuspectSteps
{
    /// <summary>For each sensor whether each step is suspect. Names each, so that those that only echo it are not.</summary>
    public static bool[][] Find(SensorTable week, SensorFit[] fits, WeekErrors errors)
    {
        bool[][] suspect = [.. fits.Select(_ => new bool[week.Count])];
        for (int i = 0; i < week.Count; i++)
        {
            for (int f = 0; f < fits.Length; f++)
            {
                // Named already as part of a lasting shift: its own error speaks.
                suspect[f][i] = errors.IsNamed(f, i) && IsOut(fits, errors, f, i);
            }

            while (Furthest(fits, errors, i) is int worst and >= 0)
            {
                suspect[worst][i] = true;
                errors.Name(worst, i);
            }
        }

        return suspect;
    }

    private static int Furthest(SensorFit[] fits, WeekErrors errors, int step)
    {
        int furthest = -1;
        for (int f = 0; f < fits.Length; f++)
        {
            if (!errors.IsNamed(f, step) && IsOut(fits, errors, f, step) && (furthest < 0 || Distance(fits, errors, f, step) > Distance(fits, errors, furthest, step)))
            {
                furthest = f;
            }
        }

        return furthest;
    }

    private static bool IsOut(SensorFit[] fits, WeekErrors errors, int fit, int step) => Math.Abs(errors.Of(fit)[step]) > fits[fit].Usual.StepLimit;

    /// <summary>In units of the usual error, not of the limit, which the accuracy of the sensor may have set.</summary>
    private static double Distance(SensorFit[] fits, WeekErrors errors, int fit, int step) => Math.Abs(errors.Of(fit)[step]) / fits[fit].Usual.Of95;
}
