using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Gridding;

/// <summary>
/// Parts readings that cannot be from those that can, before any is averaged or a line is drawn between two: one -999 among sixty
/// readings would pull the mean of an hour down to where it looks like a value.
/// </summary>
internal static class Believable
{
    /// <summary>For each row, whether temperature and humidity of the batch are both exactly 0, as from an instrument without power.</summary>
    public static bool[] DeadRows(ReadingBatch batch)
    {
        bool[] dead = new bool[batch.UtcMicros.Length];
        double[][] temperatures = Of(batch, "airTemperature"), humidities = Of(batch, "relativeHumidity");
        for (int row = 0; temperatures.Length > 0 && humidities.Length > 0 && row < dead.Length; row++)
        {
            dead[row] = temperatures.All(v => v[row] == 0) && humidities.All(v => v[row] == 0);
        }

        return dead;
    }

    /// <summary>The values that can be, with NaN for the others; and the others, with NaN for these, or null when there are none.</summary>
    public static (double[] Possible, double[]? Impossible) Split(double[] values, Channel channel, bool[] deadRows)
    {
        bool Cannot(int row) => values[row] < channel.FailLow || values[row] > channel.FailHigh || (deadRows[row] && values[row] == 0);

        double[]? possible = null, impossible = null;
        for (int row = 0; row < values.Length; row++)
        {
            if (Cannot(row))
            {
                possible ??= [.. values];
                impossible ??= Nothing(values.Length);
                (possible[row], impossible[row]) = (double.NaN, values[row]);
            }
        }

        return (possible ?? values, impossible);
    }

    private static double[][] Of(ReadingBatch batch, string channel)
        => [.. batch.Columns.Where(c => ColumnKey.Parse(c.Key).Channel == channel).Select(c => c.Value)];

    private static double[] Nothing(int count)
    {
        double[] values = new double[count];
        Array.Fill(values, double.NaN);
        return values;
    }
}
