using System.Collections.Immutable;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Psychrometrics;
using NodaTime;

namespace ClimateLens.Analysis.Hours;

/// <summary>
/// Hourly means of run-in and period, as columns. An hour has data when at least half of its steps carry both temperature and
/// humidity; all its means are then over just those steps. NaN elsewhere, but for temperature or humidity that half of the steps carry alone. Hours are elapsed hours counted from the period's
/// local midnight, which are clock hours of the zone also where it lies half an hour off UTC.
/// </summary>
public sealed class HourTable
{
    private HourTable(int count, int firstOfPeriod, Instant start, Instant end)
    {
        Count = count;
        FirstOfPeriod = firstOfPeriod;
        Start = start;
        End = end;
        AirTemperatureC = new double[count];
        RelativeHumidityPct = new double[count];
        SaturationKPa = new double[count];
        VapourPressureKPa = new double[count];
        DeficitKPa = new double[count];
        DewPointC = new double[count];
        AbsoluteHumidityGm3 = new double[count];
        LeafAirC = new double[count];
        LeafAirSaturationKPa = new double[count];
        LeafAirVapourKPa = new double[count];
        MainTemperatureShare = new double[count];
        MainHumidityShare = new double[count];
        HasData = new bool[count];
        LeafMeasured = new bool[count];
        Night = new bool[count];
    }

    /// <summary>Hours of run-in and period.</summary>
    public int Count { get; }

    /// <summary>Index of the period's first hour.</summary>
    public int FirstOfPeriod { get; }

    /// <summary>Start of the first hour.</summary>
    public Instant Start { get; }

    /// <summary>End of the last hour, which is shorter where a zone shifts by less than an hour.</summary>
    public Instant End { get; }

    /// <summary>Whether the hour has data.</summary>
    public bool[] HasData { get; }

    /// <summary>Mean air temperature. [°C]</summary>
    public double[] AirTemperatureC { get; }

    /// <summary>Mean relative humidity. [%]</summary>
    public double[] RelativeHumidityPct { get; }

    /// <summary>Mean saturation vapour pressure. [kPa]</summary>
    public double[] SaturationKPa { get; }

    /// <summary>Mean vapour pressure. [kPa]</summary>
    public double[] VapourPressureKPa { get; }

    /// <summary>Mean vapour-pressure deficit. [kPa]</summary>
    public double[] DeficitKPa { get; }

    /// <summary>Dew point of the mean vapour pressure. [°C]</summary>
    public double[] DewPointC { get; }

    /// <summary>Mean absolute humidity. [g/m³]</summary>
    public double[] AbsoluteHumidityGm3 { get; }

    /// <summary>Mean temperature of the air among the leaves, before any assumed difference to the main sensor. [°C]</summary>
    public double[] LeafAirC { get; }

    /// <summary>Its mean saturation vapour pressure. [kPa]</summary>
    public double[] LeafAirSaturationKPa { get; }

    /// <summary>Its mean vapour pressure. [kPa]</summary>
    public double[] LeafAirVapourKPa { get; }

    /// <summary>Share of the hour's used steps in which that temperature is the main sensor's. [1]</summary>
    public double[] MainTemperatureShare { get; }

    /// <summary>Likewise of its humidity. [1]</summary>
    public double[] MainHumidityShare { get; }

    /// <summary>Whether the leaf temperature was measured in at least half of the hour.</summary>
    public bool[] LeafMeasured { get; }

    /// <summary>Whether the sun is down in the middle of the hour.</summary>
    public bool[] Night { get; }

    /// <summary>Start of an hour.</summary>
    public Instant StartOf(int hour) => Start + Duration.FromHours(hour);

    /// <summary>The hour that holds an instant; below 0 or at least <see cref="Count"/> when outside.</summary>
    public int IndexOf(Instant instant)
        => instant < Start ? -1 : (int)Math.Min(Count, Math.Floor((instant - Start).TotalHours));

    /// <summary>Takes the hourly means of a house period.</summary>
    public static HourTable Of(HousePeriod period)
    {
        int perHour = period.StepsPerHour;
        TimeAxis axis = period.Frame.Axis;
        HourTable hours = new((axis.Count + perHour - 1) / perHour, period.FirstStep / perHour, axis.Start, period.Input.Period.End);
        StepColumns steps = StepColumns.Of(period);
        for (int hour = 0; hour < hours.Count; hour++)
        {
            hours.Night[hour] = period.Sun.IsNight(hours.StartOf(hour) + Duration.FromMinutes(30));
            hours.Fill(hour, steps, hour * perHour, Math.Min(axis.Count, (hour + 1) * perHour));
        }

        MoistAirColumns.DewPointFromVapourPressureC(hours.VapourPressureKPa, hours.DewPointC);
        return hours;
    }

    private void Fill(int hour, StepColumns steps, int from, int to)
    {
        int used = 0, leafSteps = 0, mainTemperature = 0, mainHumidity = 0;
        double t = 0, rh = 0, es = 0, e = 0, vpd = 0, ah = 0, leafAir = 0, leafEs = 0, leafE = 0;
        for (int i = from; i < to; i++)
        {
            if (!double.IsFinite(steps.VapourPressureKPa[i]))
            {
                continue;
            }

            used++;
            t += steps.TemperatureC[i];
            rh += steps.HumidityPct[i];
            es += steps.SaturationKPa[i];
            e += steps.VapourPressureKPa[i];
            vpd += steps.DeficitKPa[i];
            ah += steps.AbsoluteHumidityGm3[i];
            leafAir += steps.Foliage.AirC[i];
            leafEs += steps.LeafSaturationKPa[i];
            leafE += steps.LeafVapourKPa[i];
            mainTemperature += steps.Foliage.TemperatureInCanopy[i] ? 0 : 1;
            mainHumidity += steps.Foliage.HumidityInCanopy[i] ? 0 : 1;
            leafSteps += steps.Foliage.LeafFrom[i] == LeafFrom.Sensor ? 1 : 0;
        }

        HasData[hour] = used > 0 && 2 * used >= to - from;
        LeafMeasured[hour] = HasData[hour] && 2 * leafSteps >= to - from;
        double n = HasData[hour] ? used : double.NaN;
        AirTemperatureC[hour] = HasData[hour] ? t / n : MeanAlone(steps.TemperatureC, from, to);
        RelativeHumidityPct[hour] = HasData[hour] ? rh / n : MeanAlone(steps.HumidityPct, from, to);
        SaturationKPa[hour] = es / n;
        VapourPressureKPa[hour] = e / n;
        DeficitKPa[hour] = vpd / n;
        AbsoluteHumidityGm3[hour] = ah / n;
        LeafAirC[hour] = leafAir / n;
        LeafAirSaturationKPa[hour] = leafEs / n;
        LeafAirVapourKPa[hour] = leafE / n;
        MainTemperatureShare[hour] = mainTemperature / n;
        MainHumidityShare[hour] = mainHumidity / n;
    }

    /// <summary>Mean of one column where at least half of the steps carry it; what depends on the other stays unknown.</summary>
    private static double MeanAlone(ImmutableArray<double> column, int from, int to)
    {
        int used = 0;
        double sum = 0;
        for (int i = from; i < to; i++)
        {
            if (double.IsFinite(column[i]))
            {
                used++;
                sum += column[i];
            }
        }

        return used > 0 && 2 * used >= to - from ? sum / used : double.NaN;
    }

    private sealed record StepColumns(
        ImmutableArray<double> TemperatureC,
        ImmutableArray<double> HumidityPct,
        ImmutableArray<double> SaturationKPa,
        ImmutableArray<double> VapourPressureKPa,
        ImmutableArray<double> DeficitKPa,
        ImmutableArray<double> AbsoluteHumidityGm3,
        FoliageWeather Foliage,
        double[] LeafSaturationKPa,
        double[] LeafVapourKPa)
    {
        public static StepColumns Of(HousePeriod period)
        {
            Frame frame = period.Frame;
            FoliageWeather foliage = period.Foliage ?? throw new ArgumentException("The leaf stage comes first.", nameof(period));
            double[] saturation = new double[foliage.Count], vapour = new double[foliage.Count];
            MoistAirColumns.SaturationVapourPressureKPa(foliage.AirC, saturation);
            MoistAirColumns.VapourPressureKPa(foliage.AirC, foliage.HumidityPct, vapour);
            return new(
                frame.Values(Derived.TemperatureC),
                frame.Values(Derived.HumidityPct),
                frame.Values(Derived.SaturationKPa),
                frame.Values(Derived.VapourPressureKPa),
                frame.Values(Derived.DeficitKPa),
                frame.Values(Derived.AbsoluteHumidityGm3),
                foliage,
                saturation,
                vapour);
        }
    }
}
