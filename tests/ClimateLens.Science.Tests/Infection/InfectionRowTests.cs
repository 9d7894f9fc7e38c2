using System.Text.Json;
using ClimateLens.Science.Infection;
using ClimateLens.Science.Quantities;
using ClimateLens.Science.Tests.CheckRows;

namespace ClimateLens.Science.Tests.Infection;

/// <summary>Scores of wet periods against values worked out by a separate program, and rules against published words.</summary>
public class InfectionRowTests
{
    public static TheoryData<int, string> Rows =>
        CheckRow.Theory("botrytis_checks", row => row.Quantity != "kerssies_gerbera_warning");

    public static TheoryData<int, string> Gerbera =>
        CheckRow.Theory("botrytis_checks", row => row.Quantity == "kerssies_gerbera_warning");

    public static TheoryData<int, string> Hours => CheckRow.Theory("botrytis_hours_table");

    public static TheoryData<int, string> Merges => CheckRow.Theory("leafwet_checks", row => row.Quantity == "wet_period_merge");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Equation_GivenInputs_GivesTheValue(int index, string source)
    {
        CheckRow row = CheckRow.Of("botrytis_checks")[index];
        double actual = Evaluate(row);
        Assert.True(Math.Abs(actual - row.Expected) <= row.Tolerance, FormattableString.Invariant($"{row}: {actual:R}; {source}"));
    }

    [Theory]
    [MemberData(nameof(Hours))]
    public void HoursTo_TemperaturesOfTheTable_AreTheTabulatedOnes(int index, string source)
    {
        CheckRow row = CheckRow.Of("botrytis_hours_table")[index];
        foreach ((double share, string column) in new[] { (0.2, "broome_h_P20"), (0.5, "broome_h_P50") })
        {
            double hours = Broome.HoursTo(new(row.Number("T_C")), share);
            Assert.True(Math.Abs(hours - row.Number(column)) <= 0.051, $"{row} {column}: {hours}; {source}"); // one decimal
        }
    }

    [Theory]
    [MemberData(nameof(Gerbera))]
    public void GerberaRule_DaysOfTheRow_GiveItsAnswer(int index, string source)
    {
        CheckRow row = CheckRow.Of("botrytis_checks")[index];
        double[] humidity = [.. List(row, "mean_rh_days_minus6_7_8"), 50, 50, 50, 50, 50, 50]; // days 8, 7, 6 before; the others do not count
        double[] radiation = [2000, 2000, 2000, 2000, 2000, .. List(row, "global_radiation_J_cm2_days_minus1_2_3"), 2000];
        double[] great = new double[9];
        GerberaRule.Of(humidity, radiation, great);
        Assert.True(great[8] == row.Expected, $"{row}: {great[8]}; {source}");
    }

    [Theory]
    [MemberData(nameof(Merges))]
    public void Periods_OfTheRow_MergeAsPublished(int index, string source)
    {
        CheckRow row = CheckRow.Of("leafwet_checks")[index];
        double[] wet = List(row, "wet");
        var periods = new WetPeriod[wet.Length];
        int count = WetPeriods.Find(wet, new double[wet.Length], 3600, new(row.Input("max_dry_gap_h"), 0), periods);
        double[][] found = [.. periods[..count].Select(p => new[] { p.Start, p.End, p.WetHours })];
        double[][] expected = row.Json.GetProperty("expected").Deserialize<double[][]>()!;
        Assert.True(expected.SelectMany(p => p).SequenceEqual(found.SelectMany(p => p)), $"{row}: {JsonSerializer.Serialize(found)}; {source}");
    }

    private static double Evaluate(CheckRow row) => row.Quantity switch
    {
        "broome_infection_probability" => Broome.Of(Temperature(row), row.Input("W_h")).BerryShare,
        "broome_logit_index" => Broome.Of(Temperature(row), row.Input("W_h")).Index,
        "broome_hours_to_P50" => Broome.HoursTo(Temperature(row), 0.5),
        "broome_optimum_temperature" => Broome.Optimum.Value,
        "magarey_temperature_response" => Pathogen(row).Response(Temperature(row)),
        "magarey_required_wetness" => Pathogen(row).RequiredHours(Temperature(row)),
        "magarey_wmax_default" => MagareyPathogen.UsualMostHours(row.Input("Wmin_h")),
        _ => throw new InvalidOperationException($"No function is known for {row}."),
    };

    private static Celsius Temperature(CheckRow row) => new(row.Input("T_C"));

    private static MagareyPathogen Pathogen(CheckRow row)
    {
        double least = row.Has("Wmin_h") ? row.Input("Wmin_h") : 6, most = row.Has("Wmax_h") ? row.Input("Wmax_h") : 21.8;
        return new(row.Input("Tmin"), row.Input("Topt"), row.Input("Tmax"), least, most);
    }

    private static double[] List(CheckRow row, string input) => row.Inputs.GetProperty(input).Deserialize<double[]>()!;
}
