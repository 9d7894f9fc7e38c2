using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Output;
using ClimateLens.HouseSimulator.Watering;
using NodaTime;

namespace ClimateLens.HouseSimulator.Sensors;

/// <summary>Reads a house every five minutes into a table, as its climate computer would.</summary>
public sealed class HouseLogger(HouseRun run, int firstMinute, ulong seed)
{
    private const int StepMinutes = 5;
    private readonly int _rows = (run.Calendar.Minutes - firstMinute) / StepMinutes;

    /// <summary>Stamps of all rows.</summary>
    public Instant[] Stamps()
    {
        var stamps = new Instant[_rows];
        for (int row = 0; row < _rows; row++)
        {
            stamps[row] = run.Calendar.At(firstMinute + (row * StepMinutes));
        }

        return stamps;
    }

    /// <summary>Air temperature with the house's bias.</summary>
    public LogColumn Air(string header) => Read(header, "airTemperature", 1, m => m.AirC, run.Options.TemperatureBiasK, 0.04, 0.05);

    /// <summary>Relative humidity with the house's bias.</summary>
    public LogColumn Humidity(string header)
        => Read(header, "relativeHumidity", 1, m => m.HumidityPct, run.Options.HumidityBiasPct, 0.25, 0.15, 100);

    /// <summary>Any other sensor.</summary>
    public LogColumn Read(
        string header,
        string channel,
        int decimals,
        Func<HouseMinute, double> truth,
        double bias,
        double drift,
        double noise,
        double highest = double.MaxValue)
    {
        var sensor = new Sensor(Seeds.Stream(seed, $"sensor {run.Options.Id} {channel}"), bias, drift, noise, highest);
        return Make(header, channel, decimals, minute => sensor.Read(truth(run.Minutes[minute])));
    }

    /// <summary>What the computer itself set: no sensor in between.</summary>
    public LogColumn Known(string header, string channel, int decimals, Func<HouseMinute, double> truth)
        => Make(header, channel, decimals, minute => truth(run.Minutes[minute]));

    /// <summary>1 while water runs on a bench, else 0.</summary>
    public LogColumn Valve(string header, string bench)
    {
        LogColumn column = Make(header, "valve@" + bench, 0, _ => 0);
        foreach (WateringEvent watering in run.Waterings.Where(w => w.Bench == bench))
        {
            for (int row = 0; row < _rows; row++)
            {
                int minute = firstMinute + (row * StepMinutes);
                column.Values[row] = minute >= watering.StartMinute && minute < watering.EndMinute ? 1 : column.Values[row];
            }
        }

        return column;
    }

    private LogColumn Make(string header, string channel, int decimals, Func<int, double> value)
    {
        double[] values = new double[_rows];
        for (int row = 0; row < _rows; row++)
        {
            values[row] = value(firstMinute + (row * StepMinutes));
        }

        return new LogColumn(header, channel, decimals, values);
    }
}
