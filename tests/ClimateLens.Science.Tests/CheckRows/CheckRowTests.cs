namespace ClimateLens.Science.Tests.CheckRows;

/// <summary>Every published moist-air value is worked out with the function it speaks of.</summary>
public class CheckRowTests
{
    public static TheoryData<int, string> MoistAir => CheckRow.Theory("psychro_checks");

    public static TheoryData<int, string> Bulbs => CheckRow.Theory("psychrometer_error_checks");

    [Theory]
    [MemberData(nameof(MoistAir))]
    public void MoistAir_PublishedInputs_GivePublishedValue(int row, string source) => Check("psychro_checks", row, source);

    [Theory]
    [MemberData(nameof(Bulbs))]
    public void BulbsAndSensorErrors_PublishedInputs_GivePublishedValue(int row, string source) =>
        Check("psychrometer_error_checks", row, source);

    [Fact]
    public void RowsOfReferenceForms_AreExactlyThoseNamed()
    {
        // These check the yardsticks of the tests, which the program does not hold: it needs one short form and one reference, and
        // the wet bulb is solved, not fitted.
        Dictionary<string, int> expected = new()
        {
            ["saturation_vapour_pressure Sonntag 1990"] = 14,
            ["saturation_vapour_pressure IAPWS-IF97 eq.30"] = 3,
            ["saturation_vapour_pressure Wagner-Pruss aux."] = 1,
            ["sublimation_pressure IAPWS R14-08 eq.6"] = 1,
            ["wet_bulb_stull Stull 2011"] = 1,
        };
        Dictionary<string, int> found = CheckRow.Of("psychro_checks")
            .Where(row => row.Formula is "Sonntag 1990" or "Stull 2011" || row.Formula.StartsWith("IAPWS", StringComparison.Ordinal)
                || row.Formula.StartsWith("Wagner", StringComparison.Ordinal))
            .GroupBy(row => $"{row.Quantity} {row.Formula}")
            .ToDictionary(group => group.Key, group => group.Count());
        Assert.Equal(expected, found);
    }

    private static void Check(string file, int index, string source)
    {
        CheckRow row = CheckRow.Of(file)[index];
        double actual = MoistAirRows.Evaluate(row);
        Assert.True(
            Math.Abs(actual - row.Expected) <= row.Tolerance,
            FormattableString.Invariant($"{row}: {actual:R}, published {row.Expected} ± {row.Tolerance} {row.Unit}; {source}"));
    }
}
