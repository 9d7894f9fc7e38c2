namespace ClimateLens.Analysis.Learned;

/// <summary>Finds the sensors that read otherwise than expected for days, one after the other, the furthest out first.</summary>
internal static class LastingShifts
{
    /// <summary>Days in a row from which on a shift lasts; choice of this project. [d]</summary>
    public const int FewestDays = 2;

    /// <summary>A single day that lies this many times as far out as its limit counts as well. Set on simulated weeks without a fault. [1]</summary>
    public const double AloneTimes = 2;

    /// <summary>Finds them, and names each at every step of its days.</summary>
    public static List<FoundShift> Find(SensorTable week, SensorFit[] fits, WeekErrors errors)
    {
        List<FoundShift> found = [];
        while (Furthest(week, fits, errors, found) is FoundShift shift)
        {
            found.Add(shift);
            for (int i = 0; i < week.Count; i++)
            {
                if (week.Days[i] >= shift.FirstDay && week.Days[i] <= shift.LastDay)
                {
                    errors.Name(shift.Fit, i);
                }
            }
        }

        return found;
    }

    private static FoundShift? Furthest(SensorTable week, SensorFit[] fits, WeekErrors errors, List<FoundShift> found)
        => Enumerable.Range(0, fits.Length)
            .Where(f => found.TrueForAll(s => s.Fit != f))
            .Select(f => Of(week, fits[f], f, errors.Of(f)))
            .OfType<FoundShift>()
            .MaxBy(s => s.Score);

    /// <summary>The longest shift of a sensor; of a part of the day where only that part shows it.</summary>
    private static FoundShift? Of(SensorTable week, SensorFit fit, int index, double[] errors)
    {
        FoundShift? In(DayPart part) => LongestRun(index, part, fit.Usual, DayMedians.Of(week, errors, part));
        (FoundShift? whole, FoundShift? up, FoundShift? down) = (In(DayPart.Whole), In(DayPart.SunUp), In(DayPart.SunDown));
        return up is not null && down is null ? up
            : down is not null && up is null ? down
            : whole ?? up;
    }

    private static FoundShift? LongestRun(int fit, DayPart part, UsualError error, SortedDictionary<int, double> medians)
    {
        DayError usual = error.Parts[(int)part];
        List<(int Day, double Size)> longest = [], run = [];
        foreach ((int day, double median) in medians)
        {
            double size = median - usual.Middle;
            if (!(Math.Abs(size) > usual.Limit) || (run.Count > 0 && Math.Sign(size) != Math.Sign(run[0].Size)))
            {
                run = [];
            }

            if (Math.Abs(size) > usual.Limit)
            {
                run.Add((day, size));
                longest = run.Count > longest.Count ? run : longest;
            }
        }

        return longest.Count >= FewestDays || longest.Exists(d => Math.Abs(d.Size) > AloneTimes * usual.Limit)
            ? new FoundShift(fit, part, longest[0].Day, longest[^1].Day, [.. longest.Select(d => d.Size)], longest.Average(d => Math.Abs(d.Size)) / error.Of95)
            : null;
    }
}
