using ClimateLens.Science.Leaf;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Tests.Leaf;

/// <summary>What each part of the leaf's weather takes and refuses: the ends of its range are taken, what lies beyond is not, and what is not known gives nothing known.</summary>
public class LeafBoundsTests
{
    private static readonly CoverWeather Weather = new(18, 5, -5, 2, 0, 0) { InsideVapourKPa = 1 };
    private static readonly LeafSurroundings Around = new(new(18), new(80), 20, new(14), new(18), 0.2);

    /// <summary>Field, lowest, highest: the ranges of the docstring.</summary>
    public static TheoryData<string, double, double> CoverRanges => new()
    {
        { nameof(CoverWeather.InsideC), -30, 60 }, { nameof(CoverWeather.OutsideC), -60, 60 }, { nameof(CoverWeather.SkyC), -100, 60 }, { nameof(CoverWeather.WindMs), 0, 60 },
        { nameof(CoverWeather.AbsorbedWm2), 0, 500 }, { nameof(CoverWeather.ScreenClosed), 0, 1 }, { nameof(CoverWeather.InsideVapourKPa), 0, 10 },
    };

    /// <summary>Likewise.</summary>
    public static TheoryData<string, double, double> AroundRanges => new()
    {
        { nameof(LeafSurroundings.Air), -30, 60 }, { nameof(LeafSurroundings.Humidity), 0, 100 }, { nameof(LeafSurroundings.AbsorbedWm2), 0, 1500 },
        { nameof(LeafSurroundings.Above), -100, 100 }, { nameof(LeafSurroundings.Below), -100, 100 }, { nameof(LeafSurroundings.AirSpeedMs), 0.01, 10 },
    };

    [Theory]
    [MemberData(nameof(CoverRanges))]
    public void Cover_InAndBeyondItsRange(string field, double lowest, double highest)
    {
        foreach (double end in (double[])[lowest, highest])
        {
            Assert.True(double.IsFinite(RadiatingC(With(Weather, field, end))), $"{field} {end}");
            Assert.True(double.IsFinite(CoverTemperature.Solve(With(Weather, field, end), Glazing.SingleGlass).RadiatingC), $"{field} {end}");
        }

        foreach (double beyond in (double[])[lowest - 0.01, highest + 0.01])
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => CoverTemperature.Solve(With(Weather, field, beyond), Glazing.SingleGlass));
            Assert.True(double.IsNaN(RadiatingC(With(Weather, field, beyond))), $"{field} {beyond}"); // one bad step of a column must not cost the others
        }

        Assert.True(double.IsNaN(CoverTemperature.Solve(With(Weather, field, double.NaN), Glazing.SingleGlass).HeatLossWm2), field);
        Assert.True(double.IsNaN(RadiatingC(With(Weather, field, double.NaN))), field);
    }

    [Theory]
    [MemberData(nameof(AroundRanges))]
    public void Surroundings_InAndBeyondTheirRange(string field, double lowest, double highest)
    {
        foreach (double end in (double[])[lowest, highest])
        {
            _ = Leaf(With(Around, field, end)); // taken: a leaf between floor and ceiling of the range may itself be far off
        }

        foreach (double beyond in (double[])[lowest - 0.009, highest + 0.01])
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => Leaf(With(Around, field, beyond)));
        }

        Assert.True(double.IsNaN(Leaf(With(Around, field, double.NaN)).Temperature.Value), field);
    }

    [Theory]
    [InlineData(0, 0, 5)]
    [InlineData(1.01, 0, 5)]
    [InlineData(double.NaN, 0, 5)]
    [InlineData(0.84, -0.01, 5)]
    [InlineData(0.84, 0.17, 5)] // takes up and lets through more than there is
    [InlineData(0.84, double.NaN, 5)]
    [InlineData(0.84, 0, 0.09)]
    [InlineData(0.84, 0, double.NaN)]
    [InlineData(0.84, 0, -5)]
    public void Glazing_Impossible_IsRefused(double emissivity, double through, double conductance)
        => Assert.Throws<ArgumentOutOfRangeException>(() => CoverTemperature.Solve(Weather, new(emissivity, through, conductance)));

    [Theory]
    [InlineData(1, 0, 0.1)]
    [InlineData(0.84, 0.16, double.PositiveInfinity)]
    public void Glazing_AtTheEndsOfItsRange_IsTaken(double emissivity, double through, double conductance)
        => Assert.True(double.IsFinite(CoverTemperature.Solve(Weather, new(emissivity, through, conductance)).RadiatingC));

    [Theory]
    [InlineData(0.0009, 0.95, 3000)]
    [InlineData(0.51, 0.95, 3000)]
    [InlineData(double.NaN, 0.95, 3000)]
    [InlineData(0.06, 0, 3000)]
    [InlineData(0.06, 1.01, 3000)]
    [InlineData(0.06, 0.95, 99)]
    [InlineData(0.06, 0.95, 1.1e6)]
    public void Traits_Impossible_AreRefused(double width, double emissivity, double night)
        => Assert.Throws<ArgumentOutOfRangeException>(() => LeafBalance.Solve(Around, new(width, emissivity, night), new(300)));

    [Fact]
    public void Surface_BelowNought_IsRefusedAndAWetLeafAndAClosedOneTaken()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LeafBalance.Solve(Around, LeafTraits.PotPlant, new(-1)));
        Assert.True(LeafBalance.Solve(Around, LeafTraits.PotPlant, new(0)).Latent > LeafBalance.Solve(Around, LeafTraits.PotPlant, new(100)).Latent);
        Assert.Equal(0, LeafBalance.Solve(Around, LeafTraits.PotPlant, new(double.PositiveInfinity)).Latent);
        Assert.True(double.IsNaN(LeafBalance.Solve(Around, LeafTraits.PotPlant, new(double.NaN)).Temperature.Value));
    }

    /// <summary>Standard pressure is 101.325 kPa; a leaf on a mountain is another one.</summary>
    [Fact]
    public void Pressure_LeftOutOrGiven_Counts()
    {
        double sea = LeafBalance.Solve(Around, LeafTraits.PotPlant, new(0)).Offset.Value;
        Assert.Equal(sea, LeafBalance.Solve(Around, LeafTraits.PotPlant, new(0), new KiloPascal(101.325)).Offset.Value);
        Assert.NotEqual(sea, LeafBalance.Solve(Around, LeafTraits.PotPlant, new(0), new KiloPascal(80)).Offset.Value, 3);
        Assert.NotEqual(CropTranspiration.LatentHeat(new(20), new(1), new(100), 3, new(200), new(100)).Value, CropTranspiration.LatentHeat(new(20), new(1), new(100), 3, new(200), new(100), new KiloPascal(80)).Value, 3);
    }

    [Theory]
    [InlineData(-10.1, 1, 0, 1)]
    [InlineData(10.1, 1, 0, 1)]
    [InlineData(0, -0.1, 0, 1)]
    [InlineData(0, 10.1, 0, 1)]
    [InlineData(0, 1, -50.1, 1)]
    [InlineData(0, 1, 50.1, 1)]
    [InlineData(0, 1, 0, -0.1)]
    [InlineData(0, 1, 0, 50.1)]
    [InlineData(double.NaN, 1, 0, 1)]
    public void InCanopyAir_Impossible_IsRefused(double kelvin, double kelvinError, double pct, double pctError)
        => Assert.Throws<ArgumentOutOfRangeException>(() => new InCanopyAir(kelvin, kelvinError, pct, pctError).At(1));

    /// <summary>Halfway between a cover of 0.6 and a closed one everything counts by half, the errors too.</summary>
    [Fact]
    public void InCanopyAir_HalfClosed_CountsByHalf()
        => Assert.Equal(new CanopyAirOffset(-1, 0.5, 4, 3), Rounded(new InCanopyAir(-2, 1, 8, 6).At(0.8)));

    [Fact]
    public void LeafClimate_ColumnsOfOtherLengths_AreRefusedEach()
    {
        double[] three = [1, 2, 3], two = [1, 2];
        new LeafClimate(three, three, three, three, three, three, three).Check();
        new LeafClimate(three, three, three, three, three).Check();
        Assert.Throws<ArgumentException>(() => new LeafClimate(three, two, three, three, three).Check());
        Assert.Throws<ArgumentException>(() => new LeafClimate(three, three, two, three, three).Check());
        Assert.Throws<ArgumentException>(() => new LeafClimate(three, three, three, two, three).Check());
        Assert.Throws<ArgumentException>(() => new LeafClimate(three, three, three, three, two).Check());
        Assert.Throws<ArgumentException>(() => new LeafClimate(three, three, three, three, three, two).Check());
        Assert.Throws<ArgumentException>(() => new LeafClimate(three, three, three, three, three, default, two).Check());
    }

    [Fact]
    public void LeafClimate_Between_CutsEveryColumnAlikeAndLeavesOutWhatWasLeftOut()
    {
        LeafClimate all = new LeafClimate([1, 2, 3], [4, 5, 6], [7, 8, 9], [10, 11, 12], [13, 14, 15], [16, 17, 18], [19, 20, 21]).Between(1, 2);
        Assert.Equal([2, 5, 8, 11, 14, 17, 20], (double[])[.. all.AirC, .. all.RelativeHumidityPct, .. all.AbsorbedWm2, .. all.AboveC, .. all.AirSpeedMs, .. all.MeasuredLeafC, .. all.OpenShare]);
        LeafClimate few = new LeafClimate([1, 2, 3], [4, 5, 6], [7, 8, 9], [10, 11, 12], [13, 14, 15]).From(2);
        Assert.Equal(1, few.Length);
        Assert.True(few.MeasuredLeafC.IsEmpty && few.OpenShare.IsEmpty);
    }

    private static CanopyAirOffset Rounded(CanopyAirOffset at) => new(Math.Round(at.TemperatureK, 9), Math.Round(at.TemperatureErrorK, 9), Math.Round(at.HumidityPct, 9), Math.Round(at.HumidityErrorPct, 9));

    private static LeafState Leaf(LeafSurroundings around) => LeafBalance.Solve(around, LeafTraits.PotPlant, new(300));

    private static double RadiatingC(CoverWeather weather)
    {
        double[] result = new double[1];
        CoverTemperature.RadiatingC([weather], Glazing.SingleGlass, result);
        return result[0];
    }

    private static CoverWeather With(CoverWeather weather, string field, double value) => field switch
    {
        nameof(CoverWeather.InsideC) => weather with { InsideC = value },
        nameof(CoverWeather.OutsideC) => weather with { OutsideC = value },
        nameof(CoverWeather.SkyC) => weather with { SkyC = value },
        nameof(CoverWeather.WindMs) => weather with { WindMs = value },
        nameof(CoverWeather.AbsorbedWm2) => weather with { AbsorbedWm2 = value },
        nameof(CoverWeather.ScreenClosed) => weather with { ScreenClosed = value },
        _ => weather with { InsideVapourKPa = value },
    };

    private static LeafSurroundings With(LeafSurroundings around, string field, double value) => field switch
    {
        nameof(LeafSurroundings.Air) => around with { Air = new(value) },
        nameof(LeafSurroundings.Humidity) => around with { Humidity = new(value) },
        nameof(LeafSurroundings.AbsorbedWm2) => around with { AbsorbedWm2 = value },
        nameof(LeafSurroundings.Above) => around with { Above = new(value) },
        nameof(LeafSurroundings.Below) => around with { Below = new(value) },
        _ => around with { AirSpeedMs = value },
    };
}
