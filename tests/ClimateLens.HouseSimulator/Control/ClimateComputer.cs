using ClimateLens.HouseSimulator.Weather;

namespace ClimateLens.HouseSimulator.Control;

/// <summary>A plain climate computer: moves pipe, vents and screen once a minute from what the sensors say.</summary>
public sealed class ClimateComputer(ControlSettings settings)
{
    private const int DayStartMin = 6 * 60, DayEndMin = 18 * 60, RampMin = 90;
    private double _integral, _lightSmooth, _leastPipeC, _leastLeePct;

    public double HeatingSetPointC { get; private set; } = settings.NightC;

    public double PipeC { get; private set; } = 20;

    public double LeePct { get; private set; }

    public double WindPct { get; private set; }

    public double ScreenPct { get; private set; }

    /// <summary>Holds pipe and lee vents at a minimum from now on; 0: none. [°C, %]</summary>
    public void Hold(double pipeC, double leePct) => (_leastPipeC, _leastLeePct) = (pipeC, leePct);

    /// <summary>One minute of control.</summary>
    /// <param name="localMinuteOfDay">Minutes after midnight on the wall clock. [min]</param>
    /// <param name="airC">Air temperature as the computer reads it. [°C]</param>
    /// <param name="humidityPct">Relative humidity as the computer reads it. [%]</param>
    /// <param name="outside">Weather.</param>
    public void Step(int localMinuteOfDay, double airC, double humidityPct, in WeatherPoint outside)
    {
        _lightSmooth += (outside.RadiationWm2 - _lightSmooth) / 12;
        HeatingSetPointC = Math.Round(settings.NightC + ((settings.DayC - settings.NightC) * DayShare(localMinuteOfDay)), 1);
        StepPipe(airC, humidityPct);
        StepVents(airC, humidityPct, outside);
        StepScreen(humidityPct, outside);
    }

    private static double DayShare(int minute)
    {
        double rise = Math.Clamp((minute - DayStartMin) / (double)RampMin, 0, 1);
        double fall = Math.Clamp((minute - DayEndMin) / (double)RampMin, 0, 1);
        return rise - fall;
    }

    private void StepPipe(double airC, double humidityPct)
    {
        double error = HeatingSetPointC - airC;
        _integral = Math.Clamp(_integral + (0.12 * error), 0, 40);
        double wanted = error > -1.5 ? 20 + (13 * error) + _integral : 0;
        if (settings.MinimumPipeC > 0 && humidityPct > settings.ReliefPct)
        {
            wanted = Math.Max(wanted, settings.MinimumPipeC);
        }

        wanted = Math.Max(wanted, _leastPipeC);
        double cooling = (PipeC - airC) / 35;
        PipeC = Math.Min(70, PipeC + Math.Clamp(wanted - PipeC, -Math.Max(0, cooling), 1.4));
    }

    private void StepVents(double airC, double humidityPct, in WeatherPoint outside)
    {
        double band = 6 + (0.45 * Math.Max(0, airC - outside.TemperatureC));
        double forHeat = 100 * (airC - HeatingSetPointC - settings.VentAboveK) / band;
        double forHumidity = Math.Min(settings.ReliefLimitPct, settings.ReliefPctPerPct * (humidityPct - settings.ReliefPct));
        bool raining = outside.RainMm > 0;
        double lee = Math.Clamp(Math.Max(Math.Max(forHeat, forHumidity), _leastLeePct), 0, outside.WindMs > 11 ? 25 : raining ? 45 : 100);
        double wind = raining || outside.WindMs > 8 ? 0 : Math.Clamp(1.4 * (forHeat - 35), 0, 100);
        LeePct = Motor(LeePct, lee, 6, 1.5);
        WindPct = Motor(WindPct, wind, 6, 1.5);
    }

    private void StepScreen(double humidityPct, in WeatherPoint outside)
    {
        double wanted = 0;
        if (_lightSmooth < 6 && outside.TemperatureC < settings.NightC - 1)
        {
            wanted = settings.NightScreenPct - (humidityPct > settings.ReliefPct ? settings.ScreenGapPct : 0);
        }
        else if (_lightSmooth > 470)
        {
            wanted = 55; // shade
        }

        ScreenPct = Motor(ScreenPct, wanted, 12, 3);
    }

    // A motor runs at its own speed, and not at all for a trifle.
    private static double Motor(double position, double wanted, double speed, double dead)
        => Math.Abs(wanted - position) < dead && wanted is > 0 and < 100
            ? position
            : Math.Round(position + Math.Clamp(wanted - position, -speed, speed), 1);
}
