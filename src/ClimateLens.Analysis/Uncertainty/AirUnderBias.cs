using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Analysis.Uncertainty;

/// <summary>
/// The vapour pressure of hours as it would be if the sensors' errors were taken off, and the scratch memory that it needs.
/// With no error it gives back the hour's own mean vapour pressure to the last bit.
/// </summary>
/// <remarks>
/// <para><b>Formula:</b> <c>e' = min(e + es·b_RH/100, es) · es(t + b_T)/es(t)</c> with the hour's means e, es, t. Saturation is taken
/// at the mean temperature for the ratio only; within an hour of ±3 K that is right to 0.0001 of e.</para>
/// </remarks>
internal sealed class AirUnderBias
{
    private readonly double[] _atMean;
    private readonly double[] _warmedSaturation;

    /// <summary>Prepares for hours with these mean temperatures.</summary>
    public AirUnderBias(double[] temperatureC)
    {
        TemperatureC = temperatureC;
        _atMean = new double[temperatureC.Length];
        _warmedSaturation = new double[temperatureC.Length];
        WarmedC = new double[temperatureC.Length];
        VapourPressureKPa = new double[temperatureC.Length];
        MoistAirColumns.SaturationVapourPressureKPa(temperatureC, _atMean);
    }

    /// <summary>Mean temperatures as measured. [°C]</summary>
    public double[] TemperatureC { get; }

    /// <summary>Mean temperatures with the error. [°C]</summary>
    public double[] WarmedC { get; }

    /// <summary>Vapour pressures with the errors. [kPa]</summary>
    public double[] VapourPressureKPa { get; }

    /// <summary>Applies one draw.</summary>
    /// <param name="saturationKPa">Mean saturation vapour pressure by hour. [kPa]</param>
    /// <param name="vapourKPa">Mean vapour pressure by hour. [kPa]</param>
    /// <param name="temperatureK">Error of temperature by hour. [K]</param>
    /// <param name="humidityPct">Error of humidity by hour. [%]</param>
    public void Apply(double[] saturationKPa, double[] vapourKPa, ReadOnlySpan<double> temperatureK, ReadOnlySpan<double> humidityPct)
    {
        for (int h = 0; h < WarmedC.Length; h++)
        {
            WarmedC[h] = TemperatureC[h] + temperatureK[h];
        }

        MoistAirColumns.SaturationVapourPressureKPa(WarmedC, _warmedSaturation);
        for (int h = 0; h < WarmedC.Length; h++)
        {
            double shifted = vapourKPa[h] + (saturationKPa[h] * humidityPct[h] / 100);
            double possible = Math.Clamp(shifted, Driest * saturationKPa[h], saturationKPa[h]);
            VapourPressureKPa[h] = possible * (_warmedSaturation[h] / _atMean[h]);
        }
    }

    /// <summary>Relative humidity below which a dew point has no meaning any more. [1]</summary>
    private const double Driest = 0.001;
}
