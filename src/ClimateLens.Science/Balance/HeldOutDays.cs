namespace ClimateLens.Science.Balance;

/// <summary>Which days a model of a house is not fitted to, so that it can be scored on them: the last of every few.</summary>
/// <param name="First">The first day, by <see cref="BalanceInputs.Day"/>.</param>
/// <param name="Every">Every how manyth day is held out, 2 or more. [d]</param>
public readonly record struct HeldOutDays(int First, int Every)
{
    /// <summary>Every how manyth day is held out when nothing else is asked. A choice of this project. [d]</summary>
    public const int Usual = 4;

    /// <summary>The days held out of some readings.</summary>
    /// <param name="inputs">The readings.</param>
    /// <param name="every">Every how manyth day is held out, 2 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of days is impossible.</exception>
    public static HeldOutDays Of(BalanceInputs inputs, int every = Usual)
    {
        Guard.Within(every, 2, 1000, "(days)");
        return new(inputs.Steps == 0 ? 0 : inputs.Day.Span[0], every);
    }

    /// <summary>Whether a day is held out.</summary>
    public bool Contains(int day) => (day - First) % Every == Every - 1;
}
