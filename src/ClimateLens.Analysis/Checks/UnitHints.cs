using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// Values that look as if the nursery file names the wrong unit. All limits are common practice, no source. Half a day of values is
/// needed, so that a few odd ones say nothing of the unit.
/// </summary>
internal static class UnitHints
{
    /// <summary>Relative humidity that never exceeds this is a fraction. [%]</summary>
    private const double LargestFraction = 1.5;

    /// <summary>Median air temperatures that are none of a greenhouse in °C, but are in °F. [°C]</summary>
    private const double LowestFahrenheit = 45, HighestFahrenheit = 100;

    /// <summary>VPD that stays under this day and night is in another unit. [kPa]</summary>
    private const double NearZeroKPa = 0.15;

    private const int FewestHours = 12;

    /// <summary>Adds a note to every series that looks so.</summary>
    public static HousePeriod AddNotes(HousePeriod period)
    {
        SensorNotes notes = period.Notes;
        foreach (Series series in period.Series)
        {
            notes = Of(period, series) is string hint ? notes.With(series.Key, $"{char.ToUpperInvariant(hint[0])}{hint[1..]}.") : notes;
        }

        return period with { Notes = notes };
    }

    /// <summary>What a series looks like, or null.</summary>
    public static string? Of(HousePeriod period, Series series)
    {
        double[] used = [.. Quality.Used(period.Frame, series.Key).Skip(period.FirstStep).Where(double.IsFinite)];
        int fewest = FewestHours * period.StepsPerHour;
        return series.Channel.Name switch
        {
            _ when series.Channel.Quantity == Quantity.RelativeHumidity && used.Length >= fewest && used.Max() <= LargestFraction
                => Phrase.Of("looks like a fraction: unit = \"1\""),
            // Over all values: most Fahrenheit readings of a greenhouse fail the range of Celsius.
            "airTemperature" when Middle(period.Frame.Values(series.Key).AsSpan()[period.FirstStep..], fewest) is >= LowestFahrenheit and <= HighestFahrenheit
                => Phrase.Of("looks like degrees Fahrenheit: unit = \"[degF]\""),
            "vapourPressureDeficit" when used.Length >= fewest && used.Max() < NearZeroKPa
                => Phrase.Of($"stays near zero day and night (under {Say.Number(NearZeroKPa)} kPa): check the unit"),
            _ => null,
        };
    }

    /// <summary>The middle of the known values; NaN where they are too few.</summary>
    private static double Middle(ReadOnlySpan<double> values, int fewest)
    {
        double[] known = new double[values.Length];
        int count = 0;
        foreach (double value in values)
        {
            known[count] = value;
            count += double.IsFinite(value) ? 1 : 0;
        }

        Array.Sort(known, 0, count);
        return count >= fewest && count > 0 ? known[count / 2] : double.NaN;
    }
}
