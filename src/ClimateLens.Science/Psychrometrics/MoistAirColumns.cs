using System.Numerics.Tensors;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>The moist-air functions over whole columns, with the default form <see cref="MagnusForm.Buck1981Water"/>.</summary>
/// <remarks>
/// <para>Columns of one call have the same length and the result overlaps no input; otherwise an <see cref="ArgumentException"/>
/// is thrown. Where an input is NaN or impossible (<see cref="Limits"/>) the result is NaN in that place.</para>
/// <para><b>Error:</b> agrees with the scalar functions to 1e-12, relative to the larger of 1 and the value (MoistAirColumnsTests);
/// formulas, sources and errors are theirs.</para>
/// </remarks>
public static partial class MoistAirColumns
{
    private static readonly MagnusForm Form = MagnusForm.Buck1981Water;

    /// <summary>Saturation vapour pressure over water. [kPa]</summary>
    /// <param name="temperatureC">Temperature, -100 to 100. [°C]</param>
    /// <param name="resultKPa">Receives the saturation vapour pressure. [kPa]</param>
    public static void SaturationVapourPressureKPa(ReadOnlySpan<double> temperatureC, Span<double> resultKPa)
    {
        Check(temperatureC, temperatureC, resultKPa);
        TensorPrimitives.Add(temperatureC, Form.CDegC, resultKPa);
        TensorPrimitives.Divide(temperatureC, resultKPa, resultKPa);
        TensorPrimitives.Multiply(resultKPa, Form.B, resultKPa);
        TensorPrimitives.Exp(resultKPa, resultKPa);
        TensorPrimitives.Multiply(resultKPa, Form.AKPa, resultKPa);
        for (int i = 0; i < resultKPa.Length; i++)
        {
            if (!Limits.IsTemperature(temperatureC[i]))
            {
                resultKPa[i] = double.NaN;
            }
        }
    }

    /// <summary>Vapour pressure. [kPa]</summary>
    /// <param name="temperatureC">Air temperature, -100 to 100. [°C]</param>
    /// <param name="relativeHumidityPct">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="resultKPa">Receives the vapour pressure. [kPa]</param>
    public static void VapourPressureKPa(
        ReadOnlySpan<double> temperatureC, ReadOnlySpan<double> relativeHumidityPct, Span<double> resultKPa)
    {
        Check(temperatureC, relativeHumidityPct, resultKPa);
        SaturationVapourPressureKPa(temperatureC, resultKPa);
        for (int i = 0; i < resultKPa.Length; i++)
        {
            double humidity = relativeHumidityPct[i];
            resultKPa[i] = Limits.IsHumidity(humidity) ? resultKPa[i] * (humidity / 100) : double.NaN;
        }
    }

    /// <summary>Vapour-pressure deficit of the air, 0 or more. [kPa]</summary>
    /// <param name="temperatureC">Air temperature, -100 to 100. [°C]</param>
    /// <param name="relativeHumidityPct">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="resultKPa">Receives the deficit. [kPa]</param>
    public static void VapourPressureDeficitKPa(
        ReadOnlySpan<double> temperatureC, ReadOnlySpan<double> relativeHumidityPct, Span<double> resultKPa)
    {
        Check(temperatureC, relativeHumidityPct, resultKPa);
        SaturationVapourPressureKPa(temperatureC, resultKPa);
        for (int i = 0; i < resultKPa.Length; i++)
        {
            double humidity = relativeHumidityPct[i];
            resultKPa[i] = Limits.IsHumidity(humidity) ? resultKPa[i] * (1 - (humidity / 100)) : double.NaN;
        }
    }

    /// <summary>Dew point, never above the air temperature; NaN also for perfectly dry air. [°C]</summary>
    /// <param name="temperatureC">Air temperature, -100 to 100. [°C]</param>
    /// <param name="relativeHumidityPct">Relative humidity over water, above 0 up to 100. [%]</param>
    /// <param name="resultC">Receives the dew point. [°C]</param>
    public static void DewPointC(
        ReadOnlySpan<double> temperatureC, ReadOnlySpan<double> relativeHumidityPct, Span<double> resultC)
    {
        Check(temperatureC, relativeHumidityPct, resultC);
        TensorPrimitives.Divide(relativeHumidityPct, 100, resultC);
        TensorPrimitives.Log(resultC, resultC);
        for (int i = 0; i < resultC.Length; i++)
        {
            double t = temperatureC[i], humidity = relativeHumidityPct[i];
            double g = resultC[i] + (Form.B * t / (Form.CDegC + t));
            resultC[i] = Limits.IsTemperature(t) && humidity > 0 && humidity <= Limits.HighestHumidityPct
                ? Math.Min(t, Form.CDegC * g / (Form.B - g)) // Min: rounding passes t by 1e-14 at 100 %
                : double.NaN;
        }
    }

    /// <summary>Dew point of air with a given vapour pressure. [°C]</summary>
    /// <param name="vapourPressureKPa">Vapour pressure, above 0 up to 105. [kPa]</param>
    /// <param name="resultC">Receives the dew point. [°C]</param>
    public static void DewPointFromVapourPressureC(ReadOnlySpan<double> vapourPressureKPa, Span<double> resultC)
    {
        Check(vapourPressureKPa, vapourPressureKPa, resultC);
        TensorPrimitives.Divide(vapourPressureKPa, Form.AKPa, resultC);
        TensorPrimitives.Log(resultC, resultC);
        for (int i = 0; i < resultC.Length; i++)
        {
            double g = resultC[i];
            resultC[i] = vapourPressureKPa[i] is > 0 and <= Limits.HighestVapourPressureKPa
                ? Form.CDegC * g / (Form.B - g)
                : double.NaN;
        }
    }

    /// <summary>Absolute humidity. [g/m³]</summary>
    /// <param name="temperatureC">Air temperature, -100 to 100. [°C]</param>
    /// <param name="relativeHumidityPct">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="resultGm3">Receives the mass of vapour in a volume of air. [g/m³]</param>
    public static void AbsoluteHumidityGm3(
        ReadOnlySpan<double> temperatureC, ReadOnlySpan<double> relativeHumidityPct, Span<double> resultGm3)
    {
        VapourPressureKPa(temperatureC, relativeHumidityPct, resultGm3);
        ToDensity(temperatureC, resultGm3);
    }

    private static void ToDensity(ReadOnlySpan<double> temperatureC, Span<double> pressureToDensity)
    {
        TensorPrimitives.Multiply(pressureToDensity, VapourDensity.GramKelvinPerCubicMetreKPa, pressureToDensity);
        for (int i = 0; i < pressureToDensity.Length; i++)
        {
            pressureToDensity[i] /= temperatureC[i] + Limits.ZeroCelsiusK;
        }
    }

    private static void Check(ReadOnlySpan<double> first, ReadOnlySpan<double> second, ReadOnlySpan<double> result)
    {
        Guard.SameLength(first.Length, second.Length);
        Guard.SameLength(first.Length, result.Length);
        if (result.Overlaps(first) || result.Overlaps(second))
        {
            throw new ArgumentException("The result overlaps an input column.", nameof(result));
        }
    }
}
