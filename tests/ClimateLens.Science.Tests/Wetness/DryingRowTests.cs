using ClimateLens.Science.Leaf;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using ClimateLens.Science.Tests.CheckRows;
using ClimateLens.Science.Wetness;

namespace ClimateLens.Science.Tests.Wetness;

/// <summary>Drying of a wet leaf against values worked out by a separate program.</summary>
public class DryingRowTests
{
    public static TheoryData<int, string> Rows => CheckRow.Theory(
        "evaporation_checks", row => row.Quantity is "drying_time_two_sided" or "wet_leaf_latent_heat_flux");

    public static TheoryData<int, string> Table => CheckRow.Theory("drying_time_table");

    [Theory]
    [MemberData(nameof(Rows))]
    public void WetLeaf_GivenInputs_GivesTheValue(int index, string source)
    {
        CheckRow row = CheckRow.Of("evaporation_checks")[index];
        Celsius air = new(row.Input("t_C"));
        var flux = Flux(air, row.Input("rh_pct"), row.Input("u_m_s"), row.Input("Rn_W_m2_leaf"), row.Input("leaf_width_m"));
        double actual = row.Quantity == "wet_leaf_latent_heat_flux"
            ? flux.Value
            : FilmDrying.Hours(2 * row.Input("film_mm_per_side"), air, flux);
        Assert.True(Math.Abs(actual - row.Expected) <= row.Tolerance, FormattableString.Invariant($"{row}: {actual:R}; {source}"));
    }

    [Theory]
    [MemberData(nameof(Table))]
    public void DryingTime_OfTheTable_IsMet(int index, string source)
    {
        CheckRow row = CheckRow.Of("drying_time_table")[index];
        foreach (double speed in new[] { 0.05, 0.1, 0.3, 0.5 })
        {
            foreach (double net in new[] { 0.0, 50, 150 })
            {
                double published = row.Number(FormattableString.Invariant($"u{speed}_Rn{net}"));
                double hours = FilmDrying.Hours(0.2, new(18), Flux(new(18), row.Number("rh_pct"), speed, net, 0.06));
                Assert.True(Math.Abs(hours - published) <= 0.0051, $"{row}, {speed} m/s, {net} W/m²: {hours}; {source}"); // two decimals
            }
        }
    }

    private static WattPerSquareMetre Flux(Celsius air, double humidity, double speed, double net, double width)
    {
        SecondPerMetre external = StanghelliniResistance.External(new(width), new(1), new(speed)); // as the table's note says
        return FilmDrying.LatentHeat(air, new(humidity), external, new(net), curve: HylandWexler.Water);
    }
}
