namespace ClimateLens.Science.Wetness;

/// <summary>Second opinion on wet leaves: by humidity, and between two limits by how fast it changes.</summary>
/// <param name="WetFromPct">Wet at and above. [%]</param>
/// <param name="DryBelowPct">Dry below, 0 to <paramref name="WetFromPct"/>. [%]</param>
/// <param name="RisePct">Between them a rise of more than this in half an hour makes wet, 0 to 100. [points of %]</param>
/// <param name="FallPct">Between them a fall of more than this in half an hour makes dry, 0 to 100. [points of %]</param>
/// <remarks>
/// <para><b>Source:</b> [WICHINK04] as described in [SENTELHAS08]; the numbers from memory. <b>Error:</b> it told too much wetness at all sites of that
/// test (conference version of the abstract); under glass not known.</para>
/// <para><b>What we changed:</b> with steps of other than half an hour the change is taken over the nearest whole number of steps and scaled to half
/// an hour; between the limits and before any change of that size the state is not known.</para>
/// </remarks>
public readonly record struct ExtendedHumidity(double WetFromPct, double DryBelowPct, double RisePct, double FallPct)
{
    private const double HalfHour = 1800;

    /// <summary>Wet from 90 %, dry below 70 %, 3 points up, 2 points down.</summary>
    public static ExtendedHumidity Default { get; } = new(90, 70, 3, 2);

    /// <summary>Wet (1), dry (0) or not known (NaN) for each step.</summary>
    /// <param name="humidityPct">Relative humidity; NaN for not known. [%]</param>
    /// <param name="stepSeconds">Length of a step, above 0 to 7200. [s]</param>
    /// <param name="wet">Receives the state.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number or the step is impossible.</exception>
    /// <remarks>Allocates nothing.</remarks>
    public void Of(ReadOnlySpan<double> humidityPct, double stepSeconds, Span<double> wet)
    {
        Guard.SameLength(humidityPct.Length, wet.Length);
        double step = Guard.AboveUpTo(Guard.Finite(stepSeconds), 0, 7200, "s");
        ExtendedHumidity limits = Checked();
        int lag = Math.Max(1, (int)Math.Round(HalfHour / step));
        double toHalfHour = HalfHour / (lag * step);
        double state = double.NaN;
        for (int i = 0; i < wet.Length; i++)
        {
            double humidity = humidityPct[i];
            double change = i >= lag ? (humidity - humidityPct[i - lag]) * toHalfHour : double.NaN;
            state = double.IsNaN(humidity) ? double.NaN : limits.Next(state, humidity, change);
            wet[i] = state;
        }
    }

    private double Next(double state, double humidity, double change) =>
        humidity >= WetFromPct || (humidity >= DryBelowPct && change > RisePct) ? 1
        : humidity < DryBelowPct || change < -FallPct ? 0
        : state;

    private ExtendedHumidity Checked()
    {
        Guard.Within(Guard.Finite(WetFromPct), 0, 100, "%", nameof(WetFromPct));
        Guard.Within(Guard.Finite(DryBelowPct), 0, WetFromPct, "%", nameof(DryBelowPct));
        Guard.Within(Guard.Finite(RisePct), 0, 100, "%", nameof(RisePct));
        Guard.Within(Guard.Finite(FallPct), 0, 100, "%", nameof(FallPct));
        return this;
    }
}
