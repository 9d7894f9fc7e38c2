namespace ClimateLens.Science.Wetness;

/// <summary>Second opinion on wet leaves: by how far the air is above its dew point, with hysteresis.</summary>
/// <param name="WetUpToK">A dry leaf becomes wet at and below, 0 to 20. [K]</param>
/// <param name="DryFromK">A wet leaf becomes dry at and above; not below <paramref name="WetUpToK"/>, to 20. [K]</param>
/// <remarks>
/// <b>Source:</b> [GILLESPIE93], [SENTELHAS08]; 2.0 and 3.8 K from memory (88 % and 78 % at 18 °C). <b>Error:</b> under glass not known; it takes every
/// leaf to be 2 K colder than the air at the start of the night, which under a screen it is not.
/// </remarks>
public readonly record struct DewPointDepression(double WetUpToK, double DryFromK)
{
    /// <summary>Wet from 2.0 K down, dry from 3.8 K up.</summary>
    public static DewPointDepression Default { get; } = new(2.0, 3.8);

    /// <summary>Wet (1), dry (0) or not known (NaN) for each step.</summary>
    /// <param name="airC">Air temperature; NaN for not known. [°C]</param>
    /// <param name="dewPointC">Dew point; NaN for not known. [°C]</param>
    /// <param name="wet">Receives the state; between the limits it stays as it was, and is not known at the start and after a gap.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A limit is impossible.</exception>
    /// <remarks>Allocates nothing.</remarks>
    public void Of(ReadOnlySpan<double> airC, ReadOnlySpan<double> dewPointC, Span<double> wet)
    {
        Guard.SameLength(airC.Length, dewPointC.Length);
        Guard.SameLength(airC.Length, wet.Length);
        double on = Guard.Within(Guard.Finite(WetUpToK), 0, 20, "K", nameof(WetUpToK));
        double off = Guard.Within(Guard.Finite(DryFromK), on, 20, "K", nameof(DryFromK));
        double state = double.NaN;
        for (int i = 0; i < wet.Length; i++)
        {
            double depression = airC[i] - dewPointC[i];
            state = double.IsNaN(depression) ? double.NaN : depression <= on ? 1 : depression >= off ? 0 : state;
            wet[i] = state;
        }
    }
}
