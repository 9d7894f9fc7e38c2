using System.Collections.Immutable;

namespace ClimateLens.Science.Pots;

/// <summary>The five levels of moisture of a pot, by look, touch and weight.</summary>
/// <remarks>
/// <b>Source:</b> the five-level scale of [IFASMOIST], seen; signs in our own words. The same words stand on the printed sheet, so that everybody grades by the same signs.
/// <b>Error:</b> two people part by half a level or more on single pots; <see cref="Agreement.WeightedKappa"/> says how much they do here.
/// </remarks>
public static class MoistureScale
{
    /// <summary>Driest level.</summary>
    public const double Driest = 1;

    /// <summary>Level of a pot that holds all the water it can against gravity.</summary>
    public const double Container = 4;

    /// <summary>Wettest level: free water.</summary>
    public const double Wettest = 5;

    /// <summary>Number of half levels from 1 to 5.</summary>
    public const int HalfLevels = 9;

    /// <summary>Names of the levels 1 to 5.</summary>
    public static ImmutableArray<string> Names { get; } = ["dry", "medium dry", "medium", "wet", "saturated"];

    /// <summary>What is seen at levels 1 to 5.</summary>
    public static ImmutableArray<string> Signs { get; } =
    [
        "Tan and very light, shrunken from the wall, crumbles to dust.",
        "Light brown and light to lift; squeezing brings no drop. Many rooted crops are watered here; leaves may begin to hang.",
        "Brown; a hard squeeze brings a few drops; breaks into pieces.",
        "Dark but not shiny; holds all it can; a light press brings water out.",
        "Shiny; water stands on top or drips below.",
    ];

    /// <summary>The half level nearest to a level, counted from 0 for level 1 to 8 for level 5.</summary>
    /// <param name="level">Level, 1 to 5. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is impossible.</exception>
    public static int HalfLevelOf(double level)
        => (int)Math.Round((Guard.Within(Guard.Finite(level), Driest, Wettest, "(level)") - Driest) * 2, MidpointRounding.AwayFromZero);
}
