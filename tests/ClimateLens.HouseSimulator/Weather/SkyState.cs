using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.HouseSimulator.Weather;

/// <summary>Weather at the end of one step of ten minutes; rain is the amount that falls in the step that follows.</summary>
public readonly record struct SkyStep(double TemperatureC, double DewPointC, double Cloud, double WindMs, double RainMm);

/// <summary>The wandering parts of the weather, stepped every ten minutes.</summary>
public sealed class SkyState
{
    private const double StepsAnHour = 6;
    private static readonly Instant AutumnStart = Instant.FromUtc(2025, 9, 1, 0, 0);

    private readonly Wanderer _airMass, _dullSpell, _passingCloud, _dryness, _breeze, _gust;
    private readonly SeededRandom _shower;
    private double _slowCloud = 0.6, _diurnal;
    private bool _raining;

    public SkyState(ulong seed)
    {
        _airMass = new(Seeds.Stream(seed, "air mass"), 48 * StepsAnHour, 2.1);
        _dullSpell = new(Seeds.Stream(seed, "dull spell"), 60 * StepsAnHour, 0.9);
        _passingCloud = new(Seeds.Stream(seed, "passing cloud"), 3 * StepsAnHour, 0.7);
        _dryness = new(Seeds.Stream(seed, "dryness"), 20 * StepsAnHour, 1.1);
        _breeze = new(Seeds.Stream(seed, "breeze"), 16 * StepsAnHour, 0.42);
        _gust = new(Seeds.Stream(seed, "gust"), 4, 0.16);
        _shower = Seeds.Stream(seed, "shower");
    }

    public SkyStep Next(Instant at, double longitudeDeg)
    {
        double overcast = _dullSpell.Next() + _passingCloud.Next() + 0.3;
        double cloud = Portable.Logistic(2.0 * overcast);
        _slowCloud += (cloud - _slowCloud) / (5 * StepsAnHour);
        double hour = SolarHour(at, longitudeDeg);
        double swing = 1.3 + (3.6 * (1 - _slowCloud));
        _diurnal += ((swing * Portable.Cos(2 * Math.PI * (hour - 13.2) / 24)) - _diurnal) / (1.5 * StepsAnHour);
        double mean = SeasonC(at) + _airMass.Next();
        double rain = Rain(overcast);
        double temperature = mean + _diurnal - (_raining ? 0.6 : 0);
        double depression = Math.Max(0.5, 3.3 + (2.7 * (1 - _slowCloud)) + _dryness.Next());
        double dewPoint = mean - (_raining ? 0.5 * depression : depression);
        double wind = Portable.Exp(1.1 + _breeze.Next() + _gust.Next()) * (0.85 + (0.3 * Math.Max(0, Portable.Cos(2 * Math.PI * (hour - 13) / 24))));
        return new SkyStep(temperature, Math.Min(dewPoint, temperature - 0.1), cloud, wind, rain);
    }

    private static double SeasonC(Instant at) => 14.9 - (7.4 * (at - AutumnStart).TotalDays / 70);

    private static double SolarHour(Instant at, double longitudeDeg)
    {
        LocalDateTime utc = at.InUtc().LocalDateTime;
        return utc.Hour + (utc.Minute / 60.0) + (longitudeDeg / 15);
    }

    private double Rain(double overcast)
    {
        double change = _shower.NextDouble();
        _raining = _raining ? change > 0.13 && overcast > 0.2 : change < 0.022 && overcast > 0.7;
        double amount = _shower.NextDouble();
        return _raining ? 0.05 + (0.55 * amount * amount) : 0;
    }
}
