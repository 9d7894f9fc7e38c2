using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>Mean air of one hour beside a watering, over the steps that lie wholly in it. NaN-free.</summary>
/// <param name="TemperatureC">Mean temperature. [°C]</param>
/// <param name="HumidityPct">Mean relative humidity. [%]</param>
/// <param name="SaturationKPa">Mean saturation vapour pressure. [kPa]</param>
/// <param name="VapourKPa">Mean vapour pressure. [kPa]</param>
/// <param name="AbsoluteHumidityGm3">Mean absolute humidity. [g/m³]</param>
internal readonly record struct AirAround(double TemperatureC, double HumidityPct, double SaturationKPa, double VapourKPa, double AbsoluteHumidityGm3)
{
    /// <summary>Mean of the hour that begins at an instant; null when less than half of it has data.</summary>
    public static AirAround? Of(HousePeriod period, Instant from)
    {
        Frame frame = period.Frame;
        TimeAxis axis = frame.Axis;
        ImmutableArray<double> t = frame.Values(Derived.TemperatureC), rh = frame.Values(Derived.HumidityPct);
        ImmutableArray<double> es = frame.Values(Derived.SaturationKPa), e = frame.Values(Derived.VapourPressureKPa);
        ImmutableArray<double> ah = frame.Values(Derived.AbsoluteHumidityGm3);
        int first = from <= axis.Start ? 0 : axis.IndexOf(from - Duration.Epsilon) + 1;
        int used = 0;
        AirAround sum = default;
        for (int i = first; i < axis.Count && axis.StartOf(i) + axis.Step <= from + Duration.FromHours(1); i++)
        {
            if (double.IsFinite(ah[i]))
            {
                used++;
                sum = new(sum.TemperatureC + t[i], sum.HumidityPct + rh[i], sum.SaturationKPa + es[i], sum.VapourKPa + e[i], sum.AbsoluteHumidityGm3 + ah[i]);
            }
        }

        return used == 0 || 2 * used < period.StepsPerHour
            ? null
            : new(sum.TemperatureC / used, sum.HumidityPct / used, sum.SaturationKPa / used, sum.VapourKPa / used, sum.AbsoluteHumidityGm3 / used);
    }

    /// <summary>This hour's absolute humidity under every draw of the sensors' errors. [g/m³]</summary>
    /// <param name="draws">The draws; their biases are those of every other hour, the hourly error is this hour's own.</param>
    /// <param name="random">Gives the hourly error.</param>
    public double[] Drawn(BiasDraws draws, SeededRandom random)
    {
        double[] temperature = new double[BiasDraws.Count], saturation = new double[BiasDraws.Count];
        Array.Fill(temperature, TemperatureC);
        AirUnderBias air = new(temperature);
        Array.Fill(saturation, SaturationKPa);
        double[] vapour = new double[BiasDraws.Count], humidity = new double[BiasDraws.Count];
        Array.Fill(vapour, VapourKPa);
        for (int d = 0; d < humidity.Length; d++)
        {
            humidity[d] = draws.HumidityPct[d] + (draws.HourlyHumidityPct * random.NextUniform(-1, 1));
        }

        air.Apply(saturation, vapour, draws.TemperatureK, humidity);
        double[] drawn = new double[BiasDraws.Count];
        for (int d = 0; d < drawn.Length; d++)
        {
            // The unbiased draw gives back the mean itself: the hour's own ratio of density to e/T carries over.
            double plain = VapourKPa / (TemperatureC + 273.15);
            drawn[d] = AbsoluteHumidityGm3 * (air.VapourPressureKPa[d] / (air.WarmedC[d] + 273.15)) / plain;
        }

        return drawn;
    }
}
