using ClimateLens.Science.Leaf;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using CsCheck;

namespace ClimateLens.Science.Tests.Leaf;

/// <summary>Resistances have the dimension of a time over a length: they scale as theory says, and fluxes made of them agree with fluxes made otherwise.</summary>
public class ResistanceTests
{
    private static readonly Gen<(double Width, double Speed)> Any = Gen.Select(Gen.Double[0.005, 0.2], Gen.Double[0.05, 5]);

    /// <summary>Forced convection over a plate: Nusselt goes with √Reynolds, so r = L/(Nu·D) goes with √(L/u).</summary>
    [Fact]
    public void External_WithoutHeat_ScalesAsForcedConvection() => Gen.Select(Any, Gen.Double[0.5, 2]).Sample((any, k) =>
        Near(External(k * any.Width, 0, any.Speed), Math.Sqrt(k) * External(any.Width, 0, any.Speed))
        && Near(External(any.Width, 0, k * any.Speed), External(any.Width, 0, any.Speed) / Math.Sqrt(k)));

    /// <summary>Free convection: Nusselt goes with the fourth root of Grashof (L³ Δt), so r goes with (L/Δt)^¼.</summary>
    [Fact]
    public void External_InStillAir_ScalesAsFreeConvection() => Gen.Select(Gen.Double[0.02, 0.2], Gen.Double[2, 20], Gen.Double[0.5, 2])
        .Sample((width, dt, k) =>
            Near(External(k * width, dt, 0.001), Math.Pow(k, 0.25) * External(width, dt, 0.001), 0.01)
            && Near(External(width, k * dt, 0.001), External(width, dt, 0.001) / Math.Pow(k, 0.25), 0.01));

    /// <summary>Laminar flow along a plate: Nu = 0.664 Re^½ Pr^⅓ (Pohlhausen; any textbook of heat transfer). Air at 20 °C: ν 1.51e-5 m²/s, a 2.12e-5 m²/s (textbook tables, from memory).</summary>
    [Theory]
    [InlineData(0.03)]
    [InlineData(0.06)]
    [InlineData(0.1)]
    public void External_ForcedFlow_IsThatOfAFlatPlate(double width)
    {
        const double viscosity = 1.51e-5, diffusivity = 2.12e-5, speed = 0.1;
        double nusselt = 0.664 * Math.Sqrt(speed * width / viscosity) * Math.Cbrt(viscosity / diffusivity);
        double plate = width / (nusselt * diffusivity);
        Assert.Equal(1, External(width, 0, speed) / plate, 0.06); // 3 % against the rounded 302 √(L/u) of the notes
    }

    /// <summary>Vapour flux by concentrations (g/m³ over s/m) times latent heat is the latent flux by pressures (kPa over γ): units and sizes at once.</summary>
    [Fact]
    public void LatentHeat_ByPressures_IsThatByConcentrations() => Gen.Select(Gen.Double[5, 35], Gen.Double[20, 95], Gen.Double[50, 3000])
        .Sample((airC, pct, surface) =>
        {
            LeafState leaf = LeafBalance.Solve(
                new(new(airC), new(pct), 0, new(airC), new(airC), 0.2), LeafTraits.PotPlant, new(surface));
            double external = External(LeafTraits.PotPlant.WidthM, leaf.Offset.Value, 0.2);
            double leafKPa = SaturationVapourPressure.OverWater(leaf.Temperature).Value, airKPa = SaturationVapourPressure.OverWater(new(airC)).Value * pct / 100;
            double outKgM3 = VapourDensity.FromVapourPressure(new(airC), new(leafKPa - airKPa)).Value / 1000;
            double byDensity = 2 * outKgM3 / ((StanghelliniResistance.VapourToHeat * external) + surface) * LeafAir.LatentHeatJKg(new(airC));
            return Math.Abs(leaf.Latent - byDensity) <= (0.002 * Math.Abs(byDensity)) + 1e-6; // 0.622 for 0.62198
        });

    [Fact]
    public void Surface_MoreLight_NeverHigher() => Gen.Select(Gen.Double[0, 400], Gen.Double[0, 100], Gen.Double[5, 40], Gen.Double[0, 3])
        .Sample((light, more, airC, deficit) =>
            SurfaceResistance.OfDryLeaf(LeafTraits.PotPlant, new(light + more), new(airC), new(deficit)).Value
            <= SurfaceResistance.OfDryLeaf(LeafTraits.PotPlant, new(light), new(airC), new(deficit)).Value + 1e-9);

    [Fact]
    public void Surface_InTheDark_IsTheLeafsOwn() =>
        Assert.Equal(3000, SurfaceResistance.OfDryLeaf(LeafTraits.PotPlant, new(0), new(18), new(0.4)).Value, 9);

    /// <summary>The formula of the docstring worked out once by a separate program: light opens, cold, heat and dry air close.</summary>
    [Theory]
    [InlineData(50, 20, 1.0, 626.0515)]
    [InlineData(50, 20, 0.5, 280.7561)]
    [InlineData(200, 30, 2.0, 716.9851)] // the air's deficit closes no further than 5.8 times
    [InlineData(1, 24.5, 0.0, 426.3772)]
    public void Surface_ByLightTemperatureAndDeficit_IsTheFormula(double light, double airC, double deficit, double expected)
        => Assert.Equal(expected, SurfaceResistance.OfDryLeaf(LeafTraits.PotPlant, new(light), new(airC), new(deficit)).Value, 1e-4);

    [Fact]
    public void Surface_WhereSomethingIsNotKnown_IsNotKnown()
    {
        Assert.True(double.IsNaN(SurfaceResistance.OfDryLeaf(LeafTraits.PotPlant, new(0), new(double.NaN), new(1)).Value));
        Assert.True(double.IsNaN(SurfaceResistance.OfDryLeaf(LeafTraits.PotPlant, new(0), new(20), new(double.NaN)).Value));
        Assert.True(double.IsNaN(SurfaceResistance.OfDryLeaf(LeafTraits.PotPlant, new(double.NaN), new(20), new(1)).Value));
    }

    /// <summary>The coefficients of the night, likewise: 652.963 s/m in the dark at 24.5 °C, times 1 + 1.1e-11·4800², times 1 + 5.2·0.5² or at most 5.8.</summary>
    [Theory]
    [InlineData(5000, 0.5, 1502.1954)]
    [InlineData(400, 3.0, 3787.1869)]
    public void Internal_InTheDark_HasTheCoefficientsOfTheNight(double ppm, double deficit, double expected)
        => Assert.Equal(expected, StanghelliniResistance.Internal(new(0), new(24.5), ppm, new(deficit)).Value, 1e-3);

    /// <summary>Penman's form with the leaf's own net radiation against the full balance of a wet leaf: the error that the form states.</summary>
    [Fact]
    public void Drying_WithTheLeafsNetRadiation_IsThatOfTheBalance() => Gen.Select(
        Gen.Double[8, 30], Gen.Double[30, 90], Gen.Double[0, 60], Gen.Double[-4, 2], Gen.Double[0.05, 1]).Sample((airC, pct, light, above, speed) =>
        {
            LeafState leaf = LeafBalance.Solve(
                new(new(airC), new(pct), light, new(airC + above), new(airC), speed), LeafTraits.PotPlant, new(0));
            double offset = leaf.Offset.Value;
            SecondPerMetre external = new(External(LeafTraits.PotPlant.WidthM, offset, speed));
            double penman = Science.Wetness.FilmDrying.LatentHeat(new(airC), new(pct), external, new(leaf.NetRadiation)).Value;
            return Math.Abs(penman - leaf.Latent) <= (0.61 * offset * offset) + 0.02;
        });

    private static double External(double width, double dt, double speed) =>
        StanghelliniResistance.External(new(width), new(dt), new(speed)).Value;

    private static bool Near(double actual, double expected, double relative = 1e-9) => Math.Abs(actual - expected) <= relative * expected;
}
