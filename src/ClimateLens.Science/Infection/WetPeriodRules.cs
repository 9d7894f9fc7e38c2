namespace ClimateLens.Science.Infection;

/// <summary>When a wet period ends.</summary>
/// <param name="LongestDryHours">A dry break up to this long does not end the period, 0 to 48. [h]</param>
/// <param name="LeastWetHours">Periods wet for less are left out, 0 to 48. [h]</param>
public readonly record struct WetPeriodRules(double LongestDryHours, double LeastWetHours)
{
    /// <summary>Ends after more than four dry hours [BROOME95] (re-statement); nothing left out.</summary>
    /// <remarks>
    /// That a shorter dry break does not stop grey mould agrees with [EDEN96]: breaks of low humidity did not reduce infection of tomato flowers (abstract).
    /// </remarks>
    public static WetPeriodRules Broome { get; } = new(4, 0);

    /// <summary>Every dry step ends the period.</summary>
    public static WetPeriodRules Strict { get; } = new(0, 0);

    internal WetPeriodRules Checked()
    {
        Guard.Within(Guard.Finite(LongestDryHours), 0, 48, "h", nameof(LongestDryHours));
        Guard.Within(Guard.Finite(LeastWetHours), 0, 48, "h", nameof(LeastWetHours));
        return this;
    }
}
