using System.Text.Json;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Learned;

public sealed class SecondOpinionTests
{
    [Fact]
    public void CleanWeek_NamesNoShift_AndHardlyAValue()
    {
        SecondOpinionReport opinion = Of(MadeHouse.With());
        Assert.Equal(["airTemperature", "relativeHumidity", "leafTemperature", "canopyTemperature"], opinion.Sensors.Select(s => s.Channel));
        Assert.All(opinion.Sensors, s => Assert.Null(s.Shift));
        Assert.All(opinion.Sensors, s => Assert.Equal((28, 2016), (s.DaysLearned, s.Judged)));
        Assert.True(opinion.Sensors.Sum(s => s.Suspect) <= 4, $"{opinion.Sensors.Sum(s => s.Suspect)} of 8064");
        Assert.Empty(opinion.NotLearned);
        Assert.Equal(new LocalDateTime(2025, 9, 15, 0, 0), opinion.LearnedFrom.LocalDateTime);
        Assert.Equal(new LocalDateTime(2025, 10, 13, 0, 0), opinion.LearnedTo.LocalDateTime);
    }

    [Fact]
    public void TwoKelvinFromThursdayOn_AreNamedWhereTheyAre_WithSizeAndStart()
    {
        SecondOpinionReport opinion = Of(MadeHouse.With((column, at, value) => column == "airTemperature" && at >= MadeHouse.Thursday ? value + 2 : value));
        LearnedSensorReport air = Named(opinion, "airTemperature");
        Assert.NotNull(air.Shift);
        Assert.Equal(new LocalDate(2025, 10, 16), air.Shift.From.Date);
        Assert.Equal((4, "whole"), (air.Shift.Days, air.Shift.Part));
        Assert.InRange(air.Shift.Size.Value, 1.9, 2.1);
        Assert.InRange(2, air.Shift.Size.Low, air.Shift.Size.High);
        Assert.All(opinion.Sensors.Where(s => s != air), s => Assert.Null(s.Shift));
    }

    [Fact]
    public void Drift_GrowsFromFirstDayToLast()
    {
        Instant start = SyntheticHouse.Week(MadeHouse.Week).Input.Period.Start;
        LastingShift shift = Named(Of(MadeHouse.With((column, at, value) => column == "leafTemperature" ? value - (0.6 * (at - start).TotalDays) : value)), "leafTemperature").Shift!;
        Assert.True(shift.LastDay < shift.FirstDay - 1.5 && shift.FirstDay < 0, $"{shift}");
        Assert.InRange(shift.LastDay, -4.1, -3.7); // Sunday noon, 6.5 days in: -3.9 K
    }

    [Fact]
    public void SensorInTheSun_ErrsWhileTheSunIsUp()
    {
        LastingShift shift = Named(Of(MadeHouse.With((column, at, value) => column == "canopyTemperature" && at.InUtc().Hour is >= 7 and < 16 ? value + 4 : value)), "canopyTemperature").Shift!;
        Assert.Equal("sunUp", shift.Part);
        Assert.Equal(7, shift.Days);
    }

    [Fact]
    public void OneValueFarOut_IsSuspect_AndTheSensorsThatEchoItAreNot()
    {
        Instant noon = MadeHouse.Thursday + Duration.FromHours(12);
        SecondOpinionReport opinion = Of(MadeHouse.With((column, at, value) => column == "airTemperature" && at == noon ? value + 2.5 : value));
        SuspectStretch stretch = Assert.Single(Named(opinion, "airTemperature").Suspects, s => s.Start.ToInstant() == noon);
        Assert.Equal((1, Duration.FromMinutes(5)), (stretch.Steps, stretch.End - stretch.Start));
        Assert.InRange(stretch.Logged - stretch.Expected, 2.2, 2.8);
        Assert.DoesNotContain(opinion.Sensors.Where(s => s.Channel != "airTemperature").SelectMany(s => s.Suspects), s => s.Start.ToInstant() <= noon && s.End.ToInstant() > noon);
    }

    [Fact]
    public void Opinion_ChangesNoValueAndNoFlag()
    {
        HousePeriod period = Checked(MadeHouse.With((column, at, value) => column == "airTemperature" ? value + 3 : value).Input);
        string before = Text(period);
        Assert.NotNull(Named(SecondOpinion.Of(period, Past.Of(period)), "airTemperature").Shift);
        Assert.Equal(before, Text(period));

        Review with = ReviewPipeline.Run(period.Input), without = ReviewPipeline.Run(period.Input with { History = [] });
        Assert.NotNull(with.SecondOpinion);
        Assert.Null(without.SecondOpinion);
        Assert.Equal(JsonSerializer.Serialize(without.Sensors), JsonSerializer.Serialize(with.Sensors));
        Assert.Equal(JsonSerializer.Serialize(without.Hours), JsonSerializer.Serialize(with.Hours));
    }

    [Fact]
    public void SameInput_SameOpinion_ToTheLastDigit()
    {
        HouseInput input = MadeHouse.With((column, at, value) => column == "relativeHumidity" ? value + 6 : value, days: 21).Input;
        Assert.Equal(JsonSerializer.Serialize(Of(input)), JsonSerializer.Serialize(Of(input)));
    }

    [Fact]
    public void TooFewDaysBefore_IsNotKnown_AndSaysHowMany()
    {
        SyntheticHouse house = MadeHouse.With(days: 20);
        SecondOpinionReport opinion = Of(house);
        Assert.Empty(opinion.Sensors);
        Assert.Equal(4, opinion.NotLearned.Length);
        Assert.All(opinion.NotLearned, n => Assert.Equal("Readings begin only 20 days before the period; it takes 21.", n.Why));
        Review review = ReviewPipeline.Run(house.Input);
        Assert.Null(review.SecondOpinion);
        Assert.Contains("Readings begin only 20 days before the period", Assert.Single(review.NotKnown, u => u.What == "secondOpinion").Why, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void ThreeWeeks_Suffice() => Assert.Equal(4, Of(MadeHouse.With(days: 21)).Sensors.Length);

    [Fact]
    public void NoReadingsBefore_OrALongPeriod_IsNotKnown()
    {
        HouseInput input = MadeHouse.With().Input;
        Assert.All(Of(input with { History = [] }).NotLearned, n => Assert.Contains("no readings before the period", n.Why, StringComparison.Ordinal));
        HouseInput longer = input with { Period = new Interval(input.Period.Start - Duration.FromDays(9), input.Period.End), RunIn = new Interval(input.RunIn.Start, input.Period.Start - Duration.FromDays(9)) };
        Assert.All(Of(longer).NotLearned, n => Assert.Contains("longer than 15 days", n.Why, StringComparison.Ordinal));
    }

    [Fact]
    public void OneThermometerAlone_CannotBeJudged()
    {
        SecondOpinionReport opinion = Of(MadeHouse.With(null, 28, "canopyTemperature", "leafTemperature", "relativeHumidity"));
        Assert.Empty(opinion.Sensors);
        Assert.Contains("No other sensor", Assert.Single(opinion.NotLearned).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void SensorThatComesAnew_IsNotLearned_AndTheOthersAre()
    {
        SyntheticHouse house = MadeHouse.With(null, 28, "leafTemperature");
        Instant start = house.Input.Period.Start;
        SyntheticHouse more = house.WithColumn("new", "leafTemperature", at => at >= start ? 17 : double.NaN).WithHistory();
        SecondOpinionReport opinion = Of(more);
        Assert.Equal(3, opinion.Sensors.Length);
        Assert.Equal("leafTemperature", Assert.Single(opinion.NotLearned).Channel);
        Review review = ReviewPipeline.Run(more.Input);
        Assert.Contains("Leaf temperature", Assert.Single(review.NotKnown, u => u.What == "secondOpinion").Why, StringComparison.Ordinal);
    }

    [Fact]
    public void MissingSteps_AreNotJudged()
    {
        SecondOpinionReport opinion = Of(MadeHouse.With((column, at, value) => column == "relativeHumidity" && at >= MadeHouse.Thursday && at < MadeHouse.Thursday + Duration.FromHours(10) ? double.NaN : value));
        Assert.All(opinion.Sensors, s => Assert.Equal(2016 - 120, s.Judged));
    }

    [Fact]
    public void Fingerprint_FollowsTheReadingsBefore()
    {
        HouseInput input = MadeHouse.With().Input;
        Assert.NotEqual(InputFingerprint.Of(input), InputFingerprint.Of(input with { History = [] }));
        Assert.Equal(InputFingerprint.Of(input), InputFingerprint.Of(MadeHouse.With().Input));
    }

    private static SecondOpinionReport Of(SyntheticHouse house) => Of(house.Input);

    private static SecondOpinionReport Of(HouseInput input)
    {
        HousePeriod period = Checked(input);
        return SecondOpinion.Of(period, Past.Of(period));
    }

    private static HousePeriod Checked(HouseInput input) => Quality.Check(Alignment.Align(input));

    private static LearnedSensorReport Named(SecondOpinionReport opinion, string channel) => opinion.Sensors.Single(s => s.Channel == channel);

    private static string Text(HousePeriod period)
        => string.Join('\n', period.Frame.Columns.Select(key => $"{key} {string.Join(' ', period.Frame.Values(key))} {string.Join(' ', period.Frame.Flags(key))}"));
}
