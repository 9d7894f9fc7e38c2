namespace ClimateLens.Science.Infection;

/// <summary>Weather that favours powdery mildew: damp nights and dry days within a range of temperature.</summary>
/// <param name="NightFromPct">Mean humidity of the night at or above, 0 to 100. [%]</param>
/// <param name="DayFromPct">Mean humidity of the day at or above, 0 to 100. [%]</param>
/// <param name="DayUpToPct">Mean humidity of the day at or below. [%]</param>
/// <param name="LowestC">Mean temperature at or above. [°C]</param>
/// <param name="HighestC">Mean temperature at or below. [°C]</param>
/// <param name="DayBelowC">Highest temperature of the day below; infinite for no limit. [°C]</param>
/// <remarks>
/// That means over night and day stand for the ranges the sources name is a choice of this project. <b>Error:</b> not known: no study was found that
/// counts the hits and false alarms of such limits on a pot plant. Powdery mildew needs no wet leaf, so wet periods say nothing of it.
/// </remarks>
public readonly record struct PowderyMildewLimits(
    double NightFromPct, double DayFromPct, double DayUpToPct, double LowestC, double HighestC, double DayBelowC)
{
    /// <summary>Rose: nights of 90 % and more, days of 40 to 70 % [HORST83] (re-statement); 10 to 28 °C, the range in which its hidden period was
    /// measured as 4 to 10 days, shortest near 22 °C [XU99] (abstract).</summary>
    public static PowderyMildewLimits Rose { get; } = new(90, 40, 70, 10, 28, double.PositiveInfinity);

    /// <summary>Poinsettia: the rose's limits as a stand-in, and days that stay below 30 °C [NYSIPM].</summary>
    public static PowderyMildewLimits Poinsettia { get; } = Rose with { DayBelowC = 30 };

    /// <summary>Whether each night with its day favoured powdery mildew: 1 for yes, 0 for no, NaN for not known.</summary>
    /// <param name="days">Nights with their days.</param>
    /// <param name="favourable">Receives the answers.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A limit is impossible.</exception>
    public void Of(ReadOnlySpan<PowderyMildewDay> days, Span<double> favourable)
    {
        Guard.SameLength(days.Length, favourable.Length);
        PowderyMildewLimits limits = Checked();
        for (int i = 0; i < days.Length; i++)
        {
            PowderyMildewDay day = days[i];
            double all = ThreeValued.Within(day.NightHumidityPct, limits.NightFromPct, double.PositiveInfinity);
            all = ThreeValued.And(all, ThreeValued.Within(day.DayHumidityPct, limits.DayFromPct, limits.DayUpToPct));
            all = ThreeValued.And(all, ThreeValued.Within(day.MeanTemperatureC, limits.LowestC, limits.HighestC));
            favourable[i] = double.IsPositiveInfinity(limits.DayBelowC)
                ? all
                : ThreeValued.And(all, ThreeValued.Below(day.HighestTemperatureC, limits.DayBelowC));
        }
    }

    private PowderyMildewLimits Checked()
    {
        Guard.Within(Guard.Finite(NightFromPct), 0, 100, "%", nameof(NightFromPct));
        Guard.Within(Guard.Finite(DayFromPct), 0, 100, "%", nameof(DayFromPct));
        Guard.Within(Guard.Finite(DayUpToPct), DayFromPct, 100, "%", nameof(DayUpToPct));
        Guard.Within(Guard.Finite(LowestC), -10, 50, "°C", nameof(LowestC));
        Guard.Within(Guard.Finite(HighestC), LowestC, 50, "°C", nameof(HighestC));
        if (double.IsNaN(DayBelowC))
        {
            Guard.Finite(DayBelowC);
        }

        return this;
    }
}
