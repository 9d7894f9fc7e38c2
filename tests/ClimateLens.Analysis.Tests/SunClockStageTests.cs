using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

public sealed class SunClockStageTests
{
    private static readonly SyntheticSky Sky = new();

    [Fact]
    public void Run_RightClock_IsReportedAndIsNoFinding()
    {
        Review review = ReviewPipeline.Run(House(_ => 0).Input);
        ClockReport clock = Assert.Single(review.Clocks);
        Assert.Equal(("1", "climate", "", false, ClockVerdict.Right), (clock.House, clock.Source, clock.File, clock.ConcernsPeriod, clock.Check.Verdict));
        Assert.DoesNotContain(review.Findings, f => f.Id == "clockWrong");
        Assert.DoesNotContain(review.NotKnown, u => u.What == "clock");
        Assert.Contains(review.Provenance.Methods, m => m.What == "clock");
        Assert.Contains(review.Provenance.Thresholds, t => t is { Name: "clockFaultMin", Value: 20, Unit: "min" });
    }

    [Fact]
    public void Run_ClockAnHourAhead_IsTheFirstFinding_WithTheMendAndItsEvidence()
    {
        Finding finding = ReviewPipeline.Run(House(_ => 60).Input).Findings[0];
        Assert.Equal(("clockWrong", 1), (finding.Id, finding.Rank));
        Assert.Matches("^Export \"climate\": this clock runs (5[5-9]|6[0-5]) minutes ahead", finding.Text);
        Assert.Contains("[export.time]", finding.Action, StringComparison.Ordinal);
        Assert.Contains("wrong time of day", finding.Caution, StringComparison.Ordinal);
        Assert.Contains(finding.Evidence, e => e.Contains("after its place by the sun (14 days)", StringComparison.Ordinal));
    }

    [Fact]
    public void Run_NoStampIsMoved()
    {
        Review right = ReviewPipeline.Run(House(_ => 0).Input), wrong = ReviewPipeline.Run(House(_ => 60).Input);
        Assert.Equal(right.Hours.Select(h => h.RelativeHumidityPct), wrong.Hours.Select(h => h.RelativeHumidityPct)); // the air of this house is a function of the stamp; only light tells of the clock
    }

    [Fact]
    public void Run_ClockMendedBeforeThePeriod_IsSaidAndIsNoFinding()
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W24", stepMinutes: 10);
        Instant mended = house.Input.Period.Start - Duration.FromDays(3);
        Review review = ReviewPipeline.Run(House(at => at < mended ? 60 : 0).Input);
        Assert.Equal(ClockVerdict.Wrong, review.Clocks[0].Check.Verdict);
        Assert.False(review.Clocks[0].ConcernsPeriod);
        Assert.DoesNotContain(review.Findings, f => f.Id == "clockWrong");
        Assert.Contains(" until ", review.Clocks[0].Check.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_ChangeWithinThePeriod_SaysTheDay()
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W24", stepMinutes: 10);
        Instant change = house.Input.Period.Start + Duration.FromDays(3);
        Finding finding = ReviewPipeline.Run(House(at => at < change ? 0 : 60).Input).Findings[0];
        Assert.Contains("ahead since 12 June 2025", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_FileThatKnowsSinceWhen_TellsIt()
    {
        SyntheticHouse house = House(_ => 60);
        ClockSpell before = new(new LocalDate(2025, 3, 1), new LocalDate(2025, 3, 25), 25, 1, 8, false), since = new(new LocalDate(2025, 3, 26), new LocalDate(2025, 6, 20), 80, 58, 8, true);
        ClockCheck whole = new(ClockVerdict.Wrong, "globalRadiation", "", 105, "This clock runs 58 minutes ahead since 26 March 2025 (x).", "Mend.") { Spells = [before, since] };
        Review review = ReviewPipeline.Run(WithFile(house, whole).Input);
        Assert.Equal("a.csv", review.Clocks[0].File);
        Assert.StartsWith("Export \"climate\": this clock runs 58 minutes ahead since 26 March 2025", review.Findings[0].Text, StringComparison.Ordinal);
        Assert.Contains(review.Findings[0].Evidence, e => e == "Seen over the whole of a.csv.");

        // A file whose fault is another one has no say.
        ClockCheck other = whole with { Spells = [before, since with { OffsetMin = -300 }] };
        Assert.Equal("", ReviewPipeline.Run(WithFile(house, other).Input).Clocks[0].File);
    }

    [Fact]
    public void Run_FileWithSwappedDates_IsAFinding_WhateverTheWeekShows()
    {
        ClockCheck swapped = new(ClockVerdict.SwappedDates, "", "", 0, "The days lie weeks apart.", "Swap.");
        Finding finding = ReviewPipeline.Run(WithFile(House(_ => 0), swapped).Input).Findings[0];
        Assert.Equal(("clockWrong", "Swap."), (finding.Id, finding.Action));
    }

    [Fact]
    public void Run_HouseWithoutLight_SaysThatTheClockIsNotKnown()
    {
        SyntheticHouse bare = SyntheticHouse.Week("2025-W24", stepMinutes: 10).WithAir(SyntheticHouse.AutumnAir);
        Unknown unknown = Assert.Single(ReviewPipeline.Run(bare.Input).NotKnown, u => u.What == "clock");
        Assert.Contains("export \"climate\"", unknown.Why, StringComparison.Ordinal);
        Assert.Contains("no light", unknown.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_WrongClockOfTheWeatherAlone_StandsBelowTheHouse()
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W24", stepMinutes: 10).WithAir(_ => new Air(18, 97))
            .WithColumn("weather", "globalRadiation", at => Sky.Wm2(at - Duration.FromMinutes(60)), house: ReadingBatch.WholeNursery);
        Review review = ReviewPipeline.Run(house.Input);
        Finding clock = Assert.Single(review.Findings, f => f.Id == "clockWrong");
        Assert.True(clock.Rank > 1);
        Assert.Contains("The house's own readings are not concerned", clock.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Sheets_StandInTheReviewInLocalTime()
    {
        Review review = ReviewPipeline.Run(WithFile(House(_ => 0), null).Input);
        ImportedFile file = Assert.Single(review.Imports);
        Assert.Equal(("a.csv", 10, 8, 1, 1, 0), (file.File, file.RowsRead, file.Accepted, file.SetAside, file.Duplicates, file.Blank));
        Assert.Equal((Offset.Zero, Offset.FromHours(1)), (file.First!.Value.Offset, file.Last!.Value.Offset)); // March and June
        Assert.Equal(1, file.Found!.GapCount);
        Assert.Equal(2, Assert.Single(file.Found.LongestGaps).Hours);
    }

    /// <summary>A June house whose light is stamped by a clock that is so many minutes ahead; its air follows the stamp.</summary>
    private static SyntheticHouse House(Func<Instant, double> aheadMin) => SyntheticHouse.Week("2025-W24", stepMinutes: 10).WithSource(
        "climate",
        10,
        [
            ("airTemperature", at => SyntheticHouse.AutumnAir(at).TemperatureC),
            ("relativeHumidity", at => SyntheticHouse.AutumnAir(at).RelativeHumidityPct),
            ("globalRadiation", at => Sky.Wm2(at - Duration.FromMinutes(aheadMin(at)))),
        ]);

    private static SyntheticHouse WithFile(SyntheticHouse house, ClockCheck? clock)
    {
        Instant first = house.Input.Period.Start - Duration.FromDays(80), last = house.Input.Period.End;
        ImportDetails details = new()
        {
            Dialect = new ImportDialect("utf-8", ",", "\"", ".", "", 1),
            TimeFormats = [new TimeFormatCount("iso", 9)],
            UnusedColumns = [],
            UnusedColumnCount = 0,
            Reasons = [new SetAsideReason("import.time", SetAsideKind.Row, 1, [3])],
            StepSeconds = 600,
            StepShare = 1,
            Gaps = new FileGaps(1, 1.8, [new FileGap(first, first + Duration.FromHours(2))]),
            Channels = [],
            Clock = clock,
        };
        ImportSheet sheet = new("a.csv", new string('a', 64), "1", "climate", 10, 8, 1, 1, 0, first, last, 0, 0) { Details = details };
        return house with { Input = house.Input with { Files = [sheet] } };
    }
}
