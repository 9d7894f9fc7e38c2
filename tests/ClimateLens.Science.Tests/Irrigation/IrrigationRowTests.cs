using ClimateLens.Science.Irrigation;
using ClimateLens.Science.Tests.CheckRows;
using ClimateLens.Science.Tests.Statistics;
using CsCheck;

namespace ClimateLens.Science.Tests.Irrigation;

/// <summary>Every row of irrigation_checks.json is worked out with the function it speaks of.</summary>
public class IrrigationRowTests
{
    public static TheoryData<int, string> Rows => CheckRow.Theory("irrigation_checks");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Row_IsItsValue(int index, string source)
    {
        CheckRow row = CheckRow.Of("irrigation_checks")[index];
        double actual = row.Quantity switch
        {
            "distribution_uniformity_low_quarter" => CatchCups.LowQuarterUniformityPct(Amounts(row), row.Text("quarter_rule") == "floor" ? QuarterRule.Down : QuarterRule.Rounded),
            "distribution_uniformity_low_quarter_fractional" => CatchCups.LowQuarterUniformityPct(Amounts(row), QuarterRule.Weighted),
            "christiansen_uniformity" => CatchCups.ChristiansenPct(Amounts(row)),
            "du_ratio" => 100 * row.Input("low_quarter_mean") / row.Input("mean"),
            "scheduling_multiplier" => CatchCups.ScheduleFactor(row.Input("du_pct")),
            "emission_uniformity_keller_karmeli" => CatchCups.EmissionUniformityPct(Amounts(row), (int)row.Input("emitters_per_plant")),
            "drip_volume" => Dose.EmitterMl(row.Input("q_L_h"), row.Input("minutes")) / 1000,
            "drip_minutes" => Dose.EmitterMinutes(row.Input("volume_mL"), row.Input("q_L_h")),
            "drench_active_per_pot" => Dose.MilligramPerPot(row.Input("volume_mL_per_pot"), row.Input("concentration_mg_L")),
            "drench_solution_total" => Dose.SolutionLitres((int)row.Input("pots"), row.Input("volume_mL_per_pot"), row.Input("overage_pct")),
            "overhead_depth_to_volume" => Dose.OnPotTopMl(row.Input("depth_mm"), row.Input("pot_diameter_cm")),
            "flow_conversion" => row.Input("gph_US") * UsMeasures.GallonL,
            "leaching_fraction" => Dose.LeachingFraction(row.Input("drained_mL"), row.Input("applied_mL")),
            _ => throw new InvalidOperationException(row.Quantity),
        };
        Assert.True(Math.Abs(actual - row.Expected) <= row.Tolerance, FormattableString.Invariant($"{row}: {actual:R}; {source}"));
    }

    [Fact]
    public void FluidOunce_Times128_IsAGallon() => Assert.Equal(1000 * UsMeasures.GallonL, 128 * UsMeasures.FluidOunceMl, 9);

    [Fact]
    public void DoseSpread_OfTheLowQuarter_IsTheUniformity()
    {
        double[] cups = [47, 42, 45, 24, 13, 26, 33, 34, 27, 30, 40, 44, 32, 12, 12];
        (double low, double high) = CatchCups.DoseSpread(cups);
        Assert.Equal(CatchCups.LowQuarterUniformityPct(cups) / 100, low, 12);
        Assert.Equal((47 + 45 + 44 + 42) / 4.0 / (cups.Sum() / 15), high, 12); // by hand: the four fullest cups
    }

    [Fact]
    public void Uniformity_CupsInOtherOrderOrUnit_IsTheSame() =>
        Gen.Double[0.1, 100].Array[4, 30].Sample(cups =>
        {
            double[] other = [.. cups.Reverse().Select(c => 3.5 * c)];
            return Math.Abs(CatchCups.ChristiansenPct(cups) - CatchCups.ChristiansenPct(other)) < 1e-9
                && Math.Abs(CatchCups.LowQuarterUniformityPct(cups) - CatchCups.LowQuarterUniformityPct(other)) < 1e-9
                && CatchCups.LowQuarterUniformityPct(cups) <= 100 + 1e-9;
        });

    [Fact]
    public void ImpossibleAmounts_Throw_AndNoWaterIsNotKnown()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CatchCups.ChristiansenPct([1, -1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Dose.EmitterMinutes(100, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Dose.LeachingFraction(400, 300));
        Assert.True(double.IsNaN(CatchCups.LowQuarterUniformityPct([0, 0, 0, 0])));
    }

    private static double[] Amounts(CheckRow row)
        => StatisticsRowTests.Numbers(row.Has("catch_ml") ? row.Inputs.GetProperty("catch_ml") : row.Has("catch") ? row.Inputs.GetProperty("catch") : row.Inputs.GetProperty("q_L_h"));

    /// <summary>By hand from Keller and Karmeli's formula: mean 2, deviation 0.158114, lowest 1.8.</summary>
    [Theory]
    [InlineData(1, 80.9639)] // 100 (1 - 1.27 * 0.0790569) 0.9
    [InlineData(4, 85.4819)] // 100 (1 - 1.27 * 0.0790569 / 2) 0.9
    public void EmissionUniformity_SeveralEmittersAPlant_EvenOut(int emitters, double expected)
        => Assert.Equal(expected, CatchCups.EmissionUniformityPct([2.0, 1.8, 2.2, 1.9, 2.1], emitters), 3);

    [Fact]
    public void EmissionUniformity_FewEmitters_TwoAreEnoughAndOneIsNot()
    {
        Assert.Equal(86.4688, CatchCups.EmissionUniformityPct([1.9, 2.1]), 3);
        Assert.True(double.IsNaN(CatchCups.EmissionUniformityPct([2.0])));
        Assert.Throws<ArgumentOutOfRangeException>(() => CatchCups.EmissionUniformityPct([1.9, 2.1], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => CatchCups.EmissionUniformityPct([1.9, 2.1], 101));
    }
}
