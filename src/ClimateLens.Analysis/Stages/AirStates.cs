using System.Runtime.InteropServices;
using ClimateLens.Analysis.Moisture;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// Third stage: what temperature and humidity say of the air, step by step: saturation and vapour pressure, VPD, dew point,
/// absolute humidity. Humidity over 100 % counts as 100 %. Where no humidity is logged it is derived from what is.
/// </summary>
public static class AirStates
{
    /// <summary>Adds the air's state to a house period; NaN columns where temperature or humidity is not known.</summary>
    public static HousePeriod Add(HousePeriod period)
    {
        int count = period.Frame.Axis.Count;
        double[] temperature = period.Temperature is Series t ? Quality.Used(period.Frame, t.Key) : Unknown(count);
        (HousePeriod known, double[] humidity) = HouseHumidity.Of(period, temperature);
        HousePeriod withAir = known with { Frame = Columns(known.Frame, temperature, humidity) };
        return LoggedComparison.AddNotes(withAir);
    }

    /// <summary>Adds a column of our own making: passed where it has a value, missing elsewhere.</summary>
    internal static Frame With(Frame frame, ColumnKey key, double[] values)
    {
        QualityFlag[] flags = new QualityFlag[values.Length];
        for (int i = 0; i < flags.Length; i++)
        {
            flags[i] = double.IsNaN(values[i]) ? QualityFlag.Missing : QualityFlag.Pass;
        }

        return frame.With(key, ImmutableCollectionsMarshal.AsImmutableArray(values), ImmutableCollectionsMarshal.AsImmutableArray(flags));
    }

    private static Frame Columns(Frame frame, double[] temperature, double[] humidity)
    {
        int count = temperature.Length;
        double[] saturation = new double[count], vapour = new double[count], deficit = new double[count];
        double[] dewPoint = new double[count], density = new double[count];
        MoistAirColumns.SaturationVapourPressureKPa(temperature, saturation);
        MoistAirColumns.VapourPressureKPa(temperature, humidity, vapour);
        MoistAirColumns.VapourPressureDeficitKPa(temperature, humidity, deficit);
        MoistAirColumns.DewPointC(temperature, humidity, dewPoint);
        MoistAirColumns.AbsoluteHumidityGm3(temperature, humidity, density);
        frame = With(frame, Derived.TemperatureC, temperature);
        frame = With(frame, Derived.HumidityPct, humidity);
        frame = With(frame, Derived.SaturationKPa, saturation);
        frame = With(frame, Derived.VapourPressureKPa, vapour);
        frame = With(frame, Derived.DeficitKPa, deficit);
        frame = With(frame, Derived.DewPointC, dewPoint);
        return With(frame, Derived.AbsoluteHumidityGm3, density);
    }

    private static double[] Unknown(int count)
    {
        double[] values = new double[count];
        Array.Fill(values, double.NaN);
        return values;
    }
}
