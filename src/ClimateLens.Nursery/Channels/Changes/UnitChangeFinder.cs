namespace ClimateLens.Nursery.Channels.Changes;

/// <summary>A place in a series from which on, or up to which, its values look like another unit.</summary>
/// <param name="At">Index of the first reading after the change.</param>
/// <param name="Unit">The other unit.</param>
/// <param name="IsAfter">Whether the values from there on are in it, rather than those before.</param>
public readonly record struct FoundUnitChange(int At, Unit Unit, bool IsAfter);

/// <summary>
/// Finds where a series changes as if its unit did: the days after fit the days before, hour by hour, once they are converted, the
/// days on either side keep to it, and the readings around the moment make the same step. What houses and weather do by themselves is
/// slower, smaller, or not alike in all hours.
/// </summary>
/// <remarks>
/// <para><b>Method and limits:</b> choice of this project, no source; two days are needed on either side. <b>Error:</b>
/// docs/science/quality.md has the rates of false alarms. Wind, positions, pipes and amounts are not looked at; nor are changes of less
/// than the ratios of <see cref="UnitCandidate"/>.</para>
/// </remarks>
public static class UnitChangeFinder
{
    private const int FewestDays = 2, MostDays = 3;
    private const long FarthestDays = 7;

    /// <summary>The changes in order of time.</summary>
    /// <param name="utcMicros">Stamps, ascending. [µs since 1970-01-01T00:00Z]</param>
    /// <param name="values">Values as the settings read them. [SI unit of the channel]</param>
    /// <param name="channel">What they are.</param>
    /// <param name="declared">The unit that the settings give.</param>
    public static IReadOnlyList<FoundUnitChange> Find(ReadOnlySpan<long> utcMicros, ReadOnlySpan<double> values, Channel channel, Unit declared)
    {
        IReadOnlyList<UnitCandidate> candidates = UnitCandidate.For(channel, declared);
        if (candidates.Count == 0)
        {
            return [];
        }

        List<DayProfile> days = DayProfile.Of(utcMicros, values);
        List<FoundUnitChange> found = [];
        for (int day = 0; day < days.Count; day++)
        {
            if (At(day, days, candidates, channel, utcMicros, values) is FoundUnitChange change)
            {
                found.Add(change);
                day += FewestDays; // the next change has whole days of its own on either side
            }
        }

        return found;
    }

    /// <summary>The change that lies in a day, or between it and the next.</summary>
    private static FoundUnitChange? At(
        int day, List<DayProfile> days, IReadOnlyList<UnitCandidate> candidates, Channel channel, ReadOnlySpan<long> utcMicros, ReadOnlySpan<double> values)
    {
        List<DayProfile> before = Near(days, Math.Max(0, day - MostDays), day, days[day].Day);
        List<DayProfile> after = Near(days, day + 1, Math.Min(days.Count, day + 1 + MostDays), days[day].Day);
        if (before.Count < FewestDays || after.Count < FewestDays)
        {
            return null;
        }

        double[] was = DayProfile.Middle(before), became = DayProfile.Middle(after);
        foreach (UnitCandidate candidate in candidates)
        {
            UnitChangeTest test = new(candidate, channel, was, became);
            if (test.Fits())
            {
                int from = before[^1].First, to = after[0].End;
                int at = from + test.Split(utcMicros[from..to], values[from..to]);
                if (at > from && at < to && test.StepsAt(utcMicros, values, at))
                {
                    return new FoundUnitChange(at, candidate.Unit, candidate.IsAfter);
                }
            }
        }

        return null;
    }

    /// <summary>Those of a few days that lie near enough to one.</summary>
    private static List<DayProfile> Near(List<DayProfile> days, int from, int end, long day)
        => days.GetRange(from, end - from).FindAll(d => Math.Abs(d.Day - day) <= FarthestDays);
}
