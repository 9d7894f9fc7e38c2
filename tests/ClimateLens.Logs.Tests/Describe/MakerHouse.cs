namespace ClimateLens.Logs.Tests.Describe;

/// <summary>An invented house whose values move with the day, in the unit that a file uses.</summary>
internal static class MakerHouse
{
    /// <summary>Units by channel: as in headers, factor and offset to the unit of the store, decimals.</summary>
    public static readonly Dictionary<string, (string Written, double Factor, double Offset, int Decimals)[]> Units = new()
    {
        ["airTemperature"] = [("°C", 1, 0, 1), ("degC", 1, 0, 2), ("C", 1, 0, 1)],
        ["relativeHumidity"] = [("%", 1, 0, 1), ("%", 1, 0, 0)],
        ["carbonDioxide"] = [("ppm", 1, 0, 0)],
        ["lee"] = [("%", 1, 0, 0)],
        ["wind"] = [("%", 1, 0, 0)],
        ["screenPosition"] = [("%", 1, 0, 0)],
        ["globalRadiation"] = [("W/m2", 1, 0, 0), ("W/m²", 1, 0, 1)],
        ["outsideTemperature"] = [("°C", 1, 0, 1)],
        ["heatingPipeTemperature"] = [("°C", 1, 0, 1)],
        ["heatingSetPoint"] = [("°C", 1, 0, 1)],
        ["windSpeed"] = [("m/s", 1, 0, 1), ("km/h", 1 / 3.6, 0, 1)],
    };

    /// <summary>A value in the unit of the store.</summary>
    public static double Value(string channel, DateTime time, Random random)
    {
        double hour = time.TimeOfDay.TotalHours;
        double day = Math.Max(0, Math.Sin((hour - 6) / 12 * Math.PI)) * (0.6 + (0.4 * Math.Sin(time.DayOfYear)));
        double noise = random.NextDouble() - 0.5;
        return channel switch
        {
            "airTemperature" => 18 + (7 * day) + noise,
            "relativeHumidity" => 85 - (25 * day) + (4 * noise),
            "carbonDioxide" => 700 - (300 * day) + (60 * noise),
            "lee" => Math.Max(0, 60 * day),
            "wind" => Math.Max(0, 30 * day),
            "screenPosition" => day > 0 ? 0 : 95,
            "globalRadiation" => 750 * day,
            "outsideTemperature" => 8 + (9 * day) + noise,
            "heatingPipeTemperature" => 48 - (15 * day) + (3 * noise),
            "windSpeed" => 4 + (3 * noise),
            _ => hour is > 7 and < 18 ? 20 : 18,
        };
    }
}
