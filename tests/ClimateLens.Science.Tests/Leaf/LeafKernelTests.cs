using ClimateLens.Science.Leaf;
using CsCheck;

namespace ClimateLens.Science.Tests.Leaf;

/// <summary>The fast balance for columns against the careful one.</summary>
public class LeafKernelTests
{
    private static readonly LeafConstants Constants = new(LeafTraits.PotPlant, LeafAir.StandardPressureKPa);

    private static readonly Gen<(double AirC, double Pct, double Light, double Above, double Speed)> Any = Gen.Select(
        Gen.Double[2, 40], Gen.Double[20, 100], Gen.Double[0, 400], Gen.Double[-30, 5], Gen.Double[0.03, 2]);

    [Fact]
    public void OffsetK_AnyLeaf_IsThatOfTheFullBalance() => Gen.Select(Any, Gen.Double[50, 5000], Gen.Bool).Sample((any, surface, wet) =>
    {
        (double airC, double pct, double light, double above, double speed) = any;
        var kernel = new OneLeaf(airC, pct, light, airC + above, speed, 1, Constants);
        double fast = kernel.OffsetK(wet, 1 / surface, 0);
        LeafState full = LeafBalance.Solve(
            new(new(airC), new(pct), light, new(airC + above), new(airC), speed), LeafTraits.PotPlant, new(wet ? 0 : surface));
        double off = Math.Abs(full.Offset.Value), miss = Math.Abs(fast - full.Offset.Value);
        return off > 10 || miss <= (off <= 6 ? 0.01 : 0.05);
    });

    [Fact]
    public void OffsetK_AnyFirstGuess_EndsAtTheSameLeaf() => Gen.Select(Any, Gen.Double[-10, 10]).Sample((any, guess) =>
    {
        (double airC, double pct, double light, double above, double speed) = any;
        var kernel = new OneLeaf(airC, pct, light, airC + above, speed, 1, Constants);
        return Math.Abs(kernel.OffsetK(false, 1 / 300.0, guess) - kernel.OffsetK(false, 1 / 300.0, 0)) < 2e-3; // it stops at steps of 1e-3 K, which at the kink at 0 K need not be the last
    });

    /// <summary>Below 0.03 m/s a wet leaf in sun may have two balances; whichever is found is one.</summary>
    [Fact]
    public void OffsetK_NearlyStillAir_EndsAtABalance() => Gen.Select(
        Gen.Double[5, 40], Gen.Double[10, 80], Gen.Double[0, 400], Gen.Double[-25, 5], Gen.Double[0.01, 0.03], Gen.Double[-10, 10]).Sample(
        (airC, pct, light, above, speed, guess) =>
        {
            var kernel = new OneLeaf(airC, pct, light, airC + above, speed, 1, Constants);
            return Math.Abs(kernel.GainWm2(true, 1, kernel.OffsetK(true, 1, guess))) < 1; // W/m²: a step of 1e-3 K past the kink at 0 K, where the balance is steep
        }, iter: 20_000);

    [Fact]
    public void WetLatent_AtTheLeaf_IsThatOfTheFullBalance() => Any.Sample((airC, pct, light, above, speed) =>
    {
        var kernel = new OneLeaf(airC, pct, light, airC + above, speed, 1, Constants);
        LeafState full = LeafBalance.Solve(
            new(new(airC), new(pct), light, new(airC + above), new(airC), speed), LeafTraits.PotPlant, new(0));
        double off = Math.Abs(full.Offset.Value);
        return off > 6 || Math.Abs(kernel.WetLatentWm2(full.Offset.Value) - full.Latent) <= 1; // of up to 560 W/m²
    });
}
