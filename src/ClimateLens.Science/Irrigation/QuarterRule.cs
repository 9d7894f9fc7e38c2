namespace ClimateLens.Science.Irrigation;

/// <summary>How many cups the lowest quarter has where their number is no multiple of four. For few cups the rule moves the result by points, so it is always stated.</summary>
public enum QuarterRule
{
    /// <summary>A quarter of the cups rounded to the nearest whole number, halves up, at least one: the rule of [SPREVAL].</summary>
    Rounded,

    /// <summary>Exactly a quarter: the last cup counts by its part.</summary>
    Weighted,

    /// <summary>Rounded down, at least one.</summary>
    Down,
}
