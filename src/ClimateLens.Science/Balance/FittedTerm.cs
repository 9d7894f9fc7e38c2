namespace ClimateLens.Science.Balance;

/// <summary>A parameter as fitted.</summary>
/// <param name="Info">Unit, bounds and source.</param>
/// <param name="Value">Its value, in its unit.</param>
/// <param name="Error">Standard error; NaN where it stands at a bound.</param>
/// <param name="AtLow">Whether it stands at its lower bound: the data want less than physics allows.</param>
/// <param name="AtHigh">Whether it stands at its upper bound.</param>
public sealed record FittedTerm(TermInfo Info, double Value, double Error, bool AtLow, bool AtHigh)
{
    /// <summary>Whether the data told more of it than was believed before: a standard error under half of that of the typical value.</summary>
    public bool IsTold => Error < Info.TypicalError / 2;
}
