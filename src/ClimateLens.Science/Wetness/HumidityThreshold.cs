namespace ClimateLens.Science.Wetness;

/// <summary>Second opinion on wet leaves: wet from a humidity on.</summary>
/// <param name="WetFromPct">Wet at and above, 0 to 100. [%]</param>
/// <remarks>
/// <para><b>Source:</b> [SENTELHAS08]: 90 %, fraction of hours right 0.87 to 0.92 at four open sites (conference version of the abstract); places fitted
/// their own between 83 and 92 % (from memory). <b>Error:</b> 1.3 to 1.9 h a day after fitting (from memory); under glass not known. It knows
/// nothing of water from above nor of the leaf's own temperature.</para>
/// </remarks>
public readonly record struct HumidityThreshold(double WetFromPct)
{
    /// <summary>Wet from 90 %.</summary>
    public static HumidityThreshold Default { get; } = new(90);

    /// <summary>Wet (1), dry (0) or not known (NaN) for each step.</summary>
    /// <param name="humidityPct">Relative humidity; NaN for not known. [%]</param>
    /// <param name="wet">Receives the state.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The threshold is impossible.</exception>
    /// <remarks>Allocates nothing.</remarks>
    public void Of(ReadOnlySpan<double> humidityPct, Span<double> wet)
    {
        Guard.SameLength(humidityPct.Length, wet.Length);
        double from = Guard.Within(Guard.Finite(WetFromPct), 0, 100, "%", nameof(WetFromPct));
        for (int i = 0; i < wet.Length; i++)
        {
            double humidity = humidityPct[i];
            wet[i] = double.IsNaN(humidity) ? double.NaN : humidity >= from ? 1 : 0;
        }
    }
}
