using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>What the errors of a temperature and a humidity sensor do to dew point, margin and deficit.</summary>
/// <remarks>
/// <para><b>Formula:</b> partial derivatives, s the slope of the saturation curve:
/// <c>∂Td/∂RH = (es/100)/s(Td)</c>, <c>∂Td/∂t = (RH/100)·s(t)/s(Td)</c>, <c>∂VPD/∂RH = -es/100</c>, <c>∂VPD/∂t = (1 - RH/100)·s(t)</c>; the margin
/// t - Td of one and the same sensor takes <c>1 - ∂Td/∂t</c>, so its temperature error nearly cancels.</para>
/// <para><b>Source:</b> first-order propagation, [GUM08] section 5.1; derivatives of the curve's own form.</para>
/// <para><b>Error:</b> first order: within 5 % of the full change for ±2 % RH and ±0.3 K from 50 to 97 % RH (SensorErrorTests).
/// <b>Check value:</b> 18 °C, 90 %, ±0.3 K, ±2 %: 0.458 K in Td, 0.349 K in the margin, 0.0414 kPa in VPD (WMO form).</para>
/// </remarks>
public static class SensorError
{
    /// <summary>Error of the dew point. [K]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity over water, above 0 up to 100. [%]</param>
    /// <param name="temperatureError">Error of the temperature, 0 or more. [K]</param>
    /// <param name="humidityError">Error of the relative humidity in points, 0 or more. [%]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static PropagatedError OfDewPoint(
        Celsius temperature, RelativeHumidity humidity,
        KelvinDifference temperatureError, HumidityPoints humidityError, SaturationCurve? curve = null)
    {
        SaturationCurve used = VapourPressure.CurveOr(curve);
        double t = Limits.Temperature(temperature);
        double share = Limits.HumidityAboveZero(humidity) / 100;
        double saturation = used.VapourPressureKPa(t);
        double slopeAtDewPoint = used.SlopeKPaPerK(used.TemperatureC(share * saturation));
        return new(
            share * used.SlopeKPaPerK(t) / slopeAtDewPoint * Size(temperatureError),
            saturation / 100 / slopeAtDewPoint * Size(humidityError));
    }

    /// <summary>Error of the dew-point margin t - Td, both from the same sensor. [K]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity over water, above 0 up to 100. [%]</param>
    /// <param name="temperatureError">Error of the temperature, 0 or more. [K]</param>
    /// <param name="humidityError">Error of the relative humidity in points, 0 or more. [%]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>With a surface temperature from another sensor nothing cancels: combine its error with that of the dew point.</remarks>
    public static PropagatedError OfMargin(
        Celsius temperature, RelativeHumidity humidity,
        KelvinDifference temperatureError, HumidityPoints humidityError, SaturationCurve? curve = null)
    {
        PropagatedError dewPoint = OfDewPoint(temperature, humidity, temperatureError, humidityError, curve);
        return new(temperatureError.Value - dewPoint.FromTemperature, -dewPoint.FromHumidity);
    }

    /// <summary>Error of the vapour-pressure deficit of the air. [kPa]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="temperatureError">Error of the temperature, 0 or more. [K]</param>
    /// <param name="humidityError">Error of the relative humidity in points, 0 or more. [%]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static PropagatedError OfDeficit(
        Celsius temperature, RelativeHumidity humidity,
        KelvinDifference temperatureError, HumidityPoints humidityError, SaturationCurve? curve = null)
    {
        SaturationCurve used = VapourPressure.CurveOr(curve);
        double t = Limits.Temperature(temperature);
        double share = Limits.Humidity(humidity) / 100;
        return new(
            (1 - share) * used.SlopeKPaPerK(t) * Size(temperatureError),
            -used.VapourPressureKPa(t) / 100 * Size(humidityError));
    }

    private static double Size(KelvinDifference temperatureError) =>
        Guard.Within(temperatureError.Value, 0, 20, "K", nameof(temperatureError));

    private static double Size(HumidityPoints humidityError) =>
        Guard.Within(humidityError.Value, 0, 100, "%", nameof(humidityError));
}
