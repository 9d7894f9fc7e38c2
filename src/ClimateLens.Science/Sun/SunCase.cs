namespace ClimateLens.Science.Sun;

/// <summary>What the sun does in a day at a place.</summary>
public enum SunCase
{
    /// <summary>It rises and sets (on the first or last such day of a polar season, only one of the two).</summary>
    RisesAndSets,

    /// <summary>It stays up all day.</summary>
    PolarDay,

    /// <summary>It stays down all day.</summary>
    PolarNight,
}
