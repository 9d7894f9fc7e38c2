using ClimateLens.Logs.Describe.Numbers;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>
/// The unit of an air pressure by its size: no two units share a range, since the air's pressure stays between 85 and 108 kPa at places
/// where crops are grown. Common practice, no source.
/// </summary>
internal static class PressureUnits
{
    private static readonly (string Code, double KPa)[] Units = [("kPa", 1), ("hPa", 0.1), ("Pa", 0.001), ("bar", 100), ("[in_i'Hg]", 3.386389), ("mm[Hg]", 0.133322), ("[psi]", 6.894757)];

    /// <summary>The unit, or null when the values are no air pressure.</summary>
    public static string? Of(ColumnFacts facts)
    {
        foreach ((string code, double kPa) in Units)
        {
            if (facts.Count > 0 && facts.At(0.1) * kPa > 70 && facts.At(0.9) * kPa < 110 && facts.Median * kPa is > 70 and < 110)
            {
                return code;
            }
        }

        return null;
    }
}
