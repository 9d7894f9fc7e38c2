using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using CsCheck;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Checks;

/// <summary>Amounts out of counts. Expected amounts worked out by hand.</summary>
public sealed class CounterTests
{
    private const long Step = 300_000_000;
    private const double None = double.NaN;

    private static readonly Unit Litre = UnitCatalogue.SiOf(Quantity.Volume);

    [Fact]
    public void Of_RisingCount_IsItsDifferences()
        => Assert.Equal([None, 2, 0, 5.5], Amounts([10, 12, 12, 17.5]).Values);

    [Fact]
    public void Of_CountThatBeganAnew_CountsFromNothing()
    {
        CounterAmounts amounts = Amounts([40, 55, 3, 4]);
        Assert.Equal([None, 15, 3, 1], amounts.Values);
        Assert.Equal([(2, CounterEvent.Reset)], amounts.Events);
    }

    [Theory]
    [InlineData(55, 27.4, 27.4, CounterEvent.Reset)]
    [InlineData(55, 27.5, None, CounterEvent.Backwards)] // half: too much for having begun anew
    [InlineData(55, 54.9, None, CounterEvent.Backwards)]
    internal void Of_Fall_BeganAnewOrSaysNothing(double from, double to, double expected, CounterEvent what)
    {
        CounterAmounts amounts = Amounts([40, from, to, to + 1]);
        Assert.Equal([None, from - 40, expected, 1], amounts.Values.Select(v => Math.Round(v, 9)));
        Assert.Equal([(2, what)], amounts.Events);
    }

    [Fact]
    public void Of_CountOverItsLastDigit_GoesOn()
    {
        CounterAmounts amounts = Amounts([9980, 9990, 9998, 6, 12]);
        Assert.Equal([None, 10, 8, 8, 6], amounts.Values);
        Assert.Equal([(3, CounterEvent.Rollover)], amounts.Events);
    }

    [Fact]
    public void Of_CountOverItsLastDigit_IsSeenInTheUnitOfTheMeter()
    {
        Assert.True(UnitCatalogue.TryGet(Quantity.Volume, "[gal_us]", out Unit? gallon));
        double[] litres = [.. new double[] { 9980, 9990, 9998, 6, 12 }.Select(gallon.ToSi)];
        CounterAmounts amounts = CounterAmounts.Of(Stamps(5), litres, Step, gallon);
        Assert.Equal(8, gallon.FromSi(amounts.Values[3]), 6);
    }

    [Fact]
    public void Of_DailyCountThatHappensToEndNearARegister_BeganAnew()
    {
        // 950 of a thousand on the first day, 400 on the second: no register runs over at 400.
        CounterAmounts amounts = Amounts([900, 950, 2, 300, 400, 1]);
        Assert.Equal([None, 50, 2, 298, 100, 1], amounts.Values);
        Assert.All(amounts.Events, e => Assert.Equal(CounterEvent.Reset, e.Event));
    }

    [Fact]
    public void Of_YearlyCountFarFromItsRegister_BeganAnew()
        => Assert.Equal([None, 10, 3, 10], Amounts([9530, 9540, 3, 13]).Values); // over 10,000 it would be 463, more than ever

    [Fact]
    public void Of_RegisterUnderAThousand_IsNone()
        => Assert.Equal([None, 4, 2, 1], Amounts([94, 98, 2, 3]).Values);

    [Fact]
    public void Of_Gap_IsOneAmountAtItsEnd()
    {
        CounterAmounts amounts = Amounts([10, 12, None, None, 30, 31]);
        Assert.Equal([None, 2, None, None, 18, 1], amounts.Values);
        Assert.Equal([false, false, false, false, true, false], amounts.OverGap);
    }

    [Fact]
    public void Of_CodesAmongTheCounts_AreNoCounts()
        => Assert.Equal([None, 2, None, 1, None, 2], Amounts([10, 12, -999, 13, 1e30, 15]).Values);

    [Fact]
    public void Of_RisingCountsWithHoles_AddUpToLastLessFirst()
        => Gen.Select(Gen.Int[0, 40].Array[2, 30], Gen.Bool.Array[30]).Sample((rises, there) =>
        {
            double sum = 0;
            double[] counts = [.. rises.Select((rise, i) => (sum += rise, there[i]) is (double at, true) ? at : None)];
            double[] known = [.. counts.Where(double.IsFinite)];
            double total = Amounts(counts).Values.Where(double.IsFinite).Sum();
            return known.Length == 0 ? total == 0 : total == known[^1] - known[0];
        });

    [Theory]
    [InlineData(StampSide.Instant)]
    [InlineData(StampSide.IntervalEnd)]
    public void Run_Counter_FallsIntoTheStepThatEndsAtItsReading(StampSide side)
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir);
        Instant opens = house.Input.Period.Start + Duration.FromHours(30);
        // Ten litres between 30:00 and 30:05, read at 30:05.
        HousePeriod period = Aligned(house, t => 100 + (t > opens ? 10 : 0), side);
        var values = period.Frame.Values(new ColumnKey("waterVolume"));
        Assert.Equal([30 * 12], Enumerable.Range(period.FirstStep, 7 * 288).Where(i => values[i] > 0).Select(i => i - period.FirstStep));
        Assert.Equal(10, values[period.FirstStep + (30 * 12)]);
    }

    [Fact]
    public void Run_CounterOverAGap_IsWholeAtItsEndAndInDoubt()
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir);
        Instant gap = house.Input.Period.Start + Duration.FromHours(30);
        HousePeriod period = Aligned(house, t => t >= gap && t < gap + Duration.FromHours(6) ? None : Math.Floor((t - house.Input.RunIn.Start).TotalHours), StampSide.Instant);
        var values = period.Frame.Values(new ColumnKey("waterVolume"));
        var flags = period.Frame.Flags(new ColumnKey("waterVolume"));
        int end = period.FirstStep + (36 * 12) - 1;
        Assert.Equal((7, QualityFlag.Suspect), (values[end], flags[end])); // 29:55 had 29 more than the start, 36:00 has 36
        Assert.All(Enumerable.Range(end - 71, 71), i => Assert.True(double.IsNaN(values[i])));
        Assert.Equal(1, flags.Skip(period.FirstStep).Count(f => f == QualityFlag.Suspect));
        Assert.Contains(period.Notes.Of(new ColumnKey("waterVolume")), n => n == "1 amount came at an unknown time in a gap and stands at its end: counted as doubtful.");
    }

    [Fact]
    public void Run_SlowCounter_IsSpreadOverItsHour()
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir);
        HousePeriod period = Aligned(house, t => 12 * (t - house.Input.RunIn.Start).TotalHours, StampSide.Instant, 60);
        Assert.All(Enumerable.Range(period.FirstStep, 100), i => Assert.Equal(1, period.Frame.Values(new ColumnKey("waterVolume"))[i], 9));
    }

    [Fact]
    public void Run_DailyCounter_IsSummedAndItsResetsAreTold()
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W42", "UTC").WithAir(SyntheticHouse.AutumnAir);
        ColumnSettings column = Counter;
        Review review = ReviewPipeline.Run(house.WithColumn("water", "waterVolume", t => t.InUtc().Hour).WithExport("water", column).Input);
        // 23 litres a day by hours; midnight shows 0, six times within the week.
        Assert.Contains("A counter: 161 L in the period; it began anew 6 times.", review.Sensors.Single(s => s.Channel == "waterVolume").Notes);
        Assert.DoesNotContain(ReviewPipeline.Run(house.WithColumn("water", "waterVolume", t => t.InUtc().Hour).Input).Sensors.Single(s => s.Channel == "waterVolume").Notes, n => n.Contains("counter", StringComparison.Ordinal));
    }

    private static ColumnSettings Counter => new(new FieldRef("water", null), "waterVolume", "", "L", 1) { Counter = true };

    private static HousePeriod Aligned(SyntheticHouse house, Func<Instant, double> count, StampSide side, int stepMinutes = 5)
        => Quality.Check(Alignment.Align(house.WithColumn("water", "waterVolume", count, stepMinutes, side).WithExport("water", Counter).Input));

    private static CounterAmounts Amounts(double[] counts) => CounterAmounts.Of(Stamps(counts.Length), counts, Step, Litre);

    private static long[] Stamps(int count) => [.. Enumerable.Range(0, count).Select(i => i * Step)];
}
