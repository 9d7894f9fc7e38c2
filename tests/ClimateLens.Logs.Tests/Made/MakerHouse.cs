namespace ClimateLens.Logs.Tests.Made;

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
        ["vapourPressureDeficit"] = [("hPa", 0.1, 0, 2), ("kPa", 1, 0, 3)],
        ["humidityDeficit"] = [("g/m3", 1, 0, 2)],
        ["dewPoint"] = [("°C", 1, 0, 1)],
        ["windSpeed"] = [("m/s", 1, 0, 1), ("km/h", 1 / 3.6, 0, 1)],
    };

    /// <summary>A value in the unit of the store.</summary>
    public static double Value(string channel, DateTime time, Random random)
    {
        double hour = time.TimeOfDay.TotalHours;
        double day = Math.Max(0, Math.Sin((hour - 6) / 12 * Math.PI)) * (0.6 + (0.4 * Math.Sin(time.DayOfYear)));
        double noise = random.NextDouble() - 0.5;
        double air = 18 + (7 * day) + Math.Sin(time.Minute);
        double humidity = 85 - (25 * day) + (2 * Math.Sin(time.Hour));
        double saturation = 0.61121 * Math.Exp(17.502 * air / (240.97 + air)); // the day's own truth; a percent more or less does not matter here
        double vapour = Math.Log(saturation * humidity / 100 / 0.61121);
        return channel switch
        {
            "airTemperature" => air,
            "relativeHumidity" => humidity,
            "vapourPressureDeficit" => saturation * (1 - (humidity / 100)),
            "humidityDeficit" => saturation * (1 - (humidity / 100)) * 2166.7 / (air + 273.15),
            "dewPoint" => 240.97 * vapour / (17.502 - vapour),
            "carbonDioxide" => 1000 - (300 * day) + (60 * noise),
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
