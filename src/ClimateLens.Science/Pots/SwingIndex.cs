namespace ClimateLens.Science.Pots;

/// <summary>How much a bench's moisture swings from wet to dry.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>Σ over days of max(0, highest - lowest - 1.2)</c> levels of the day's checks: a fall of 1.2 levels (0.4 of the span from level 1 to 4) is a plain day's drying and
/// counts for nothing. <b>Source:</b> choice of this project; nothing published was found.</para>
/// <para><b>Error:</b> days with one check add nothing, so few checks give a low index; read it beside the number of days with two or more.</para>
/// </remarks>
public static class SwingIndex
{
    /// <summary>A day's fall that counts for nothing. [levels]</summary>
    public const double PlainFall = 1.2;

    /// <summary>A jump worth listing: this many levels between a check and one about a day later. [levels]</summary>
    public const double Jump = 2;

    /// <summary>The index, 0 or above. [levels]</summary>
    /// <param name="days">Highest and lowest level of each day, each 1 to 5. [levels]</param>
    /// <exception cref="ArgumentOutOfRangeException">A level is impossible.</exception>
    public static double Of(IEnumerable<(double Highest, double Lowest)> days)
    {
        ArgumentNullException.ThrowIfNull(days);
        double sum = 0;
        foreach ((double highest, double lowest) in days)
        {
            Guard.Within(highest, MoistureScale.Driest, MoistureScale.Wettest, "(level)");
            Guard.Within(lowest, MoistureScale.Driest, highest, "(level)");
            sum += Math.Max(0, highest - lowest - PlainFall);
        }

        return sum;
    }
}
