namespace ClimateLens.Nursery.Time;

/// <summary>What a time stamp labels.</summary>
public enum StampSide
{
    /// <summary>The moment of an instantaneous reading.</summary>
    Instant,

    /// <summary>The start of the interval that the value describes.</summary>
    IntervalStart,

    /// <summary>The end of the interval that the value describes.</summary>
    IntervalEnd,
}
