using ClimateLens.Logs.Describe.Numbers;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Tells totals that run up and start again from amounts of single intervals.</summary>
internal static class Counters
{
    private const int FewestRises = 3;

    /// <summary>Whether a column only rises, but for falls to nearly 0.</summary>
    public static bool Is(ColumnFacts facts)
    {
        int rises = 0;
        int falls = 0;
        int resets = 0;
        int stands = 0;
        double last = double.NaN;
        foreach (double value in facts.Values)
        {
            if (double.IsNaN(value))
            {
                continue;
            }

            if (!double.IsNaN(last))
            {
                rises += value > last ? 1 : 0;
                stands += value == last && value > 0 ? 1 : 0;
                resets += value < last && value <= 0.05 * facts.Max ? 1 : 0;
                falls += value < last && value > 0.05 * facts.Max ? 1 : 0;
            }

            last = value;
        }

        return rises >= FewestRises && falls == 0 && stands + rises > 4 * resets && (stands > rises / 4 || resets == 0);
    }
}
