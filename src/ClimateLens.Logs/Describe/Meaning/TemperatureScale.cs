using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>The scale of the temperatures of a file that name no unit.</summary>
/// <param name="Code"><c>Cel</c> or <c>[degF]</c>; null where the file does not tell.</param>
/// <param name="Sureness">How sure.</param>
/// <param name="Evidence">Why.</param>
internal sealed record TemperatureScale(string? Code, Sureness Sureness, string Evidence)
{
    // A house at 45 °C all day is no house for a crop, and one at 3 to 33 °F is frozen. Common practice, no source.
    private const double HottestMedianC = 45;
    private const double ColdestMedianC = 3;
    private const double FreezingF = 33;

    /// <summary>Judges the temperatures of a file.</summary>
    /// <param name="columns">Facts and channel of each temperature of air, inside or outside.</param>
    /// <param name="relatives">Facts and channel of the humidities, dew points and deficits.</param>
    /// <param name="context">The file.</param>
    public static TemperatureScale Of(IReadOnlyList<(ColumnFacts Facts, string Channel)> columns, IReadOnlyList<(ColumnFacts Facts, string Channel)> relatives, FileContext context)
    {
        string[] written = [.. columns.Select(c => c.Facts.Header.Unit).Where(u => u?.Measures(Quantity.Temperature) == true).Select(u => u!.Code).Distinct()];
        if (written.Length == 1)
        {
            return new TemperatureScale(written[0], Sureness.Likely, "as other temperatures of the file say");
        }

        return ByRelatives(columns, relatives) ?? ByValues(columns, context);
    }

    /// <summary>By dew point and humidity, or deficit and humidity: only one scale agrees.</summary>
    private static TemperatureScale? ByRelatives(IReadOnlyList<(ColumnFacts Facts, string Channel)> columns, IReadOnlyList<(ColumnFacts Facts, string Channel)> relatives)
    {
        foreach ((ColumnFacts air, string channel) in columns.Where(c => c.Channel is "airTemperature" or "outsideTemperature"))
        {
            ColumnFacts? humidity = relatives.FirstOrDefault(r => r.Channel == (channel == "airTemperature" ? "relativeHumidity" : "outsideHumidity")).Facts;
            ColumnFacts? dew = relatives.FirstOrDefault(r => r.Channel == "dewPoint").Facts;
            ColumnFacts? deficit = relatives.FirstOrDefault(r => r.Channel == "vapourPressureDeficit").Facts;
            if (humidity is null)
            {
                continue;
            }

            string[] fitting = [.. ((string[])["Cel", "[degF]"]).Where(code => Fits(air, humidity, dew, deficit, code))];
            if (fitting.Length == 1)
            {
                return new TemperatureScale(fitting[0], Sureness.Sure, $"{(dew is null ? "VPD" : "dew point")} and humidity of the file agree with it only so");
            }
        }

        return null;
    }

    private static bool Fits(ColumnFacts air, ColumnFacts humidity, ColumnFacts? dew, ColumnFacts? deficit, string code)
    {
        double[] t = Celsius(air, code);
        double[] h = Percent(humidity);
        return dew is not null ? AirCheck.DewPointAgrees(t, Celsius(dew, code), h) == true
            : deficit is not null && AirCheck.DeficitUnit(t, h, deficit.Values) is not null;
    }

    private static TemperatureScale ByValues(IReadOnlyList<(ColumnFacts Facts, string Channel)> columns, FileContext context)
    {
        foreach ((ColumnFacts facts, string channel) in columns.Where(c => c.Facts.Count > 0))
        {
            bool inside = channel != "outsideTemperature";
            string values = FormattableString.Invariant($"values from {facts.At(0.02):0.#} to {facts.At(0.98):0.#}");
            if (facts.Median > HottestMedianC && facts.Median < 115)
            {
                return new TemperatureScale("[degF]", Sureness.Likely, $"{values}: no air is so hot in °C");
            }

            if (inside && facts.Median is > ColdestMedianC and < FreezingF && facts.Max < 60)
            {
                return new TemperatureScale("Cel", Sureness.Likely, $"{values}: in °F a house would be frozen");
            }
        }

        (ColumnFacts Facts, string Channel) outside = columns.FirstOrDefault(c => c.Channel == "outsideTemperature" && c.Facts.Count > 0);
        return outside.Facts is { } sky && sky.Median < FreezingF && !context.IsAmerican
            ? new TemperatureScale("Cel", Sureness.Likely, FormattableString.Invariant($"values from {sky.At(0.02):0.#} to {sky.At(0.98):0.#}, and nothing of the file is American"))
            : new TemperatureScale(null, Sureness.Unsure, "the values may be °C or °F");
    }

    /// <summary>Values of a column in °C.</summary>
    public static double[] Celsius(ColumnFacts facts, string code)
        => UnitCatalogue.TryGet(Quantity.Temperature, code, out Unit? unit) ? [.. facts.Values.Select(unit.ToSi)] : facts.Values;

    /// <summary>Values of a humidity in percent, whether it counts to 1 or to 100.</summary>
    public static double[] Percent(ColumnFacts facts)
        => facts.Max <= 1.1 ? [.. facts.Values.Select(v => Math.Min(100, v * 100))] : [.. facts.Values.Select(v => v is > 100 and < 104 ? 100 : v)];
}
