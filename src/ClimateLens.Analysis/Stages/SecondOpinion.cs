using System.Collections.Immutable;
using ClimateLens.Analysis.Learned;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;
using NodaTime;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// A second opinion on the sensors: each is predicted from the others, the hour and the sun, as learned from the weeks before; what lies far
/// outside the error that such predictions had on days not learned from is named. It changes no value and no flag.
/// Method, rates and what it cannot see: docs/science/learned-check.md.
/// </summary>
public static class SecondOpinion
{
    /// <summary>A longer period is not judged: what was learned before it no longer holds at its end. Choice of this project. [d]</summary>
    public const int MostDays = 15;

    /// <summary>A sensor with fewer of its steps than this in the weeks before or in the period says nothing of the others; choice of this project. [1]</summary>
    private const double FewestShare = 0.8;

    /// <summary>The second opinion on a checked period; its list of sensors is empty where nothing could be learned.</summary>
    /// <param name="period">The period, after <see cref="Quality"/>.</param>
    /// <param name="before">The weeks before it, by <see cref="Past"/>; null where there are none.</param>
    public static SecondOpinionReport Of(HousePeriod period, HousePeriod? before)
    {
        HouseInput input = period.Input;
        ImmutableArray<LearnedSensor> sensors = SensorTable.SensorsOf(period);
        SensorTable? past = before is null ? null : SensorTable.Of(before, sensors, takesDoubtful: false);
        DateTimeZone zone = input.Nursery.Zone;
        SecondOpinionReport none = new((past?.Axis.Start ?? input.Period.Start).InZone(zone).ToOffsetDateTime(), input.Period.Start.InZone(zone).ToOffsetDateTime(), [], []);
        if (WhyNot(input, past) is string why)
        {
            return none with { NotLearned = [.. sensors.Where(s => s.IsJudged).Select(s => new NotLearned(s.Channel.Name, s.Sensor, why))] };
        }

        SensorTable week = SensorTable.Of(period, sensors, takesDoubtful: true);
        int[] inputs = [.. Enumerable.Range(0, week.Columns.Length).Where(c => Share(past!.Columns[c]) >= FewestShare && Share(week.Columns[c]) >= FewestShare)];
        List<SensorFit> fits = [];
        List<NotLearned> not = [];
        foreach (int target in Enumerable.Range(0, sensors.Length).Where(s => sensors[s].IsJudged))
        {
            LearnedSensor sensor = sensors[target];
            int[] others = [.. inputs.Where(c => c != target)];
            if (!others.Any(c => c < sensors.Length))
            {
                not.Add(new NotLearned(sensor.Channel.Name, sensor.Sensor, Phrase.Of("No other sensor has enough readings to predict it from.")));
            }
            else if (SensorFit.Of(past!, target, others, SensorAccuracy.Of(input.House, sensor.Channel.Name, sensor.Sensor).HalfWidth) is SensorFit fit)
            {
                fits.Add(fit);
            }
            else
            {
                not.Add(new NotLearned(sensor.Channel.Name, sensor.Sensor, Phrase.Of($"Fewer than {SensorFit.FewestDays} days before the period have it together with the other sensors.")));
            }
        }

        return none with { Sensors = Judge(week, [.. fits]), NotLearned = [.. not] };
    }

    private static ImmutableArray<LearnedSensorReport> Judge(SensorTable week, SensorFit[] fits)
    {
        WeekErrors errors = new(week, fits);
        List<FoundShift> shifts = LastingShifts.Find(week, fits, errors);
        bool[][] suspect = SuspectSteps.Find(week, fits, errors);
        return LearnedReports.Of(week, fits, errors, shifts, suspect);
    }

    private static string? WhyNot(HouseInput input, SensorTable? past)
        => (input.Period.End - input.Period.Start).TotalDays > MostDays ? Phrase.Of($"The period is longer than {MostDays} days.")
            : past is null ? Phrase.Of("There are no readings before the period at the step of those in it.")
            : past.Axis.Step * past.Count < Duration.FromDays(SensorFit.FewestDays) ? Phrase.Of($"Readings begin only {Say.Number(Math.Floor((past.Axis.Step * past.Count).TotalDays))} days before the period; it takes {SensorFit.FewestDays}.")
            : null;

    private static double Share(double[] column) => column.Length == 0 ? 0 : (double)column.Count(double.IsFinite) / column.Length;
}
