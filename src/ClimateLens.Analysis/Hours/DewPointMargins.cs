using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Analysis.Hours;

/// <summary>
/// Dew-point margin and risk of every hour, for the readings as they are and for every draw, by the same code.
/// </summary>
/// <remarks>
/// <para><b>Formula:</b> margin = leaf temperature - dew point of the hour's mean vapour pressure. A risk hour has a margin
/// below the rule's MarginK at an air temperature within the rule's range. Sources: docs/science/risk-hours.md.</para>
/// </remarks>
internal sealed class DewPointMargins(HourTable hours, RiskRules rules)
{
    private readonly AirUnderBias _air = new(hours.AirTemperatureC);
    private readonly double[] _temperatureK = new double[hours.Count];
    private readonly double[] _humidityPct = new double[hours.Count];

    /// <summary>Dew point of each hour. [°C]</summary>
    public double[] DewPointC { get; } = new double[hours.Count];

    /// <summary>Leaf temperature minus dew point of each hour. [K]</summary>
    public double[] MarginK { get; } = new double[hours.Count];

    /// <summary>Whether each hour is a risk hour; false where it has no data.</summary>
    public bool[] Risk { get; } = new bool[hours.Count];

    /// <summary>Margins and risk of the readings as they are.</summary>
    public void WithoutError()
    {
        Array.Clear(_humidityPct);
        Compute(0, 0, 0);
    }

    /// <summary>Margins and risk under one draw.</summary>
    /// <param name="draws">All draws.</param>
    /// <param name="draw">Index of the draw.</param>
    /// <param name="hourly">One number in [-1, 1) an hour: the hour's own error in half-widths.</param>
    public void UnderDraw(BiasDraws draws, int draw, ReadOnlySpan<double> hourly)
    {
        for (int h = 0; h < _humidityPct.Length; h++)
        {
            _humidityPct[h] = draws.HumidityPct[draw] + (draws.HourlyHumidityPct * hourly[h]);
        }

        Compute(draws.TemperatureK[draw], draws.LeafOffsetK[draw], draws.LeafSensorK[draw]);
    }

    private void Compute(double temperatureK, double leafOffsetK, double leafSensorK)
    {
        Array.Fill(_temperatureK, temperatureK);
        _air.Apply(hours.SaturationKPa, hours.VapourPressureKPa, _temperatureK, _humidityPct);
        MoistAirColumns.DewPointFromVapourPressureC(_air.VapourPressureKPa, DewPointC);
        for (int h = 0; h < Risk.Length; h++)
        {
            // An assumed leaf follows the air sensor's error; a measured one has its own.
            double leafError = hours.LeafMeasured[h] ? leafSensorK : temperatureK + (hours.NightShare[h] * leafOffsetK);
            MarginK[h] = hours.LeafTemperatureC[h] + leafError - DewPointC[h];
            Risk[h] = MarginK[h] < rules.MarginK
                && _air.WarmedC[h] >= rules.TemperatureLowC
                && _air.WarmedC[h] <= rules.TemperatureHighC;
        }
    }
}
