using System.Text.Json;
using ClimateLens.Science.Infection;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Tests.CheckRows;
using ClimateLens.Science.Wetness;

namespace ClimateLens.Science.Tests.Wetness;

/// <summary>Second opinions on wet leaves against values worked out by a separate program.</summary>
public class OpinionRowTests
{
    public static TheoryData<int, string> Trees => CheckRow.Theory("leafwet_checks", row => row.Quantity.StartsWith("cart_sld", StringComparison.Ordinal));

    public static TheoryData<int, string> States =>
        CheckRow.Theory("leafwet_checks", row => row.Quantity is "dpd_hysteresis_state" or "extended_rh_state");

    public static TheoryData<int, string> Equivalents =>
        CheckRow.Theory("leafwet_checks", row => row.Quantity == "rh_equivalent_of_dew_point_depression");

    [Theory]
    [MemberData(nameof(Trees))]
    public void Tree_GivenInputs_GivesTheValue(int index, string source)
    {
        CheckRow row = CheckRow.Of("leafwet_checks")[index];
        double t = row.Input("t_C"), humidity = row.Input("rh_pct"), wind = row.Input("wind_m_s");
        double depression = row.Has("dpd_C") ? row.Input("dpd_C") : t - DewPoint.FromRelativeHumidity(new(t), new(humidity), MagnusForm.Wmo8Water).Value;
        double actual = row.Quantity == "cart_sld_wet"
            ? DecisionTree.State(t, humidity, depression, wind)
            : DecisionTree.Calm(t, humidity, depression, wind);
        Assert.True(Math.Abs(actual - row.Expected) <= row.Tolerance, FormattableString.Invariant($"{row}: {actual:R}; {source}"));
    }

    [Theory]
    [MemberData(nameof(States))]
    public void States_OfTheRow_AreTheTabulatedOnes(int index, string source)
    {
        CheckRow row = CheckRow.Of("leafwet_checks")[index];
        double[] expected = row.Json.GetProperty("expected").Deserialize<double[]>()!;
        double[] wet = new double[expected.Length];
        if (row.Quantity == "extended_rh_state")
        {
            ExtendedHumidity.Default.Of(row.Inputs.GetProperty("rh_30min").Deserialize<double[]>(), 1800, wet);
        }
        else
        {
            double[] depression = row.Inputs.GetProperty("dpd_C").Deserialize<double[]>()!;
            double[] air = new double[depression.Length];
            Array.Fill(air, 18);
            new DewPointDepression(row.Input("on"), row.Input("off")).Of(air, [.. depression.Select(d => 18 - d)], wet);
        }

        Assert.True(expected.SequenceEqual(wet), $"{row}: {JsonSerializer.Serialize(wet)}; {source}");
    }

    [Theory]
    [MemberData(nameof(Equivalents))]
    public void Depression_AtTheHumidityOfTheRow_IsTheRows(int index, string source)
    {
        CheckRow row = CheckRow.Of("leafwet_checks")[index];
        double t = row.Input("t_C");
        double actual = RelativeHumidityFrom.DewPoint(new(t), new(t - row.Input("dpd_C")), MagnusForm.Wmo8Water).Percent;
        Assert.True(Math.Abs(actual - row.Expected) <= row.Tolerance, FormattableString.Invariant($"{row}: {actual:R}; {source}"));
    }

    [Fact]
    public void Hours_FromAHumidity_AreCountedAsInTheRow()
    {
        CheckRow row = CheckRow.Of("leafwet_checks").Single(r => r.Quantity == "wet_hours_rh90");
        double[] humidity = row.Inputs.GetProperty("rh_pct").Deserialize<double[]>()!;
        Assert.Equal(row.Expected, GrowerLimits.HoursFrom(humidity, row.Input("threshold"), 3600).Hours);
    }

    [Fact]
    public void RowsOfLeafWetness_AreAllHeldBySomething()
    {
        string[] held =
        [
            "cart_sld_wet", "cart_sld_inequality_1", "dpd_hysteresis_state", "extended_rh_state", "rh_equivalent_of_dew_point_depression",
            "wet_period_merge", "wet_hours_rh90", "external_resistance_stanghellini", "internal_resistance_stanghellini",
            "stomatal_resistance_radiation_factor_only", "leaf_minus_air_day", "leaf_minus_air_night_linearised",
            "leaf_minus_air_night_no_transpiration", "leaf_minus_air_night_with_condensation",
        ];
        Assert.Empty(CheckRow.Of("leafwet_checks").Select(row => row.Quantity).Except(held));
    }
}
