namespace ClimateLens.Science.Wetness;

/// <summary>Wet or dry from a film, with hysteresis so that noise does not toggle it.</summary>
/// <param name="WetFromMm">A dry leaf counts as wet from this film on. [mm]</param>
/// <param name="DryBelowMm">A wet leaf counts as dry below this film; at most <paramref name="WetFromMm"/>. [mm]</param>
/// <remarks>Both limits are a choice of this project; 0.01 mm is dew of about 40 minutes at 10 W/m² of latent heat.</remarks>
public readonly record struct WetStates(double WetFromMm, double DryBelowMm)
{
    /// <summary>Wet from 0.01 mm, dry below 0.003 mm.</summary>
    public static WetStates Default { get; } = new(0.01, 0.003);

    /// <summary>Wet (1), dry (0) or not known (NaN) for each step.</summary>
    /// <param name="filmMm">Film; NaN for not known. [mm]</param>
    /// <param name="wet">Receives the state.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The limits are impossible.</exception>
    /// <remarks>A film between the limits keeps the state before it; at the start and after a gap it is not known.</remarks>
    public void Of(ReadOnlySpan<double> filmMm, Span<double> wet)
    {
        Guard.SameLength(filmMm.Length, wet.Length);
        Guard.Within(Guard.Finite(WetFromMm), 0, 2, "mm", nameof(WetFromMm));
        Guard.Within(Guard.Finite(DryBelowMm), 0, WetFromMm, "mm", nameof(DryBelowMm));
        double state = double.NaN;
        for (int i = 0; i < filmMm.Length; i++)
        {
            double film = filmMm[i];
            state = double.IsNaN(film) ? double.NaN : film >= WetFromMm ? 1 : film < DryBelowMm ? 0 : state;
            wet[i] = state;
        }
    }
}
