using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Moisture;

/// <summary>The relative humidity that the science uses: as logged, or derived from another logged measure of moisture.</summary>
internal static class HouseHumidity
{
    /// <summary>Channels from which humidity can be derived, the least indirect first.</summary>
    private static readonly string[] Substitutes = ["vapourPressureDeficit", "dewPoint", "humidityDeficit", "wetBulbTemperature"];

    /// <summary>The humidity column, and the period that knows where it came from. [%]</summary>
    public static (HousePeriod Period, double[] HumidityPct) Of(HousePeriod period, double[] temperatureC)
    {
        if (period.Humidity is Series logged)
        {
            double[] humidity = Quality.Used(period.Frame, logged.Key);
            for (int i = 0; i < humidity.Length; i++)
            {
                humidity[i] = Math.Min(humidity[i], 100);
            }

            return (period, humidity);
        }

        Series? first = Substitutes
            .Select(channel => period.Series.FirstOrDefault(s => s.Channel.Name == channel && s.House == period.Temperature?.House))
            .FirstOrDefault(s => s is not null);
        if (period.Temperature is null || first is null || JoinedSources.Of(period, first) is not Series from)
        {
            double[] unknown = new double[temperatureC.Length];
            Array.Fill(unknown, double.NaN);
            return (period, unknown);
        }

        double[] derived = new double[temperatureC.Length];
        HumidityFrom.Channel(from.Channel.Name, temperatureC, Quality.Used(period.Frame, from.Key), period.Input.Nursery.ElevationM, derived);
        string how = from.Channel.Name == "wetBulbTemperature" ? Phrase.Of(" as of an aspirated (ventilated) psychrometer") : "";
        string note = Phrase.Of($"No relative humidity is logged: it was derived from this series and the air temperature{how}.");
        return (period with { HumidityFrom = from, Notes = period.Notes.With(first.Key, note) }, derived);
    }
}
