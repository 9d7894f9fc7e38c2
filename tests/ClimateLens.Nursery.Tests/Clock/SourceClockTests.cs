using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Tests.Clock;

public sealed class SourceClockTests
{
    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(30)]
    [InlineData(60)]
    public void Check_RightClock_IsRight_AndSaysHowFineItSees(int stepMinutes)
    {
        ClockCheck check = new SkyReadings { StepMinutes = stepMinutes, Side = StampSide.IntervalStart, AheadMin = _ => -stepMinutes / 2.0 }.Check();
        Assert.Equal(ClockVerdict.Right, check.Verdict);
        Assert.False(check.IsFault);
        Assert.Equal("", check.Mend);
        Assert.Equal("globalRadiation", check.Channel);
        Assert.InRange(check.SmallestMin!.Value, 20, stepMinutes == 60 ? 40 : 26);
        Assert.InRange(check.Spells[0].OffsetMin, -check.Spells[0].ErrorMin, check.Spells[0].ErrorMin);
    }

    [Fact]
    public void Check_LoggerThatChangesWhileTheFileSaysNot_SaysSinceWhenAndTheKey()
    {
        Instant change = Instant.FromUtc(2025, 3, 30, 1, 0);
        ClockCheck check = new SkyReadings(StampZone: "+00:00") { From = Instant.FromUtc(2025, 3, 23, 0, 0), AheadMin = at => at < change ? 0 : 60 }.Check();
        Assert.Equal(ClockVerdict.Wrong, check.Verdict);
        Assert.Matches("^This clock runs (5[5-9]|6[0-5]) minutes ahead since 30 March 2025: it looks as if the logger changed to summer time and the nursery file says it does not ", check.Sentence);
        Assert.Equal("Take timeZone out under [export.time], or write timeZone = \"Europe/London\" there.", check.Mend);
        Assert.Equal([false, true], check.Spells.Select(s => s.IsFault));
        Assert.Equal(new LocalDate(2025, 3, 30), check.Spells[1].From);
    }

    [Fact]
    public void Check_LoggerThatNeverChangesWhileTheFileSaysSo_GetsItsFixedOffset()
    {
        // In summer alone, and over the change in spring, in which the clock fell an hour behind.
        Assert.Equal("Write timeZone = \"+00:00\" under [export.time].", new SkyReadings { AheadMin = _ => -60 }.Check().Mend);
        Instant change = Instant.FromUtc(2025, 3, 30, 1, 0);
        ClockCheck check = new SkyReadings { From = Instant.FromUtc(2025, 3, 23, 0, 0), AheadMin = at => at < change ? 0 : -60 }.Check();
        Assert.Contains("behind since 30 March 2025: it looks as if the logger's clock is never changed", check.Sentence, StringComparison.Ordinal);
        Assert.Equal("Write timeZone = \"+00:00\" under [export.time].", check.Mend);

        // And one that stays on summer time over the change in autumn.
        change = Instant.FromUtc(2025, 10, 26, 1, 0);
        check = new SkyReadings { From = Instant.FromUtc(2025, 10, 20, 0, 0), AheadMin = at => at < change ? 0 : 60 }.Check();
        Assert.Contains("ahead since 26 October 2025", check.Sentence, StringComparison.Ordinal);
        Assert.Equal("Write timeZone = \"+01:00\" under [export.time].", check.Mend);
    }

    [Theory]
    [InlineData("America/New_York", 40.7, -74.0, null, 240, "timeZone = \"UTC\"")] // stamps are UTC, read as summer time of New York
    [InlineData("Europe/Amsterdam", 52.0, 4.4, "UTC", 120, "timeZone = \"Europe/Amsterdam\"")]
    [InlineData("Asia/Kolkata", 18.5, 73.9, "UTC", 330, "timeZone = \"Asia/Kolkata\"")]
    [InlineData("Europe/London", 53.2, -0.6, null, 300, "timeZone = \"+06:00\"")]
    public void Check_WrongZone_NamesTheRightOne(string zone, double latitude, double longitude, string? stamps, double aheadMin, string mend)
    {
        ClockCheck check = new SkyReadings(zone, stamps) { Latitude = latitude, Longitude = longitude, AheadMin = _ => aheadMin }.Check();
        Assert.Equal(ClockVerdict.Wrong, check.Verdict);
        Assert.Contains(mend, check.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_LongitudeWithoutItsMinus_IsNamed()
    {
        ClockCheck check = new SkyReadings("America/New_York") { Latitude = 40.7, Longitude = 73.95, TrueLongitude = -73.95 }.Check();
        Assert.Equal(ClockVerdict.Wrong, check.Verdict);
        Assert.Equal("Write longitude = -73.95 under [nursery].", check.Mend);
    }

    [Fact]
    public void Check_HalfADayOff_PointsAtAmAndPm()
    {
        ClockCheck check = new SkyReadings { AheadMin = _ => 720 }.Check();
        Assert.Equal(ClockVerdict.Wrong, check.Verdict);
        Assert.Contains("hh and a", check.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_ClockSetToNoRoundTime_SaysOnlyHowFar()
    {
        ClockCheck check = new SkyReadings { AheadMin = _ => 47 }.Check();
        Assert.Equal(ClockVerdict.Wrong, check.Verdict);
        Assert.DoesNotContain("looks as if", check.Sentence, StringComparison.Ordinal);
        Assert.StartsWith("Set the logger's clock right", check.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_DriftingLogger_SaysHowFast_AndAFewMinutesAreNoFault()
    {
        Instant from = Instant.FromUtc(2025, 6, 9, 0, 0);
        ClockCheck fast = new SkyReadings { From = from, Days = 28, AheadMin = at => Math.Round((at - from).TotalDays * 15 / 7) }.Check();
        Assert.Equal(ClockVerdict.Drifting, fast.Verdict);
        Assert.Matches("^This clock gains about 1[3-7] ± [0-9.]+ minutes a week", fast.Sentence);
        ClockCheck slow = new SkyReadings { From = from, AheadMin = at => Math.Round((at - from).TotalDays * 6 / 7) }.Check();
        Assert.Equal(ClockVerdict.Right, slow.Verdict);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(-20)]
    public void Check_TwentyMinutesInAHouse_IsNoFault(double aheadMin)
        => Assert.Equal(ClockVerdict.Right, new SkyReadings { Column = "ppfd", AheadMin = _ => aheadMin }.Check().Verdict);

    [Theory]
    [InlineData("ppfd")]
    [InlineData("illuminance@A")]
    [InlineData("insideRadiation")]
    public void Check_InsideLight_SeesAnHour(string column)
    {
        ClockCheck check = new SkyReadings { Column = column, AheadMin = _ => 60, Reads = (_, sun) => sun * 0.6 }.Check();
        Assert.Equal(ClockVerdict.Wrong, check.Verdict);
        Assert.Equal(ColumnKey.Parse(column), new ColumnKey(check.Channel, check.Sensor));
    }

    [Theory]
    [InlineData(2, 8, 30)] // lamps before dawn
    [InlineData(14, 23, 30)]
    [InlineData(3, 7, 8)] // dim ones
    public void Check_LampsOnATimer_AreNotTakenForAWrongClock(int on, int off, double lamp)
    {
        ClockCheck check = new SkyReadings
        {
            Column = "ppfd",
            From = Instant.FromUtc(2025, 11, 3, 0, 0),
            Reads = (at, sun) => (sun * 0.5) + (at.InUtc().Hour >= on && at.InUtc().Hour < off ? lamp * (1 + (0.02 * Math.Sin(at.ToUnixTimeSeconds()))) : 0),
        }.Check();
        Assert.Equal(ClockVerdict.NotKnown, check.Verdict);
        Assert.Contains("does not tell of the sun", check.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_Blackout_IsNotTakenForAWrongClock()
        => Assert.Equal(ClockVerdict.NotKnown, new SkyReadings { Column = "ppfd", Reads = (at, sun) => at.InUtc().Hour is >= 7 and < 16 ? sun : 0 }.Check().Verdict);

    [Fact]
    public void Check_LampsWithSunOutsideBeside_GoesByTheSun()
    {
        SkyReadings sky = new() { AheadMin = _ => 60 };
        ReadingBatch batch = sky.Batch();
        batch = batch with { Columns = batch.Columns.Add("ppfd", [.. batch.Columns["globalRadiation"].Select((v, i) => i % 144 < 60 ? 80 : v)]) };
        ClockCheck check = SourceClock.Check(sky.Nursery(), sky.Nursery().Zone, batch);
        Assert.Equal((ClockVerdict.Wrong, "globalRadiation"), (check.Verdict, check.Channel));
    }

    [Fact]
    public void Check_HourlyStampsWithoutASide_AllowForHalfAStep_AndSayWhatWouldFit()
    {
        // Means of an hour stamped at its end, which the nursery file calls moments: the light lies half an hour late.
        SkyReadings means = new() { StepMinutes = 60, AheadMin = _ => 30 };
        ClockCheck check = means.Check();
        Assert.Equal(ClockVerdict.Right, check.Verdict);
        Assert.Contains("stamps = \"intervalEnd\"", check.Sentence, StringComparison.Ordinal);
        Assert.True(check.SmallestMin > 45);
        ClockCheck said = (means with { Side = StampSide.IntervalEnd }).Check();
        Assert.DoesNotContain("stamps =", said.Sentence, StringComparison.Ordinal);
        Assert.True(said.SmallestMin < 40);
    }

    [Fact]
    public void Check_FewDays_AreNotKnown()
    {
        Assert.Equal(ClockVerdict.NotKnown, new SkyReadings { Days = 2 }.Check().Verdict);
        Assert.Equal(ClockVerdict.NotKnown, new SkyReadings { Column = "airTemperature" }.Check().Verdict);
    }

    [Fact]
    public void Check_OutsideTemperatureAlone_SeesHalfADay_AndSaysItSeesNoHour()
    {
        static double Swing(Instant at, double sun) => 12 + (5 * Math.Cos(2 * Math.PI * (at.InUtc().TimeOfDay.TickOfDay - (14.4 * NodaConstants.TicksPerHour)) / NodaConstants.TicksPerDay));
        SkyReadings outside = new() { Column = "outsideTemperature", Reads = Swing };
        ClockCheck right = outside.Check(), hour = (outside with { AheadMin = _ => 60 }).Check(), half = (outside with { AheadMin = _ => 720 }).Check();
        Assert.Equal((ClockVerdict.Right, ClockVerdict.Right, ClockVerdict.Wrong), (right.Verdict, hour.Verdict, half.Verdict));
        Assert.Contains("only faults of more than 3 h are seen", right.Sentence, StringComparison.Ordinal);
        Assert.Equal(180, right.SmallestMin);
        Assert.Equal(ClockVerdict.NotKnown, (outside with { Reads = (_, _) => 12 }).Check().Verdict);
    }

    [Fact]
    public void Check_LightOfAnotherDate_IsSeenByItsLength()
    {
        // Days of June read as days of December: a wrong year would not show, a wrong month does.
        ClockCheck check = new SkyReadings { From = Instant.FromUtc(2025, 6, 9, 0, 0), AheadMin = _ => 183 * 1440.0 }.Check();
        Assert.Equal(ClockVerdict.DayLength, check.Verdict);
        Assert.Contains("Look at the dates", check.Mend, StringComparison.Ordinal);
        ClockCheck south = new SkyReadings("Australia/Sydney") { Latitude = 33.6, TrueLatitude = -33.6, Longitude = 150.7 }.Check();
        Assert.Equal(ClockVerdict.DayLength, south.Verdict);
        Assert.Contains("with latitude = -33.6 under [nursery] it would fit too", south.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_ImpossibleValues_AreLeftOut()
    {
        ClockCheck check = new SkyReadings { Reads = (at, sun) => at.InUtc().Hour == 12 && at.InUtc().Minute == 0 ? -2.1e8 : at.InUtc().Hour == 3 && at.InUtc().Minute == 0 ? 65535 : sun }.Check();
        Assert.Equal(ClockVerdict.Right, check.Verdict);
    }
}
