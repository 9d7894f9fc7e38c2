using ClimateLens.Science.Canopy;
using ClimateLens.Science.Tests.CheckRows;

namespace ClimateLens.Science.Tests.Canopy;

/// <summary>Cover, growth and light against values worked out by a separate program, and published dates.</summary>
public class CanopyRowTests
{
    public static TheoryData<int, string> All => CheckRow.Theory("canopy_checks", row => row.Quantity != "poinsettia_pinch_to_finish");

    public static TheoryData<int, string> SaleDates =>
        CheckRow.Theory("canopy_checks", row => row.Quantity == "poinsettia_pinch_to_finish");

    [Theory]
    [MemberData(nameof(All))]
    public void Canopy_GivenInputs_GiveTheValue(int index, string source)
    {
        CheckRow row = CheckRow.Of("canopy_checks")[index];
        double actual = Evaluate(row);
        Assert.True(
            Math.Abs(actual - row.Expected) <= row.Tolerance, FormattableString.Invariant($"{row}: {actual:R}; {source}"));
    }

    /// <summary>A published schedule gives no width, but a canopy that closed only after the sale would make the prior absurd.</summary>
    [Theory]
    [MemberData(nameof(SaleDates))]
    public void PoinsettiaPrior_At30Cm_ClosesBeforeThePublishedSale(int index, string source)
    {
        CheckRow row = CheckRow.Of("canopy_checks")[index];
        GrowthFit prior = GrowthFit.Of(GrowthPrior.Poinsettia, []);
        double closing = prior.Growth.DayOf(GroundCover.DiameterCm(PlantSpacing.Square(30), GroundCover.Closed));
        Assert.True(closing > 0 && closing < row.Expected, $"{row}: {closing}; {source}");
    }

    private static double Evaluate(CheckRow row) => row.Quantity switch
    {
        "ground_cover_square" => GroundCover.Of(PlantSpacing.Square(row.Input("spacing_cm")), row.Input("diameter_cm")),
        "ground_cover_triangular" => GroundCover.Of(PlantSpacing.Triangular(row.Input("spacing_cm")), row.Input("diameter_cm")),
        "ground_cover_rectangular" =>
            GroundCover.Of(PlantSpacing.Rectangular(row.Input("a_cm"), row.Input("b_cm")), row.Input("diameter_cm")),
        "ground_cover_random" => GroundCover.Of(PlantSpacing.Random(row.Input("plants_per_m2")), row.Input("diameter_cm")),
        "full_cover_diameter_ratio_square" => GroundCover.FullCoverDiameterCm(PlantSpacing.Square(40)) / 40,
        "full_cover_diameter_ratio_triangular" => GroundCover.FullCoverDiameterCm(PlantSpacing.Triangular(40)) / 40,
        "cover_at_touching_square" => GroundCover.Of(PlantSpacing.Square(40), 40 * row.Input("d_over_s")),
        "cover_at_touching_triangular" => GroundCover.Of(PlantSpacing.Triangular(40), 40 * row.Input("d_over_s")),
        "logistic_time_to_diameter" => new DiameterGrowth(row.Input("Dmax_cm"), row.Input("k_per_d"), row.Input("t50_d"))
            .DayOf(row.Input("d_required_cm")),
        "light_interception" => LightInterception.Share(row.Input("k"), row.Input("LAI")),
        _ => throw new InvalidOperationException($"No function is known for {row}."),
    };
}
