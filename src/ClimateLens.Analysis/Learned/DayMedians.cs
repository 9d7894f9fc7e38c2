using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Learned;

/// <summary>Middle errors of the days of a table.</summary>
internal static class DayMedians
{
    /// <summary>A part of a day with fewer values than this is not looked at; choice of this project. [h]</summary>
    private const int FewestHours = 3;

    /// <summary>The median of a day's errors, for each local day that has enough of them.</summary>
    /// <param name="table">The table.</param>
    /// <param name="errors">An error a step, NaN where it is not known. [any unit]</param>
    /// <param name="part">Part of the day.</param>
    public static SortedDictionary<int, double> Of(SensorTable table, double[] errors, DayPart part)
    {
        SortedDictionary<int, List<double>> byDay = [];
        for (int i = 0; i < errors.Length; i++)
        {
            if (double.IsFinite(errors[i]) && (part == DayPart.Whole || table.SunUp[i] == (part == DayPart.SunUp)))
            {
                if (!byDay.TryGetValue(table.Days[i], out List<double>? values))
                {
                    byDay[table.Days[i]] = values = [];
                }

                values.Add(errors[i]);
            }
        }

        double fewest = FewestHours * 60 / table.Axis.Step.TotalMinutes;
        SortedDictionary<int, double> medians = [];
        foreach ((int day, List<double> values) in byDay.Where(d => d.Value.Count >= fewest))
        {
            values.Sort();
            medians[day] = Quantiles.Of([.. values], 0.5);
        }

        return medians;
    }
}
