using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Science.Tests.References;

/// <summary>A saturation curve of the tests only: a yardstick that shares no coefficient with the program.</summary>
internal sealed record ReferenceCurve(string Name, bool OverIce, Func<double, double> PascalAtKelvin)
    : SaturationCurve(Name, OverIce, double.NaN, double.NaN)
{
    internal override double VapourPressureKPa(double temperatureC) => PascalAtKelvin(temperatureC + 273.15) / 1000;

    internal override double SlopeKPaPerK(double temperatureC) =>
        (VapourPressureKPa(temperatureC + 0.001) - VapourPressureKPa(temperatureC - 0.001)) / 0.002;

    internal override double TemperatureC(double vapourPressureKPa)
    {
        (double low, double high) = (-100, 100);
        while (high - low > 1e-9)
        {
            double middle = (low + high) / 2;
            (low, high) = VapourPressureKPa(middle) < vapourPressureKPa ? (middle, high) : (low, middle);
        }

        return high;
    }
}
