using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Leaf;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Wetness;

namespace ClimateLens.Analysis.Foliage;

/// <summary>
/// Leaf temperature, film, dew-point margin and risk of every hour, for the readings as they are and for every draw, by the same code. Holds
/// the memory for one run; a run allocates nothing.
/// </summary>
/// <remarks>
/// <para><b>Formula:</b> the film of <see cref="FoliageFilm"/> step by step; margin = hourly mean of the leaf temperature less the dew point of the hourly mean vapour
/// pressure among the leaves. A risk hour has leaves wet for at least half of it or a margin below the rule's MarginK, at an air temperature
/// among the leaves within the rule's range. Sources: docs/science/risk-hours.md.</para>
/// </remarks>
internal sealed class FoliageHours
{
    /// <summary>As many are worked out at once at best.</summary>
    public const int Together = 4;

    /// <summary>Days worked through before a period that is looked at alone, so that the film and the wet floor are known at its start. [d]</summary>
    private const int DaysBefore = 2;

    private readonly HourTable _hours;
    private readonly RiskRules _rules;
    private readonly FoliageWeather _weather;
    private readonly int _perHour;
    private readonly double _stepSeconds;
    private readonly FilmParameters _film;
    private readonly CanopyDays _days;
    private readonly AirUnderBias _air;
    private readonly double[] _temperatureK, _humidityPct, _none;
    private readonly AirChange _change;
    private readonly int _firstHour, _firstStep;
    private double _capacityMm;
    private readonly double[] _airC, _relativeHumidityPct, _speedMs, _givenLeafC, _absorbedWm2, _aboveC, _sunWm2, _coverC, _sensorWet;

    /// <summary>Prepares for the hours of a house period.</summary>
    /// <param name="period">The house period, with the weather of its leaves.</param>
    /// <param name="hours">Its hours.</param>
    /// <param name="change">What the air would be otherwise; null for the air as it was. Its values may change between runs.</param>
    /// <param name="firstHour">Hours before this one are left alone.</param>
    /// <param name="sensorMayRule">Whether a wetness sensor may rule where the nursery file lets it; of what was not it tells nothing.</param>
    public FoliageHours(HousePeriod period, HourTable hours, AirChange? change = null, int firstHour = 0, bool sensorMayRule = true)
    {
        _hours = hours;
        _rules = period.Input.House.Rules;
        _weather = period.Foliage ?? throw new ArgumentException("The leaf stage comes first.", nameof(period));
        _perHour = period.StepsPerHour;
        _stepSeconds = period.Frame.Axis.Step.TotalSeconds;
        _film = FilmParameters.PotPlant with { PressureKPa = AirPressure.AtElevation(new(period.Input.Nursery.ElevationM)).Value };
        _days = new CanopyDays(period.Cover!, _rules);
        _air = new AirUnderBias(hours.LeafAirC);
        int steps = _weather.Count;
        (_firstHour, _firstStep) = (firstHour, firstHour * _perHour);
        _change = change ?? new AirChange(steps, _perHour);
        (_temperatureK, _humidityPct, _none) = (new double[hours.Count], new double[hours.Count], new double[hours.Count]);
        (_airC, _relativeHumidityPct, _speedMs, _givenLeafC) = (new double[steps], new double[steps], new double[steps], new double[steps]);
        (_absorbedWm2, _aboveC) = (new double[steps], new double[steps]);
        _givenLeafC.AsSpan().Fill(double.NaN);
        (LeafStepC, FilmStepMm, WetStep) = (new double[steps], new double[steps], new double[steps]);

        (LeafC, DewPointC, MarginK, Wet) = (new double[hours.Count], new double[hours.Count], new double[hours.Count], new double[hours.Count]);
        Risk = new bool[hours.Count];

        // Where a sensor tells the leaf temperature, sun and cover take no part.
        _sunWm2 = [.. _weather.AbsorbedWm2.Select(v => double.IsNaN(v) ? 0 : v)];
        _coverC = [.. _weather.AboveC.Select((v, i) => double.IsNaN(v) ? _weather.AirC[i] : v)];
        _sensorWet = sensorMayRule && _rules.WetnessSensorRules ? WetnessSensor.Of(period) ?? [] : [];
    }

    /// <summary>Leaf temperature by step. [°C]</summary>
    public double[] LeafStepC { get; }

    /// <summary>Film at the end of each step; NaN where not known. [mm]</summary>
    public double[] FilmStepMm { get; }

    /// <summary>Wet (1), dry (0) or not known (NaN) by step.</summary>
    public double[] WetStep { get; }

    /// <summary>Mean leaf temperature by hour. [°C]</summary>
    public double[] LeafC { get; }

    /// <summary>Dew point of the air among the leaves by hour. [°C]</summary>
    public double[] DewPointC { get; }

    /// <summary>Leaf temperature less that dew point. [K]</summary>
    public double[] MarginK { get; }

    /// <summary>Wet (1), dry (0) or not known (NaN) by hour.</summary>
    public double[] Wet { get; }

    /// <summary>Whether each hour is a risk hour; false where it has no data.</summary>
    public bool[] Risk { get; }

    /// <summary>What foliage is like, without error.</summary>
    public FilmParameters Film => _film;

    /// <summary>The weather of the leaves in the last run, by step. A sensor's leaf temperature is that of dry or wet leaves as they were.</summary>
    public LeafClimate Climate => new(_airC, _relativeHumidityPct, _absorbedWm2, _aboveC, _speedMs, default, _weather.OpenShare);

    /// <summary>The hour to begin at where the period is looked at alone.</summary>
    public static int FirstHourOf(HourTable hours) => Math.Max(0, hours.FirstOfPeriod - (24 * DaysBefore));

    /// <summary>Everything for the readings as they are.</summary>
    public void WithoutError() => UnderErrors(new FoliageErrors(), 0, _none);

    /// <summary>Everything under the errors of one draw.</summary>
    /// <param name="errors">Errors of the draw.</param>
    /// <param name="hourlyPct">Half-width of the hour's own error of humidity. [%]</param>
    /// <param name="hourly">One number in [-1, 1) an hour: the hour's own error in half-widths.</param>
    public void UnderErrors(in FoliageErrors errors, double hourlyPct, ReadOnlySpan<double> hourly)
    {
        Take(errors, hourlyPct, hourly);
        Judge([this]);
    }

    /// <summary>Takes the errors of a draw, for <see cref="Judge"/> to go on with.</summary>
    /// <param name="errors">Errors of the draw.</param>
    /// <param name="hourlyPct">Half-width of the hour's own error of humidity. [%]</param>
    /// <param name="hourly">One number in [-1, 1) an hour: the hour's own error in half-widths.</param>
    public void Take(in FoliageErrors errors, double hourlyPct, ReadOnlySpan<double> hourly)
    {
        _days.Under(errors);
        _capacityMm = _film.CapacityMm * errors.FilmFactor;
        FillSteps(errors, hourlyPct, hourly);
        FillHours(errors, hourlyPct, hourly);
    }

    /// <summary>Leaves, films and hours of those that have taken errors. <see cref="Together"/> of them are worked out in little more than the time of one; each comes out as it would alone.</summary>
    /// <param name="all">One or more over the same steps, with the same leaves and first hour.</param>
    public static void Judge(ReadOnlySpan<FoliageHours> all)
    {
        while (!all.IsEmpty)
        {
            ReadOnlySpan<FoliageHours> together = all[..Math.Min(Together, all.Length)];
            FoliageHours a = together[0], b = together[Math.Min(1, together.Length - 1)], c = together[Math.Min(2, together.Length - 1)], d = together[^1];
            FoliageFilm.Run(a.Run, b.Run, c.Run, d.Run, a._stepSeconds, a._film, double.NaN);
            foreach (FoliageHours one in together)
            {
                one.JudgeHours();
            }

            all = all[together.Length..];
        }
    }

    private FilmRun Run => new(
        new LeafClimate(_airC, _relativeHumidityPct, _absorbedWm2, _aboveC, _speedMs, _givenLeafC, _weather.OpenShare).From(_firstStep),
        _weather.WaterMm.AsSpan(_firstStep), _capacityMm, LeafStepC.AsSpan(_firstStep), FilmStepMm.AsSpan(_firstStep));

    private void JudgeHours()
    {
        WetStates.Default.Of(FilmStepMm.AsSpan(_firstStep), WetStep.AsSpan(_firstStep));
        _sensorWet.CopyTo(WetStep.AsSpan());
        _air.Apply(_hours.LeafAirSaturationKPa, _hours.LeafAirVapourKPa, _temperatureK, _humidityPct);
        MoistAirColumns.DewPointFromVapourPressureC(_air.VapourPressureKPa, DewPointC);
        for (int h = _firstHour; h < Risk.Length; h++)
        {
            JudgeHour(h);
        }
    }

    private void FillSteps(in FoliageErrors errors, double hourlyPct, ReadOnlySpan<double> hourly)
    {
        for (int h = _firstHour; h * _perHour < _airC.Length; h++)
        {
            double byHourPct = hourlyPct * hourly[Math.Min(h, hourly.Length - 1)];
            int from = h * _perHour, to = Math.Min(_airC.Length, from + _perHour);
            while (from < to)
            {
                int day = _weather.Day[from], next = from + 1;
                while (next < to && _weather.Day[next] == day)
                {
                    next++; // where the clock differs from UTC by parts of an hour, midnight lies within one
                }

                FillDay(errors, byHourPct, day, from, next);
                from = next;
            }
        }

        FillWithoutBalance(errors);
    }

    /// <summary>Steps of one hour and one day.</summary>
    private void FillDay(in FoliageErrors errors, double byHourPct, int day, int from, int to)
    {
        FoliageWeather w = _weather;
        bool fitted = w.FittedDifference is not null;
        (double differenceK, double differencePct) = Difference(errors, from);
        double speedMs = _days.AirSpeedMs[day], aboveK = errors.LeafBalanceK * _days.AbovePerLeafK[day];
        for (int i = from; i < to; i++)
        {
            if (fitted)
            {
                (differenceK, differencePct) = Difference(errors, i);
            }

            _airC[i] = w.AirC[i] + (w.TemperatureInCanopy[i] ? errors.CanopySensorK : errors.TemperatureK + differenceK) + _change.TemperatureK[i];
            double humidity = w.HumidityPct[i] + _change.HumidityPct[i] + (w.HumidityInCanopy[i] ? errors.CanopySensorPct : errors.HumidityPct + differencePct);
            _relativeHumidityPct[i] = Math.Clamp(humidity + byHourPct, 0.1, 100);
            _speedMs[i] = speedMs;
            _absorbedWm2[i] = _sunWm2[i] * errors.LightFactor;
            _aboveC[i] = _coverC[i] + aboveK;
        }
    }

    /// <summary>Steps whose leaf temperature a sensor or an assumed difference tells.</summary>
    private void FillWithoutBalance(in FoliageErrors errors)
    {
        FoliageWeather w = _weather;
        for (int i = _firstStep; i < _airC.Length; i++)
        {
            if (w.LeafFrom[i] == LeafFrom.Sensor)
            {
                _givenLeafC[i] = w.MeasuredLeafC[i] + errors.LeafSensorK + _change.TemperatureK[i];
            }
            else if (w.LeafFrom[i] == LeafFrom.NightOffset)
            {
                double dryK = -w.Night[i] * (_rules.LeafNightOffsetK - errors.LeafOffsetK);
                _aboveC[i] = _airC[i] is >= -30 and <= 60 ? RadiatingForOffset.Above(new(_airC[i]), new(dryK), new(_speedMs[i]), _film.Leaf).Value : double.NaN;
            }
        }
    }

    /// <summary>Air among the leaves less main sensor in a step: fitted where it could be, else assumed by ground cover.</summary>
    private (double TemperatureK, double HumidityPct) Difference(in FoliageErrors errors, int step)
    {
        if (_weather.FittedDifference is not { } fitted)
        {
            int day = _weather.Day[step];
            return (_days.TemperatureK[day], _days.HumidityPct[day]);
        }

        CanopyAirOffset offset = fitted[step];
        return (offset.TemperatureK + (errors.CanopyTemperatureScore * offset.TemperatureErrorK), offset.HumidityPct + (errors.CanopyHumidityScore * offset.HumidityErrorPct));
    }

    private void FillHours(in FoliageErrors errors, double hourlyPct, ReadOnlySpan<double> hourly)
    {
        for (int h = _firstHour; h < _temperatureK.Length; h++)
        {
            (double differenceK, double differencePct) = Difference(errors, Math.Min((h * _perHour) + (_perHour / 2), _weather.Count - 1));
            double main = _hours.MainTemperatureShare[h], mainHumidity = _hours.MainHumidityShare[h];
            _temperatureK[h] = (main * (errors.TemperatureK + differenceK)) + ((1 - main) * errors.CanopySensorK) + _change.HourTemperatureK(h);
            _humidityPct[h] = (mainHumidity * (errors.HumidityPct + differencePct)) + ((1 - mainHumidity) * errors.CanopySensorPct) + (hourlyPct * hourly[h]) + _change.HourHumidityPct(h);
        }
    }

    private void JudgeHour(int hour)
    {
        int from = hour * _perHour, to = Math.Min(LeafStepC.Length, from + _perHour);
        int leaves = 0, films = 0, wet = 0;
        double sum = 0;
        for (int i = from; i < to; i++)
        {
            bool known = double.IsFinite(LeafStepC[i]);
            leaves += known ? 1 : 0;
            sum += known ? LeafStepC[i] : 0;
            films += double.IsNaN(WetStep[i]) ? 0 : 1;
            wet += WetStep[i] == 1 ? 1 : 0;
        }

        LeafC[hour] = _hours.HasData[hour] && leaves > 0 ? sum / leaves : double.NaN;
        MarginK[hour] = LeafC[hour] - DewPointC[hour];
        Wet[hour] = films == 0 || 2 * films < to - from ? double.NaN : 2 * wet >= films ? 1 : 0;
        Risk[hour] = _hours.HasData[hour]
            && (MarginK[hour] < _rules.MarginK || Wet[hour] == 1)
            && _air.WarmedC[hour] >= _rules.TemperatureLowC
            && _air.WarmedC[hour] <= _rules.TemperatureHighC;
    }
}
