using System.Collections.Immutable;
using ClimateLens.Analysis.Learned;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Learned;

public sealed class WeekErrorsTests
{
    [Fact]
    public void FaultInOneSensor_EchoesInTheOthers_LessInTheirOwnUnits_AndGoesWhenItIsNamed()
    {
        SyntheticHouse clean = MadeHouse.With(), spoilt = MadeHouse.With((column, _, value) => column == "airTemperature" ? value + 2 : value);
        (SensorTable week, SensorFit[] fits) = Learned(spoilt);
        double[] usual = [.. Medians(new WeekErrors(Learned(clean).Week, fits), fits)];
        WeekErrors errors = new(week, fits);
        double[] before = [.. Medians(errors, fits).Select((m, f) => m - usual[f])];

        Assert.Equal(2, before[0], 0.05); // its own inputs are right
        double[] units = [.. before.Select((m, f) => Math.Abs(m) / fits[f].Usual.Of95)];
        Assert.All(units[1..], u => Assert.True(u < units[0], $"{u} of {units[0]}"));
        Assert.Contains(units[1..], u => u > 0.2 * units[0]);

        foreach (int step in Enumerable.Range(0, week.Count))
        {
            errors.Name(0, step);
        }

        double[] after = [.. Medians(errors, fits).Select((m, f) => m - usual[f])];
        Assert.Equal(before[0], after[0], 9); // what was found stands
        for (int f = 1; f < fits.Length; f++)
        {
            Assert.True(Math.Abs(after[f]) < 0.15 * fits[f].Usual.Of95, $"{after[f]} of {fits[f].Usual.Of95} is left of {before[f]}");
        }
    }

    [Fact]
    public void SensorWithoutValue_IsNotNamed()
    {
        (SensorTable week, SensorFit[] fits) = Learned(MadeHouse.With((column, at, value) => column == "airTemperature" && at < MadeHouse.Thursday ? double.NaN : value));
        WeekErrors errors = new(week, fits);
        errors.Name(0, 5);
        Assert.False(errors.IsNamed(0, 5));
        errors.Name(0, week.Count - 1);
        Assert.True(errors.IsNamed(0, week.Count - 1));
    }

    [Fact]
    public void DaysOfTheTable_AreLocal_AlsoWhenTheClocksChange()
    {
        // Clocks go back on Sunday 26 October 2025, the last day of week 43: 25 hours.
        SensorTable table = SensorTable.Of(Quality.Check(Alignment.Align(SyntheticHouse.Week("2025-W43").WithAir(SyntheticHouse.AutumnAir).Input)), [], takesDoubtful: true);
        Assert.Equal([288, 288, 288, 288, 288, 288, 300], table.Days.GroupBy(day => day).Select(day => day.Count()));
        Assert.Equal(new LocalDate(2025, 10, 26), SensorTable.DateOf(table.Days[^1]));
    }

    [Fact]
    public void DoubtfulValues_AreJudged_AndNotLearnedFrom()
    {
        // 47 to 51 °C is doubtful and possible (channel catalogue: 45 to 60).
        HousePeriod period = Quality.Check(Alignment.Align(SyntheticHouse.Week("2025-W42").WithAir(at => new Air(49 + (2 * Math.Sin(at.ToUnixTimeSeconds() / 9000.0)), 60 + (5 * Math.Sin(at.ToUnixTimeSeconds() / 9000.0)))).Input));
        ImmutableArray<LearnedSensor> sensors = SensorTable.SensorsOf(period);
        Assert.All(SensorTable.Of(period, sensors, takesDoubtful: true).Columns[0], value => Assert.InRange(value, 47, 51));
        Assert.All(SensorTable.Of(period, sensors, takesDoubtful: false).Columns[0], value => Assert.Equal(double.NaN, value));
    }

    private static (SensorTable Week, SensorFit[] Fits) Learned(SyntheticHouse house)
    {
        HouseInput input = house.Input;
        HousePeriod period = Quality.Check(Alignment.Align(input));
        ImmutableArray<LearnedSensor> sensors = SensorTable.SensorsOf(period);
        HouseInput before = input with { Batches = input.History, Period = new Interval(input.RunIn.Start, input.Period.Start), RunIn = new Interval(input.RunIn.Start, input.RunIn.Start) };
        SensorTable past = SensorTable.Of(Quality.Check(Alignment.Align(before)), sensors, takesDoubtful: false);
        SensorFit[] fits = [.. Enumerable.Range(0, sensors.Length).Select(s => SensorFit.Of(past, s, [.. Enumerable.Range(0, past.Columns.Length).Where(c => c != s)], double.NaN)!)];
        return (SensorTable.Of(period, sensors, takesDoubtful: true), fits);
    }

    private static IEnumerable<double> Medians(WeekErrors errors, SensorFit[] fits)
        => Enumerable.Range(0, fits.Length).Select(f => errors.Of(f).Where(double.IsFinite).Order().ToArray()).Select(e => e[e.Length / 2]);
}
