using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Wetness;
using Scored = ClimateLens.Science.Wetness.WetnessScore;

namespace ClimateLens.Analysis.Foliage;

/// <summary>
/// What other ways to tell wet leaves say of the same hours, and how each did against a leaf-wetness sensor where there is one. The other ways look at the main
/// sensor's air, as those who made them did.
/// </summary>
internal sealed class OpinionsOnWetness
{
    private readonly HousePeriod _period;
    private readonly Dictionary<WetnessModel, double[]> _steps = [];
    private readonly Dictionary<WetnessModel, double[]> _hours = [];

    private OpinionsOnWetness(HousePeriod period, RiskState risk)
    {
        _period = period;
        Frame frame = period.Frame;
        double[] air = [.. frame.Values(Derived.TemperatureC)], humidity = [.. frame.Values(Derived.HumidityPct)], dew = [.. frame.Values(Derived.DewPointC)];
        double[] speed = new double[air.Length];
        Array.Fill(speed, CanopyDays.OpenAirSpeedMs);
        Add(WetnessModel.Film, wet => FilmOf(risk, wet));
        Add(WetnessModel.Humidity, wet => HumidityThreshold.Default.Of(humidity, wet));
        Add(WetnessModel.ChangingHumidity, wet => ExtendedHumidity.Default.Of(humidity, frame.Axis.Step.TotalSeconds, wet));
        Add(WetnessModel.Depression, wet => DewPointDepression.Default.Of(air, dew, wet));
        Add(WetnessModel.Tree, wet => DecisionTree.Of(air, humidity, dew, speed, wet));
    }

    /// <summary>The opinions of a house period.</summary>
    public static OpinionsOnWetness Of(HousePeriod period, RiskState risk) => new(period, risk);

    /// <summary>Share of the opinions that count which say wet, by hour; NaN where none speaks. [1]</summary>
    public double[] ShareWet()
    {
        int count = _hours[WetnessModel.Film].Length;
        double[] share = new double[count];
        WetnessVotes votes = new(new int[count], new int[count]);
        foreach (WetnessModel model in WetnessModel.All.Where(m => m.FitUnderGlass))
        {
            votes.Add(_hours[model]);
        }

        votes.ShareWet(share);
        return share;
    }

    /// <summary>Each opinion over the hours of the period.</summary>
    public ImmutableArray<WetnessOpinion> Summary()
    {
        int first = _period.FirstStep / _period.StepsPerHour;
        double[] film = _hours[WetnessModel.Film][first..];
        double[]? sensor = WetnessSensor.Of(_period);
        return [.. WetnessModel.All.Select(model => Summary(model, film, _hours[model][first..], sensor))];
    }

    private WetnessOpinion Summary(WetnessModel model, double[] film, double[] hours, double[]? sensor)
    {
        WetnessCounts beside = WetnessCounts.Of(hours, film, 3600);
        return new WetnessOpinion(model.Key, model.Name, model.Source, model.FitUnderGlass, model.Caution, hours.Count(h => h == 1), hours.Count(double.IsFinite))
        {
            AgreesHours = (int)(beside.Hits + beside.CorrectDry),
            Score = sensor is null ? null : Against(sensor, _steps[model]),
        };
    }

    /// <summary>Over run-in and period, since a score needs days; null where the sensor told less than a day.</summary>
    private Reviews.WetnessScore? Against(double[] sensor, double[] opinion)
    {
        double step = _period.Frame.Axis.Step.TotalSeconds;
        if (86400 % step != 0)
        {
            return null;
        }

        int noon = (int)(12 * 3600 / step);
        Scored score = Scored.Of(opinion.AsSpan(Math.Min(noon, opinion.Length)), sensor.AsSpan(Math.Min(noon, sensor.Length)), step, (ulong)Uncertainty.BiasDraws.Seed);
        WetnessCounts counts = score.Counts;
        return score.Days == 0
            ? null
            : new(score.Days, Math.Round(counts.Hits, 2), Math.Round(counts.Misses, 2), Math.Round(counts.FalseAlarms, 2), Math.Round(counts.CorrectDry, 2),
                Known(score.BiasHoursADay.Value), Known(score.BiasHoursADay.Low), Known(score.BiasHoursADay.High));
    }

    private static double? Known(double value) => double.IsNaN(value) ? null : Math.Round(value, 2);

    private static void FilmOf(RiskState risk, double[] wet)
    {
        // The film's own opinion, also where the nursery file lets a sensor rule.
        WetStates.Default.Of(risk.FilmStepMm, wet);
    }

    private void Add(WetnessModel model, Action<double[]> fill)
    {
        double[] steps = new double[_period.Frame.Axis.Count];
        fill(steps);
        int whole = steps.Length / _period.StepsPerHour;
        double[] hours = new double[(steps.Length + _period.StepsPerHour - 1) / _period.StepsPerHour];
        Array.Fill(hours, double.NaN);
        HourStates.Of(steps.AsSpan(0, whole * _period.StepsPerHour), _period.StepsPerHour, hours.AsSpan(0, whole));
        _steps[model] = steps;
        _hours[model] = hours;
    }
}
