namespace ClimateLens.Science.Pots;

/// <summary>What a pot's weight says of its water.</summary>
/// <remarks>
/// <para><b>Formula:</b> fraction of container capacity <c>f = (W - W₁)/(W₄ - W₁)</c>, W₁ the pot at level 1 (dry) and W₄ at level 4 (soaked and drained).</para>
/// <para><b>Source:</b> definition; the limits between levels are a choice of this project, since no published table was found.</para>
/// <para><b>Range and error:</b> W₄ above W₁; a plant that grows adds its own weight, so weigh a dry and a soaked pot anew every few weeks.</para>
/// </remarks>
public static class PotWeight
{
    private const double UpToMediumDry = 0.35, UpToMedium = 0.8, UpToWet = 1.05;

    /// <summary>Fraction of container capacity: 0 dry, 1 soaked and drained, above 1 with free water, below 0 lighter than the dry pot. [1]</summary>
    /// <param name="weight">Weight now.</param>
    /// <param name="dry">Weight at level 1, in the same unit.</param>
    /// <param name="soaked">Weight at level 4, above <paramref name="dry"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight is impossible.</exception>
    public static double Fraction(double weight, double dry, double soaked)
    {
        Guard.Within(weight, 0, double.MaxValue, "(weight)");
        Guard.Within(Guard.Finite(dry), 0, double.MaxValue, "(weight)");
        Guard.AboveUpTo(Guard.Finite(soaked), dry, double.MaxValue, "(weight, above the dry one)");
        return (weight - dry) / (soaked - dry);
    }

    /// <summary>The level that goes with a fraction: 1 at and below 0, 2 below 0.35, 3 up to 0.8, 4 up to 1.05, else 5; NaN for NaN.</summary>
    public static double LevelOf(double fraction) => fraction switch
    {
        double.NaN => double.NaN,
        <= 0 => 1,
        < UpToMediumDry => 2,
        <= UpToMedium => 3,
        <= UpToWet => 4,
        _ => 5,
    };

    /// <summary>Water that a pot would still take up to container capacity: 1 g is 1 mL; 0 where it holds more. [mL]</summary>
    /// <param name="weightG">Weight now. [g]</param>
    /// <param name="soakedG">Weight at level 4. [g]</param>
    public static double RoomMl(double weightG, double soakedG)
        => Math.Max(0, Guard.Within(soakedG, 0, 1e6, "g") - Guard.Within(weightG, 0, 1e6, "g"));
}
