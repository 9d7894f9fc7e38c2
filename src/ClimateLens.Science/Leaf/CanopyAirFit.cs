using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Leaf;

/// <summary>Air among the leaves against the main sensor: an assumption brought up to date by a sensor that hangs there.</summary>
/// <param name="Temperature">Difference in temperature. [K]</param>
/// <param name="VapourPressure">Difference in vapour pressure. [kPa]</param>
/// <remarks>
/// <para><b>Terms:</b> a lasting difference, the closure of the canopy (<see cref="Canopy.CanopyShelter.Closure"/>), closure times sun, and water that
/// still evaporates. Vapour pressure, not humidity: a colder canopy is damper without holding more vapour.</para>
/// <para><b>Before any reading</b> closure has the values of <see cref="InCanopyAir"/>; sun and water count for nothing, give or take 2 K and 0.3 kPa (sun of 500 W/m²),
/// 1 K and 0.2 kPa (just watered), a lasting difference of sensors 0.4 K and 0.05 kPa. <b>Source:</b> the form is a choice of this project; that sun and leaf
/// area decide is [WESTREENEN20] (abstract).</para>
/// <para><b>Error:</b> that of the covariance, if the terms are right. A week hardly tells closure from a lasting difference; what has not been seen (a cover, a sun) falls
/// back on the assumption with its wide error. One sensor among the leaves stands for all of them.</para>
/// </remarks>
public sealed record CanopyAirFit(DifferenceFit Temperature, DifferenceFit VapourPressure)
{
    private const double ReferenceC = 18, ReferencePct = 80; // where points of humidity become vapour pressure: a night under glass
    private const double FirstResidualK = 0.5, FirstResidualKPa = 0.05;

    private static SaturationCurve Curve => MagnusForm.Buck1981Water;

    /// <summary>Fits the difference.</summary>
    /// <param name="before">What is assumed without readings.</param>
    /// <param name="sample">The readings; none leaves the assumption.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The assumption is impossible.</exception>
    /// <remarks>Steps in which a reading is not known or impossible are left out.</remarks>
    public static CanopyAirFit Of(InCanopyAir before, in CanopyAirSample sample)
    {
        sample.Check();
        CanopyAirOffset closed = before.At(1);
        List<double[]> terms = [];
        List<double> warmer = [], moister = [];
        for (int step = 0; step < sample.Length; step++)
        {
            double mainC = Possible(sample.MainC[step], -30, 60), canopyC = Possible(sample.CanopyC[step], -30, 60);
            double main = Curve.VapourPressureKPa(mainC) * Possible(sample.MainHumidityPct[step], 0, 100) / 100;
            double canopy = Curve.VapourPressureKPa(canopyC) * Possible(sample.CanopyHumidityPct[step], 0, 100) / 100;
            CanopyAirDrivers drivers = sample.Drivers(step);
            if (!drivers.Known || double.IsNaN(main + canopy))
            {
                continue;
            }

            double[] row = new double[CanopyAirDrivers.Terms];
            drivers.Fill(row);
            terms.Add(row);
            warmer.Add(canopyC - mainC);
            moister.Add(canopy - main);
        }

        return new(
            DifferenceFit.Of(
                [0, closed.TemperatureK, 0, 0], [0.4, Some(closed.TemperatureErrorK), 2, 1], [.. terms], [.. warmer], FirstResidualK),
            DifferenceFit.Of(
                [0, ClosedKPa(closed), 0, 0], [0.05, Some(ClosedErrorKPa(closed)), 0.3, 0.2], [.. terms], [.. moister], FirstResidualKPa));
    }

    /// <summary>The difference at one moment, as humidity at the main sensor's air.</summary>
    /// <param name="drivers">What it hangs on.</param>
    /// <param name="mainAir">Main sensor, -30 to 60. [°C]</param>
    /// <param name="mainHumidity">Main sensor, 0 to 100. [%]</param>
    /// <returns>The difference and the standard error of its mean; NaN where an input is not known. Air among the leaves is held to 0 to 100 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>Allocates nothing.</remarks>
    public CanopyAirOffset At(CanopyAirDrivers drivers, Celsius mainAir, RelativeHumidity mainHumidity)
    {
        double airC = Guard.Within(mainAir.Value, -30, 60, "°C", nameof(mainAir));
        double mainPct = Limits.Humidity(mainHumidity);
        Guard.Within(drivers.Cover, 0, 1, "(share)", nameof(drivers));
        Guard.Within(drivers.SunWm2, 0, 1500, "W/m²", nameof(drivers));
        Guard.Within(drivers.HoursSinceWatering, 0, double.PositiveInfinity, "h", nameof(drivers));
        Span<double> terms = stackalloc double[CanopyAirDrivers.Terms];
        drivers.Fill(terms);
        double colder = Temperature.Value(terms), colderError = Temperature.Error(terms);
        double leafAirC = airC + colder;
        double saturated = Curve.VapourPressureKPa(leafAirC);
        double vapour = (Curve.VapourPressureKPa(airC) * mainPct / 100) + VapourPressure.Value(terms);
        double humidity = Math.Clamp(100 * vapour / saturated, 0, 100);
        double byVapour = 100 / saturated * VapourPressure.Error(terms);
        double byTemperature = humidity * Curve.SlopeKPaPerK(leafAirC) / saturated * colderError;
        return new(colder, colderError, humidity - mainPct, double.Hypot(byVapour, byTemperature));
    }

    private static double ClosedKPa(CanopyAirOffset closed) =>
        (Curve.VapourPressureKPa(ReferenceC + closed.TemperatureK) * (ReferencePct + closed.HumidityPct) / 100)
        - (Curve.VapourPressureKPa(ReferenceC) * ReferencePct / 100);

    private static double ClosedErrorKPa(CanopyAirOffset closed) => double.Hypot(
        Curve.SlopeKPaPerK(ReferenceC) * ReferencePct / 100 * closed.TemperatureErrorK,
        Curve.VapourPressureKPa(ReferenceC) * closed.HumidityErrorPct / 100);

    /// <summary>An assumption without error still leaves the fit a way to be solved.</summary>
    private static double Some(double error) => Math.Max(error, 1e-6);

    private static double Possible(double value, double low, double high) => value >= low && value <= high ? value : double.NaN;
}
