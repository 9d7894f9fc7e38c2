using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Infection;

/// <summary>A pathogen by the five numbers of a general model of infection by leaf wetness and temperature.</summary>
/// <param name="LowestC">No infection at and below, -10 to 40. [°C]</param>
/// <param name="BestC">Fewest wet hours needed, above <paramref name="LowestC"/>. [°C]</param>
/// <param name="HighestC">No infection at and above; above <paramref name="BestC"/> to 50. [°C]</param>
/// <param name="LeastHours">Wet hours needed at the best temperature, above 0 to 100. [h]</param>
/// <param name="MostHours">Wet hours that suffice at any temperature between the limits; not below <paramref name="LeastHours"/>, to 400. [h]</param>
/// <remarks>
/// <para><b>Formula:</b> <c>f = (Tmax - T)/(Tmax - Topt)·((T - Tmin)/(Topt - Tmin))^((Topt - Tmin)/(Tmax - Topt))</c>, 0 outside; hours needed
/// <c>min(Wmax, Wmin/f)</c>. Wmin is the wetness that gave 20 % incidence or 5 % severity.</para>
/// <para><b>Source:</b> [MAGAREY05], seen in its abstract and in public re-statements. Its parameters for grey mould were not seen, so none are
/// given here: the nursery file gives them, with their source. <b>Error:</b> 4.9 h root mean square over 53 studies (re-statement).</para>
/// </remarks>
public readonly record struct MagareyPathogen(double LowestC, double BestC, double HighestC, double LeastHours, double MostHours)
{
    /// <summary>Longest wetness needed where only the shortest is known. [h]</summary>
    /// <param name="leastHours">Wet hours needed at the best temperature, above 0 to 100. [h]</param>
    /// <exception cref="ArgumentOutOfRangeException">The hours are impossible.</exception>
    /// <remarks><b>Formula:</b> <c>3.8 + 3.0 Wmin</c>, over 64 studies r 0.71, error 6.0 h root mean square [MAGAREY05] (re-statement).</remarks>
    public static double UsualMostHours(double leastHours) => 3.8 + (3.0 * Guard.AboveUpTo(leastHours, 0, 100, "h"));

    /// <summary>Response to temperature: 1 at the best, 0 at the limits and outside them. [1]</summary>
    /// <param name="temperature">Mean temperature of the wet hours, -50 to 60. [°C]</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature or a number of the pathogen is impossible.</exception>
    public double Response(Celsius temperature)
    {
        double t = Guard.Within(temperature.Value, -50, 60, "°C", nameof(temperature));
        MagareyPathogen p = Checked();
        if (t <= p.LowestC || t >= p.HighestC)
        {
            return 0;
        }

        double shape = (p.BestC - p.LowestC) / (p.HighestC - p.BestC);
        return (p.HighestC - t) / (p.HighestC - p.BestC) * Math.Pow((t - p.LowestC) / (p.BestC - p.LowestC), shape);
    }

    /// <summary>Wet hours needed; infinite where the temperature allows none. [h]</summary>
    /// <param name="temperature">Mean temperature of the wet hours, -50 to 60. [°C]</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature or a number of the pathogen is impossible.</exception>
    public double RequiredHours(Celsius temperature)
    {
        double response = Response(temperature);
        return response == 0 ? double.PositiveInfinity : Math.Min(MostHours, LeastHours / response); // NaN stays NaN
    }

    /// <summary>Scores a wet period; NaN and not met where its temperature is not known.</summary>
    /// <param name="period">The period, found with the dry break that the pathogen outlives (<see cref="WetPeriodRules.LongestDryHours"/>).</param>
    /// <exception cref="ArgumentOutOfRangeException">A number of the pathogen is impossible.</exception>
    public MagareyScore Of(in WetPeriod period)
    {
        double required = RequiredHours(new(period.MeanTemperatureC));
        return new(required, period.WetHours / required, period.WetHours >= required);
    }

    private MagareyPathogen Checked()
    {
        Guard.Within(Guard.Finite(LowestC), -10, 40, "°C", nameof(LowestC));
        Guard.AboveUpTo(Guard.Finite(BestC), LowestC, 45, "°C", nameof(BestC));
        Guard.AboveUpTo(Guard.Finite(HighestC), BestC, 50, "°C", nameof(HighestC));
        Guard.AboveUpTo(Guard.Finite(LeastHours), 0, 100, "h", nameof(LeastHours));
        Guard.Within(Guard.Finite(MostHours), LeastHours, 400, "h", nameof(MostHours));
        return this;
    }
}
