using ClimateLens.Science.Leaf;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using CsCheck;

namespace ClimateLens.Science.Tests.Leaf;

/// <summary>What holds for every leaf: energy closes, and each cause pushes the leaf the way it must.</summary>
public class LeafBalanceTests
{
    private static readonly LeafTraits Leaf = LeafTraits.PotPlant;
    private static readonly SecondPerMetre None = new(double.PositiveInfinity);

    /// <summary>Air, humidity, light, and the cover's and the lower side's difference to the air, air speed, surface resistance.</summary>
    private static readonly Gen<(LeafSurroundings Around, SecondPerMetre Surface)> Any = Gen.Select(
        Gen.Select(Gen.Double[2, 40], Gen.Double[20, 100], Gen.Double[0, 300]),
        Gen.Select(Gen.Double[-20, 5], Gen.Double[-3, 3], Gen.Double[0.03, 2]),
        Gen.Double[0, 5000]).Select((air, outer, surface) => (
            new LeafSurroundings(
                new(air.Item1), new(air.Item2), air.Item3, new(air.Item1 + outer.Item1), new(air.Item1 + outer.Item2), outer.Item3),
            new SecondPerMetre(surface)));

    [Fact]
    public void Solve_AnyLeaf_ClosesTheEnergyBalance() => Any.Sample((around, surface) =>
    {
        LeafState leaf = LeafBalance.Solve(around, Leaf, surface);
        return Math.Abs(leaf.NetRadiation - leaf.Sensible - leaf.Latent) < 1e-5;
    });

    [Fact]
    public void Solve_WarmerCover_NeverColderLeaf() => Gen.Select(Any, Gen.Double[0, 15]).Sample((any, warmer) =>
        Offset(any.Around with { Above = new(any.Around.Above.Value + warmer) }, any.Surface) >= Offset(any.Around, any.Surface) - 1e-8);

    [Fact]
    public void Solve_MoreLight_NeverColderLeaf() => Gen.Select(Any, Gen.Double[0, 200]).Sample((any, more) =>
        Offset(any.Around with { AbsorbedWm2 = any.Around.AbsorbedWm2 + more }, any.Surface) >= Offset(any.Around, any.Surface) - 1e-8);

    [Fact]
    public void Solve_DamperAir_NeverColderLeaf() => Gen.Select(Any, Gen.Double[0, 1]).Sample((any, share) =>
    {
        double damper = any.Around.Humidity.Percent + (share * (100 - any.Around.Humidity.Percent));
        return Offset(any.Around with { Humidity = new(damper) }, any.Surface) >= Offset(any.Around, any.Surface) - 1e-8;
    });

    [Fact]
    public void Solve_WetLeafInUnsaturatedAir_IsNeverWarmerThanADryOne() => Any.Sample((around, surface) =>
        LeafBalance.Solve(around, Leaf, None) is var dry && (dry.Latent < 0 || Offset(around, new(0)) <= dry.Offset.Value + 1e-8));

    [Fact]
    public void Solve_FasterAir_BringsADryLeafNearerToTheAir() => Gen.Select(Any, Gen.Double[0, 2]).Sample((any, faster) =>
    {
        LeafSurroundings dry = any.Around with { Humidity = new(5) }; // no dew whatever the offset
        return Math.Abs(Offset(dry with { AirSpeedMs = dry.AirSpeedMs + faster }, None)) <= Math.Abs(Offset(dry, None)) + 1e-8;
    });

    [Fact]
    public void Solve_LeafBelowTheDewPoint_GathersDewWhateverItsSkin() => Any.Sample((around, surface) =>
    {
        LeafState leaf = LeafBalance.Solve(around, Leaf, surface);
        double dewPoint = DewPoint.FromRelativeHumidity(around.Air, around.Humidity).Value;
        return leaf.Temperature.Value < dewPoint - 1e-3
            ? leaf.Latent < 0 && Math.Abs(Offset(around, None) - leaf.Offset.Value) < 1e-6
            : leaf.Latent >= -0.2; // a millikelvin
    });

    /// <summary>The error that the closed form states for itself.</summary>
    [Fact]
    public void SolveLinear_WithinItsStatedRange_IsWithin50Millikelvin() => Any.Sample((around, surface) =>
        Agrees(around with { Humidity = new(5) }, None, -4, 3) && Agrees(around, None, -1.5, 1) && Agrees(around, surface, -1.5, 1), iter: 2000);

    [Fact]
    public void Solve_UnknownInput_IsNotKnown()
    {
        LeafState leaf = LeafBalance.Solve(new(new(18), new(80), double.NaN, new(10), new(18), 0.1), Leaf, None);
        Assert.True(double.IsNaN(leaf.Temperature.Value) && double.IsNaN(leaf.Latent));
        Assert.Throws<ArgumentOutOfRangeException>(() => LeafBalance.Solve(new(new(18), new(80), 0, new(10), new(18), 0), Leaf, None));
    }

    private static bool Agrees(LeafSurroundings around, SecondPerMetre surface, double low, double high)
    {
        double full = Offset(around, surface);
        double linear = LeafBalance.SolveLinear(around, Leaf, surface).Offset.Value;
        return full < low || full > high || Math.Abs(full - linear) <= 0.05;
    }

    private static double Offset(LeafSurroundings around, SecondPerMetre surface) => LeafBalance.Solve(around, Leaf, surface).Offset.Value;
}
