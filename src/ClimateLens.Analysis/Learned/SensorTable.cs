using System.Collections.Immutable;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Sun;
using NodaTime;

namespace ClimateLens.Analysis.Learned;

/// <summary>Readings of several sensors side by side, a row a step, with the hour and the sun: what the learned check looks at.</summary>
internal sealed class SensorTable
{
    private const int ClockColumns = 4;

    private SensorTable(TimeAxis axis, ImmutableArray<LearnedSensor> sensors, double[][] columns, int[] days, bool[] sunUp)
        => (Axis, Sensors, Columns, Days, SunUp) = (axis, sensors, columns, days, sunUp);

    /// <summary>Its steps.</summary>
    public TimeAxis Axis { get; }

    /// <summary>Its sensors.</summary>
    public ImmutableArray<LearnedSensor> Sensors { get; }

    /// <summary>
    /// A column for each sensor, NaN where there is no value to go by, then four without gaps: sine and cosine of the local hour of the
    /// day, height of the sun and its height above the horizon. [SI unit of the channel; 1; 1; °; °]
    /// </summary>
    public double[][] Columns { get; }

    /// <summary>Local date of each step, as days from 1970-01-01.</summary>
    public int[] Days { get; }

    /// <summary>Whether the sun is above the horizon in the middle of each step.</summary>
    public bool[] SunUp { get; }

    /// <summary>Number of steps.</summary>
    public int Count => Axis.Count;

    /// <summary>The sensors of a house period that others are predicted from, in the order in which they are reported.</summary>
    public static ImmutableArray<LearnedSensor> SensorsOf(HousePeriod period)
        => [.. period.Series.Select(s => new LearnedSensor(s.Channel, s.Sensor)).Distinct().Where(s => s.IsInput)];

    /// <summary>The table of a period, without its run-in.</summary>
    /// <param name="period">A checked house period.</param>
    /// <param name="sensors">The sensors; one that the period lacks has no values.</param>
    /// <param name="takesDoubtful">Whether values that a check put in doubt count, as they do when they are judged and not when they are learned from.</param>
    public static SensorTable Of(HousePeriod period, ImmutableArray<LearnedSensor> sensors, bool takesDoubtful)
    {
        TimeAxis all = period.Frame.Axis;
        TimeAxis axis = all with { Start = all.StartOf(period.FirstStep), Count = all.Count - period.FirstStep };
        double[][] columns = new double[sensors.Length + ClockColumns][];
        for (int s = 0; s < sensors.Length; s++)
        {
            columns[s] = Readings(period, sensors[s], axis.Count, takesDoubtful);
        }

        int[] days = new int[axis.Count];
        bool[] sunUp = new bool[axis.Count];
        double[][] clock = [.. Enumerable.Range(0, ClockColumns).Select(_ => new double[axis.Count])];
        for (int i = 0; i < axis.Count; i++)
        {
            Instant middle = axis.StartOf(i) + (axis.Step / 2);
            LocalDateTime local = middle.InZone(axis.Zone).LocalDateTime;
            double angle = 2 * Math.PI * local.TimeOfDay.TickOfDay / NodaConstants.TicksPerDay;
            double height = SolarPosition.ElevationDeg(middle.ToUnixTimeTicks() / (double)NodaConstants.TicksPerSecond, period.Input.Nursery.LatitudeDeg, period.Input.Nursery.LongitudeDeg);
            (clock[0][i], clock[1][i], clock[2][i], clock[3][i]) = (Math.Sin(angle), Math.Cos(angle), height, Math.Max(0, height));
            days[i] = Period.DaysBetween(Epoch, local.Date);
            sunUp[i] = height > 0;
        }

        clock.CopyTo(columns, sensors.Length);
        return new SensorTable(axis, sensors, columns, days, sunUp);
    }

    /// <summary>The local date that a number of <see cref="Days"/> stands for.</summary>
    public static LocalDate DateOf(int day) => Epoch.PlusDays(day);

    private static LocalDate Epoch { get; } = new(1970, 1, 1);

    private static double[] Readings(HousePeriod period, LearnedSensor sensor, int count, bool takesDoubtful)
    {
        double[] values = new double[count];
        Array.Fill(values, double.NaN);
        Series? first = period.Series.FirstOrDefault(s => s.Channel == sensor.Channel && s.Sensor == sensor.Sensor);
        if (JoinedSources.Of(period, first) is Series series)
        {
            ImmutableArray<double> logged = period.Frame.Values(series.Key);
            ImmutableArray<QualityFlag> flags = period.Frame.Flags(series.Key);
            for (int i = 0; i < count; i++)
            {
                QualityFlag flag = flags[period.FirstStep + i];
                values[i] = Quality.IsUsed(flag) && (takesDoubtful || flag != QualityFlag.Suspect) ? logged[period.FirstStep + i] : double.NaN;
            }
        }

        return values;
    }
}
