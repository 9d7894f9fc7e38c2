using ClimateLens.Science.Pots;
using ClimateLens.Science.Tests.CheckRows;
using ClimateLens.Science.Treatments;

namespace ClimateLens.Science.Tests.Pots;

/// <summary>Rows of rootrot_checks.json: weights, limits of the medium and runs of one group.</summary>
public class PotRowTests
{
    /// <summary>Rows for quantities that the program does not work out: it knows no oven-dry weights and no heat of roots.</summary>
    private static readonly string[] NotHeld =
        ["moisture_ratio_dry_mass", "volumetric_water_content", "phytophthora_predisposition_drought", "phytophthora_predisposition_heat", "pythium_species_switch_temperature"];

    public static TheoryData<int, string> Rows => CheckRow.Theory("rootrot_checks", row => !NotHeld.Contains(row.Quantity));

    [Theory]
    [MemberData(nameof(Rows))]
    public void Row_IsItsValue(int index, string source)
    {
        CheckRow row = CheckRow.Of("rootrot_checks")[index];
        switch (row.Quantity)
        {
            case "gravimetric_fraction":
                Assert.Equal(row.Expected, PotWeight.Fraction(row.Input("W_g"), row.Input("W_level1_g"), row.Input("W_level4_g")), 6);
                break;
            case "pot_water_to_container_capacity":
                Assert.Equal(row.Expected, PotWeight.RoomMl(row.Input("W_g"), row.Input("W_level4_g")), 9);
                break;
            case "max_consecutive_same_frac_group":
                Assert.Equal(row.Expected, GroupRuns.Longest([.. row.Inputs.GetProperty("sequence").EnumerateArray().Select(c => GroupRuns.CodesOf(c.GetString()!))]));
                break;
            case "pythium_ultimum_poinsettia_damage":
                Assert.True(row.Input("medium_C") < RootWeather.CoolC == (row.Json.GetProperty("expected").GetString() == "worst"), source);
                break;
            case "pythium_aphanidermatum_spinach":
                // 25 °C is our line: it flags the 27 °C of the trial and not its 17 °C; 21 °C, severe on spinach, stays below it, as the docstring says.
                Assert.True(row.Input("solution_C") > RootWeather.WarmC == (row.Input("solution_C") == 27), source);
                break;
            case "phytophthora_predisposition_flooding":
                Assert.True(row.Input("flood_h") >= RootWeather.LongSaturationH, source);
                break;
            default:
                Assert.Fail($"{row}: no check");
                break;
        }
    }

    [Theory]
    [InlineData(-0.1, 1)]
    [InlineData(0.34, 2)]
    [InlineData(0.35, 3)]
    [InlineData(0.8, 3)]
    [InlineData(0.81, 4)]
    [InlineData(1.05, 4)]
    [InlineData(1.06, 5)]
    public void LevelOf_Fraction_IsTheStatedLevel(double fraction, double level) => Assert.Equal(level, PotWeight.LevelOf(fraction)); // limits: choice of this project

    [Fact]
    public void Weights_Impossible_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PotWeight.Fraction(900, 1180, 620));
        Assert.Throws<ArgumentOutOfRangeException>(() => MoistureScale.HalfLevelOf(5.5));
    }

    [Fact]
    public void SwingIndex_CountsWhatIsBeyondAPlainDay()
    {
        // By hand: 4 to 2 is 0.8 beyond a plain fall of 1.2; 3.5 to 2.5 is within it; 5 to 1 is 2.8 beyond.
        Assert.Equal(3.6, SwingIndex.Of([(4, 2), (3.5, 2.5), (5, 1)]), 9);
        Assert.Equal(0, SwingIndex.Of([]));
    }

    [Fact]
    public void Scale_HasFiveNamesAndSigns() => Assert.Equal((5, 5), (MoistureScale.Names.Length, MoistureScale.Signs.Length));
}
