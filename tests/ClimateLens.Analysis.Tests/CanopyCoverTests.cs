using System.Collections.Immutable;
using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

public sealed class CanopyCoverTests
{
    private static readonly LocalDate Potted = new(2025, 8, 4);
    private static readonly SpacingStep Close = new(Potted, "square", 14, null);
    private static readonly SpacingStep Wide = new(new LocalDate(2025, 9, 10), "square", 24, null);

    [Fact]
    public void NoWidths_TheRangeIsWide_AndThreeWidthsNarrowIt()
    {
        CanopyState guessed = Of(House(Close, Wide))!;
        (LocalDate, double)[] onThreeDays = [(new(2025, 9, 8), 12), (new(2025, 9, 22), 16), (new(2025, 10, 6), 20)];
        CanopyState measured = Of(House(Close, Wide), onThreeDays)!;
        CanopyState often = Of(House(Close, Wide), [.. Enumerable.Repeat(onThreeDays, 10).SelectMany(day => day)])!;

        Assert.True(Range(guessed.Cover) > 0.6, $"{guessed.Cover}");
        Assert.True(Range(measured.Cover) < 0.6 * Range(guessed.Cover), $"{measured.Cover} of {guessed.Cover}");
        Assert.True(Range(often.Cover) < 0.8 * Range(measured.Cover), $"{often.Cover} of {measured.Cover}");
        Assert.Equal(3, measured.Widths.Length);
        Assert.Equal(7, measured.Days.Length);
        Assert.Equal(measured.Cover, measured.Days[^1].Cover);
    }

    [Fact]
    public void Cover_OfAMeasuredWidth_IsThatOfDiscs()
    {
        // 20 cm discs on a square of 24 cm: pi 10^2 / 24^2 = 0.545 (plane geometry)
        CanopyState state = Of(House(Close, Wide), [.. Enumerable.Range(0, 10).Select(i => (new LocalDate(2025, 10, 19), 20.0))])!;
        Assert.InRange(state.Cover.Value, 0.50, 0.59);
        Assert.InRange(0.545, state.Cover.Low, state.Cover.High);
    }

    [Fact]
    public void Widths_AfterThePeriodOrOfAnotherCrop_AreNotLookedAt()
    {
        CanopyState state = Of(House(Close, Wide), (new(2025, 7, 1), 35), (new(2025, 10, 25), 60))!;
        Assert.Equal(Of(House(Close, Wide))!.Cover, state.Cover);
        Assert.Empty(state.Widths);
    }

    [Fact]
    public void Closure_IsForetold_AndNotWhereTheCropIsSoldBefore()
    {
        (LocalDate, double)[] widths = [(new(2025, 9, 8), 12), (new(2025, 9, 22), 18), (new(2025, 10, 6), 23), (new(2025, 10, 13), 25)];
        CanopyClosure closure = Of(House(Close, Wide), widths)!.ClosureDate!;
        Assert.True(closure.Value > new LocalDate(2025, 10, 20), $"{closure}");
        Assert.True(closure.Low <= closure.Value && !(closure.High < closure.Value), $"{closure}");
        Assert.Null(Of(House(Close, Wide) with { Sale = new LocalDate(2025, 10, 21) }, widths)!.ClosureDate);
        Assert.Null(Of(House(Close, Wide with { DistanceCm = 200 }), widths)!.ClosureDate);
    }

    [Fact]
    public void Spacing_OpensTheCanopy_FromItsDayOn()
    {
        SpacingStep inTheWeek = Wide with { From = new LocalDate(2025, 10, 16) };
        CanopyState state = Of(House(Close, inTheWeek))!;
        Assert.True(state.Days[3].Cover.Value < state.Days[2].Cover.Value - 0.1, string.Join(" ", state.Days.Select(d => d.Cover.Value)));
        Assert.True(state.ClosureDate is null || state.ClosureDate.Low >= inTheWeek.From);
    }

    [Theory]
    [InlineData("poinsettia", false, true)]
    [InlineData("cyclamen", false, false)]
    [InlineData("hoya", true, false)]
    public void Start_OrCropNotKnown_IsTold(string species, bool anyCrop, bool pinchAssumed)
    {
        CanopyState state = Of(House(Close, Wide) with { Species = species })!;
        Assert.Equal(anyCrop, state.Assumption.Contains("any kind", StringComparison.Ordinal));
        Assert.Equal(pinchAssumed, state.Assumption.Contains("The pinch is taken", StringComparison.Ordinal));
        Assert.Equal(pinchAssumed ? Potted.PlusDays(GrowthStart.DaysToPinch) : Potted, state.CountedFrom);
    }

    [Fact]
    public void NoDatesOrNoSpacing_IsNotKnown_WithTheMend()
    {
        HouseInput undated = Input(House(Close) with { Potted = null });
        Assert.Null(StateOf(undated));
        Assert.Null(StateOf(Input(House())));
        Assert.Contains("potting or pinch", WhyNot(undated), StringComparison.Ordinal);
        Assert.Contains("add spacing", WhyNot(Input(House())), StringComparison.Ordinal);
        Assert.Contains("names no crop", WhyNot(undated with { House = undated.House with { Crops = [] } }), StringComparison.Ordinal);
    }

    private static string WhyNot(HouseInput input) => ReviewPipeline.Run(input).NotKnown.Single(u => u.What == "canopy").Why;

    private static double Range(Estimate estimate) => estimate.High - estimate.Low;

    private static CropSettings House(params SpacingStep[] spacing) => new("cyclamen", Potted, null, null, 13, [.. spacing]);

    private static CanopyState? StateOf(HouseInput input) => CanopyCover.Add(Alignment.Align(input)).Canopy;

    private static CanopyState? Of(CropSettings crop, params (LocalDate Day, double WidthCm)[] widths)
        => StateOf(Input(crop) with { Records = [.. widths.Select((w, i) => Width(w.Day, w.WidthCm, i))] });

    private static HouseInput Input(CropSettings crop)
    {
        HouseInput input = SyntheticHouse.Week("2025-W42").Input;
        return input with { House = input.House with { Crops = [crop] } };
    }

    private static RecordRow Width(LocalDate day, double widthCm, int line) => new(
        RecordKind.PlantWidths, "1", "widths", (day + new LocalTime(10, 0)).InUtc().ToInstant(), "widths.csv", line + 2,
        ImmutableSortedDictionary<string, string>.Empty.Add("width", (10 * widthCm).ToString(System.Globalization.CultureInfo.InvariantCulture)));
}
