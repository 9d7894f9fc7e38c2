using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Output;
using ClimateLens.HouseSimulator.Weather;
using NodaTime;

namespace ClimateLens.HouseSimulator.Sensors;

/// <summary>The station on the boiler house: means over ten minutes, stamped at their end; rain by a bucket that tips at 0.2 mm.</summary>
public static class WeatherStation
{
    private const int StepMinutes = 10;
    private const double TipMm = 0.2;

    public static LogTable Read(SimCalendar calendar, WeatherPoint[] weather, int firstMinute, ulong seed)
    {
        int rows = (calendar.Minutes - firstMinute) / StepMinutes;
        var stamps = new Instant[rows];
        for (int row = 0; row < rows; row++)
        {
            stamps[row] = calendar.At(firstMinute + ((row + 1) * StepMinutes));
        }

        double[] Means(string name, Func<WeatherPoint, double> truth, double noise, double highest)
        {
            var sensor = new Sensor(Seeds.Stream(seed, "station " + name), 0, noise, noise, highest);
            double[] values = new double[rows];
            for (int row = 0; row < rows; row++)
            {
                values[row] = sensor.Read(Mean(weather.AsSpan(firstMinute + (row * StepMinutes), StepMinutes), truth));
            }

            return values;
        }

        return new LogTable("utc", stamps,
        [
            new("temp_out", "outsideTemperature", 1, Means("temperature", w => w.TemperatureC, 0.05, 60)),
            new("rh_out", "outsideHumidity", 0, Means("humidity", w => w.HumidityPct, 0.4, 100)),
            new("sun", "globalRadiation", 0, Means("sun", w => w.RadiationWm2, 0, 1500)),
            new("wind", "windSpeed", 1, Means("wind", w => w.WindMs, 0, 75)),
            new("rain", "rain", 1, Rain(weather, firstMinute, rows)),
        ]);
    }

    private static double Mean(ReadOnlySpan<WeatherPoint> minutes, Func<WeatherPoint, double> truth)
    {
        double sum = 0;
        foreach (WeatherPoint minute in minutes)
        {
            sum += truth(minute);
        }

        return sum / minutes.Length;
    }

    private static double[] Rain(WeatherPoint[] weather, int firstMinute, int rows)
    {
        double[] values = new double[rows];
        double bucket = 0;
        for (int row = 0; row < rows; row++)
        {
            for (int minute = 0; minute < StepMinutes; minute++)
            {
                bucket += weather[firstMinute + (row * StepMinutes) + minute].RainMm;
            }

            int tips = (int)((bucket + 1e-9) / TipMm);
            bucket -= tips * TipMm;
            values[row] = tips * TipMm;
        }

        return values;
    }
}
