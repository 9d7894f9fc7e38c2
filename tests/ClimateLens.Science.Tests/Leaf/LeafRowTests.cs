using ClimateLens.Science.Leaf;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using ClimateLens.Science.Tests.CheckRows;

namespace ClimateLens.Science.Tests.Leaf;

/// <summary>Leaf temperatures and resistances against values worked out by a separate program that solves the same balance.</summary>
public class LeafRowTests
{
    private static readonly SecondPerMetre Closed = new(double.PositiveInfinity);

    public static TheoryData<int, string> Leaves => CheckRow.Theory(
        "leafwet_checks", row => row.Quantity.StartsWith("leaf_minus_air", StringComparison.Ordinal)
            || row.Quantity.EndsWith("stanghellini", StringComparison.Ordinal) || row.Quantity.StartsWith("stomatal", StringComparison.Ordinal));

    public static TheoryData<int, string> Nights => CheckRow.Theory("night_leaf_offset_table");

    public static TheoryData<int, string> Crops => CheckRow.Theory(
        "evaporation_checks", row => row.Quantity is "crop_latent_heat_stanghellini" or "crop_transpiration");

    [Theory]
    [MemberData(nameof(Leaves))]
    public void Leaf_GivenInputs_GivesTheValue(int index, string source) => Check("leafwet_checks", index, source);

    [Theory]
    [MemberData(nameof(Crops))]
    public void Crop_GivenInputs_GivesTheValue(int index, string source) => Check("evaporation_checks", index, source);

    [Theory]
    [MemberData(nameof(Nights))]
    public void NightOffset_GivenCoverAndAirSpeed_IsTheTabulatedOne(int index, string source)
    {
        CheckRow row = CheckRow.Of("night_leaf_offset_table")[index];
        foreach ((double humidity, string column) in new[] { (60.0, "leaf_minus_air_dry_RH60"), (92.0, "leaf_minus_air_RH92") })
        {
            var around = new LeafSurroundings(
                new(row.Number("Ta_C")), new(humidity), 0, new(row.Number("Tcover_C")), new(row.Number("Ta_C")), row.Number("u_m_s"));
            double actual = LeafBalance.Solve(around, LeafTraits.PotPlant, Closed, curve: HylandWexler.Water).Offset.Value;
            Assert.True(Math.Abs(actual - row.Number(column)) <= 0.0051, $"{row} {column}: {actual}; {source}"); // two decimals
        }
    }

    private static void Check(string file, int index, string source)
    {
        CheckRow row = CheckRow.Of(file)[index];
        double actual = Evaluate(row);
        Assert.True(
            Math.Abs(actual - row.Expected) <= row.Tolerance, FormattableString.Invariant($"{row}: {actual:R}; {source}"));
    }

    private static double Evaluate(CheckRow row) => row.Quantity switch
    {
        "leaf_minus_air_night_linearised" => Around(row, out LeafTraits leaf) is var night
            ? LeafBalance.SolveLinear(night, leaf, Closed, curve: HylandWexler.Water).Offset.Value : double.NaN,
        "leaf_minus_air_day" or "leaf_minus_air_night_no_transpiration" or "leaf_minus_air_night_with_condensation" =>
            LeafBalance.Solve(Around(row, out LeafTraits traits), traits, Surface(row), curve: HylandWexler.Water).Offset.Value,
        "external_resistance_stanghellini" => StanghelliniResistance.External(
            new(row.Input("leaf_width_m")), new(row.Input("dT_K")), new(row.Input("u_m_s"))).Value,
        "stomatal_resistance_radiation_factor_only" => StanghelliniResistance.InternalByLight(new(row.Input("I_W_m2_leaf"))).Value,
        "internal_resistance_stanghellini" => StanghelliniResistance.Internal(
            // The rows have the coefficients of the day in the dark too: hardly any light stands for none.
            new(Math.Max(row.Input("I_W_m2_leaf"), 1e-12)), new(row.Input("T_C")), row.Input("CO2_ppm"), new(row.Input("de_Pa") / 1000)).Value,
        "crop_latent_heat_stanghellini" => CropLatentHeat(row),
        "crop_transpiration" => CropTranspiration.MmPerHour(new(row.Input("t_C")), new(CropLatentHeat(row))),
        _ => throw new InvalidOperationException($"No function is known for {row}."),
    };

    private static LeafSurroundings Around(CheckRow row, out LeafTraits traits)
    {
        traits = LeafTraits.PotPlant with { WidthM = row.Input("leaf_width_m"), Emissivity = row.Has("eps") ? row.Input("eps") : 0.95 };
        double light = row.Has("Sabs") ? row.Input("Sabs") : row.Has("Sabs_W_m2") ? row.Input("Sabs_W_m2") : 0;
        double below = row.Has("T_lower_C") ? row.Input("T_lower_C") : row.Input("Ta_C");
        double humidity = row.Has("rh_pct") ? row.Input("rh_pct") : 60;
        return new(new(row.Input("Ta_C")), new(humidity), light, new(row.Input("T_upper_C")), new(below), row.Input("u_m_s"));
    }

    private static SecondPerMetre Surface(CheckRow row) => row.Has("rs_s_m_per_side") ? new(row.Input("rs_s_m_per_side")) : Closed;

    private static double CropLatentHeat(CheckRow row) => CropTranspiration.LatentHeat(
        new(row.Input("t_C")), new(row.Input("D_Pa") / 1000), new(row.Input("Rn_W_m2")), row.Input("LAI"),
        new(row.Input("re")), new(row.Input("ri")), curve: HylandWexler.Water).Value;
}
