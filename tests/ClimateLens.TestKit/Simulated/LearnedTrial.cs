using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.TestKit.Simulated;

/// <summary>What the learned check said of one simulated week, against what was planted in it.</summary>
/// <param name="Judged">Values judged.</param>
/// <param name="Suspect">Values called suspect.</param>
/// <param name="Shifts">Sensors said to have shifted for days.</param>
/// <param name="Named">Whether a sensor with the fault is named while it lasts, by a value or a shift.</param>
/// <param name="NamedByOthers">Whether the other checks put one of its values in doubt while it lasts.</param>
/// <param name="WrongShift">Whether a sensor without the fault is said to have shifted for days.</param>
public sealed record LearnedTrial(int Judged, int Suspect, int Shifts, bool Named, bool NamedByOthers, bool WrongShift)
{
    /// <summary>Tries a week.</summary>
    /// <param name="input">The week with the weeks before it.</param>
    /// <param name="fault">What is planted in it, or null.</param>
    public static LearnedTrial Of(HouseInput input, PlantedFault? fault)
    {
        HousePeriod period = Quality.Check(Alignment.Align(input));
        SecondOpinionReport opinion = SecondOpinion.Of(period, Past.Of(period));
        return new LearnedTrial(
            opinion.Sensors.Sum(s => s.Judged),
            opinion.Sensors.Sum(s => s.Suspect),
            opinion.Sensors.Count(s => s.Shift is not null),
            fault is not null && opinion.Sensors.Any(s => fault.Columns.Contains(ColumnOf(s)) && Names(s, input, fault)),
            fault is not null && fault.Columns.Any(c => period.Checks[ColumnKey.Parse(c)] is { } flags && Steps(period, fault).Any(i => flags.RolledUp[i] is QualityFlag.Suspect or QualityFlag.Fail)),
            opinion.Sensors.Any(s => s.Shift is not null && fault?.Columns.Contains(ColumnOf(s)) != true));
    }

    private static string ColumnOf(LearnedSensorReport sensor) => new ColumnKey(sensor.Channel, sensor.Sensor).ToString();

    private static bool Names(LearnedSensorReport sensor, HouseInput input, PlantedFault fault)
    {
        Instant from = input.Period.Start + Duration.FromDays(fault.From), to = input.Period.Start + Duration.FromDays(fault.To);
        bool Meets(OffsetDateTime start, OffsetDateTime end) => start.ToInstant() < to && end.ToInstant() > from;
        return sensor.Suspects.Any(s => Meets(s.Start, s.End)) || (sensor.Shift is { } shift && Meets(shift.From, shift.To));
    }

    private static IEnumerable<int> Steps(HousePeriod period, PlantedFault fault)
        => Enumerable.Range(0, period.Frame.Axis.Count).Where(i => (period.Frame.Axis.StartOf(i) - period.Input.Period.Start).TotalDays is double day && day >= fault.From - 1e-9 && day < fault.To - 1e-9);
}
