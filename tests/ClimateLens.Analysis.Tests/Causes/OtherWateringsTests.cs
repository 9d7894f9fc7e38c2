using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery.Records;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Causes;

public sealed class OtherWateringsTests
{
    private static readonly LocalDate Tuesday = new(2025, 10, 14);

    private static readonly HousePeriod House = LeafState.Add(CanopyCover.Add(AirStates.Add(Quality.Check(Clocks.Check(Alignment.Align(
        SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir)
            .WithWatering(Tuesday.At(new LocalTime(9, 0)), ("minutes", "40"), ("method", "boom"))
            .WithWatering(Tuesday.At(new LocalTime(16, 0)), ("minutes", "40"), ("method", "boom"))
            .WithWatering(Tuesday.At(new LocalTime(17, 0)), ("minutes", "10"), ("method", "fog"))
            .WithWatering(Tuesday.At(new LocalTime(18, 0)), ("minutes", "10"), ("method", "drip")).Input))))));

    private static readonly CutOffs CutOffs = RiskHours.Find(House).CutOffs;

    [Fact]
    public void BeforeCutOff_MovesTheLateOneToEndThere_AndNoOther()
    {
        Instant cutOff = CutOffs.Of(Tuesday)!.Value.Latest!.Value;
        WateringEvent[] moved = [.. OtherWaterings.Of(House, CutOffs, Change.WaterBeforeCutOff)];
        Assert.True(OtherWaterings.AnyLate(House, CutOffs));
        Assert.Equal(cutOff, moved[1].End);
        Assert.Equal(cutOff - Duration.FromMinutes(40), moved[1].Start);
        Assert.Equal([House.Events[0], .. House.Events[2..]], [moved[0], .. moved[2..]]);
    }

    [Fact]
    public void OffLeaves_MakesDripOfAllButFog()
    {
        WateringEvent[] dry = [.. OtherWaterings.Of(House, CutOffs, Change.WaterOffLeaves)];
        Assert.Equal([WateringMethod.Drip, WateringMethod.Drip, WateringMethod.Fog, WateringMethod.Drip], dry.Select(e => e.Method!.Value));
        Assert.Equal(House.Events.Select(e => e.Start), dry.Select(e => e.Start));
    }

    [Fact]
    public void NothingChanged_LeavesAllAsItWas() => Assert.Equal<IEnumerable<WateringEvent>>([.. House.Events], [.. OtherWaterings.Of(House, CutOffs, Change.None)]);
}
