using ClimateLens.Science.Leaf;
using ClimateLens.Science.Quantities;
using CsCheck;

namespace ClimateLens.Science.Tests.Leaf;

public sealed class MeanLeafTests
{
    private static readonly LeafConstants Constants = new(LeafTraits.PotPlant, LeafAir.StandardPressureKPa);

    [Theory]
    [InlineData(0, 0.94)] // its limit
    [InlineData(1, 0.6094)] // 1 - e^-0.94, by hand with e^-0.94 = 0.39063
    [InlineData(3, 0.3135)] // (1 - e^-2.82)/3, e^-2.82 = 0.05961
    [InlineData(20, 0.05)] // a crop that lets nothing through: one side of one layer sees out
    public void OpenShare_KnownLeafArea_IsTheShareByHand(double leafArea, double expected) => Assert.Equal(expected, MeanLeaf.OpenShare(leafArea), 1e-4);

    [Fact]
    public void OpenShare_MoreLeaves_IsNeverMore() => Gen.Select(Gen.Double[0, 20], Gen.Double[0, 20]).Sample((a, b) =>
        MeanLeaf.OpenShare(Math.Max(a, b)) <= MeanLeaf.OpenShare(Math.Min(a, b)) + 1e-12 && MeanLeaf.OpenShare(a) is > 0 and <= 0.94);

    [Fact]
    public void OpenShare_ImpossibleLeafArea_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => MeanLeaf.OpenShare(21));

    /// <summary>A leaf that sees leaves of its own temperature radiates as one of so much smaller emissivity: the careful balance of that one.</summary>
    [Fact]
    public void Kernel_AnyOpenShare_IsTheFullBalanceOfALeafThatRadiatesSoMuchLess() => Gen.Select(
        Gen.Double[5, 35], Gen.Double[30, 100], Gen.Double[0, 100], Gen.Double[-15, 5], Gen.Double[0.05, 1], Gen.Double[0.1, 1]).Sample((airC, pct, light, above, speed, share) =>
    {
        var kernel = new OneLeaf(airC, pct, light, airC + above, speed, share, Constants);
        LeafTraits less = LeafTraits.PotPlant with { Emissivity = share * LeafTraits.PotPlant.Emissivity };
        double full = LeafBalance.Solve(new(new(airC), new(pct), light, new(airC + above), new(airC), speed), less, new(300)).Offset.Value;
        return Math.Abs(full) > 6 || Math.Abs(kernel.OffsetK(false, 1 / 300.0, 0) - full) < 0.01;
    });

    /// <summary>Whatever share other leaves take, a leaf under a cover as warm as the air, dry and in the dark, is as warm as both.</summary>
    [Fact]
    public void Kernel_NothingColder_LeavesTheLeafAsWarmAsTheAir() => Gen.Select(Gen.Double[5, 35], Gen.Double[0.05, 1]).Sample((airC, share) =>
        Math.Abs(new OneLeaf(airC, 50, 0, airC, 0.1, share, Constants).OffsetK(false, 0, 1)) < 1e-3);

    [Theory]
    [InlineData(18, 0.1, 0.3)]
    [InlineData(12, 0.05, 0.6)]
    [InlineData(25, 0.2, 1)]
    public void PerLeafK_OverTheBalance_MovesTheDryLeafByAKelvin(double airC, double speedMs, double share)
    {
        LeafTraits less = LeafTraits.PotPlant with { Emissivity = share * LeafTraits.PotPlant.Emissivity };
        double Offset(double aboveC) => LeafBalance.Solve(new(new(airC), new(50), 0, new(aboveC), new(airC), speedMs), less, new(double.PositiveInfinity)).Offset.Value;
        Celsius above = RadiatingForOffset.Above(new(airC), new(-0.5), new(speedMs), less);
        double perK = RadiatingForOffset.PerLeafK(new(airC), new(-0.5), new(speedMs), share, LeafTraits.PotPlant);
        double moved = (Offset(above.Value + (0.2 * perK)) - Offset(above.Value - (0.2 * perK))) / 0.4;
        Assert.Equal(1, moved, 0.08); // r_e is held in the formula; here it follows the difference
    }
}
