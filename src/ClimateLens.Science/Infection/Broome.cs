using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Infection;

/// <summary>Index of weather that favours grey mould, out of the length and temperature of a wet period: a grape model that stands in for ornamentals.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>ln(Y/(1 - Y)) = -2.647866 - 0.374927 W + 0.061601 W T - 0.001511 W T²</c>, Y the share of berries infected, W wet hours, T °C.</para>
/// <para><b>Source:</b> [BROOME95], coefficients, trials of 12 to 30 °C and 4 to 20 h, and R² 0.75 as quoted in several public
/// codes; the paper was not read. No equation for a bract, a flower or a leaf of an ornamental was found.</para>
/// <para><b>Error:</b> a quarter of the variance in the trials is unexplained, on grape; on another crop the index ranks periods and no more.</para>
/// </remarks>
public static class Broome
{
    /// <summary>Shortest wet period that the trials had; shorter ones score nothing. [h]</summary>
    public const double LeastHours = 4;

    /// <summary>Longest wet period that the trials had; longer ones score as this. [h]</summary>
    public const double MostHours = 20;

    /// <summary>Lowest temperature of the trials; colder periods score as this. [°C]</summary>
    public const double LowestC = 12;

    /// <summary>Highest temperature of the trials. [°C]</summary>
    public const double HighestC = 30;

    private const double HighestUsedC = 32; // limit of the transcriptions: past the trials the equation still falls, which holding at 30 would hide
    private const double NothingAboveC = 40;
    private const double Constant = -2.647866;
    private const double PerHour = -0.374927, PerHourC = 0.061601, PerHourC2 = -0.001511;

    /// <summary>Temperature at which a given wet period scores highest, 20.4. [°C]</summary>
    public static Celsius Optimum => new(PerHourC / (-2 * PerHourC2));

    /// <summary>The equation as printed, without limits: the logit of the share infected. [1]</summary>
    /// <param name="temperature">Mean temperature of the wet hours, -50 to 60. [°C]</param>
    /// <param name="wetHours">Wet hours, 0 to 1000. [h]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks><b>Check value:</b> 20 °C and 12 h give 0.38445, a share of 0.595 (computed by a separate program).</remarks>
    public static double Logit(Celsius temperature, double wetHours) =>
        Constant + (HourlyGain(Possible(temperature)) * Guard.Within(wetHours, 0, 1000, "h"));

    /// <summary>Share that belongs to a logit. [1]</summary>
    /// <param name="logit">The logit.</param>
    public static double Share(double logit) => 1 / (1 + Math.Exp(-logit));

    /// <summary>Wet hours after which the equation, without limits, gives a share; infinite where it never does. [h]</summary>
    /// <param name="temperature">Mean temperature of the wet hours, -50 to 60. [°C]</param>
    /// <param name="share">Share infected, 0.07 to 0.99. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks><b>Check value:</b> 0.5 at 20 °C: 10.479 h.</remarks>
    public static double HoursTo(Celsius temperature, double share)
    {
        double wanted = Guard.Within(share, 0.07, 0.99, "(share)");
        double gain = HourlyGain(Possible(temperature));
        return gain <= 0 ? double.PositiveInfinity : (Math.Log(wanted / (1 - wanted)) - Constant) / gain;
    }

    /// <summary>Score of a wet period, with the limits.</summary>
    /// <param name="period">The period; its dry breaks are not counted as wet.</param>
    public static BroomeScore Of(in WetPeriod period) => Of(new Celsius(period.MeanTemperatureC), period.WetHours);

    /// <summary>Score of a wet period, with the limits.</summary>
    /// <param name="temperature">Mean temperature of the wet hours, -50 to 60. [°C]</param>
    /// <param name="wetHours">Wet hours, 0 or more. [h]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>
    /// <para><b>Limits</b> as in public codes that quote the paper: fewer than 4 h score nothing (at 0 h the equation would still give 0.066);
    /// more than 20 h score as 20; colder than 12 °C scores as 12, which overstates; hotter than 32 °C scores as 32, above 40 °C nothing.</para>
    /// <para><b>Grades</b> by the index: up to 0 none, to 0.5 low, to 1 moderate, from 1 high (0.5 is a share of 0.62, 1 of 0.73). The codes
    /// disagree whether the bands are of the index or of the share; only with the index can every band be reached. Choice of this project.</para>
    /// </remarks>
    public static BroomeScore Of(Celsius temperature, double wetHours)
    {
        double t = Possible(temperature);
        double hours = Guard.Within(wetHours, 0, double.MaxValue, "h");
        if (double.IsNaN(hours) || (double.IsNaN(t) && hours >= LeastHours))
        {
            return BroomeScore.Unknown;
        }

        if (hours < LeastHours || t > NothingAboveC)
        {
            return new(double.NegativeInfinity, 0, Grade.None, t, hours, t > NothingAboveC);
        }

        double usedC = Math.Clamp(t, LowestC, HighestUsedC);
        double usedHours = Math.Min(hours, MostHours);
        double index = Logit(new(usedC), usedHours);
        bool outside = t is < LowestC or > HighestC || hours > MostHours;
        return new(index, Share(index), GradeOf(index), usedC, usedHours, outside);
    }

    private static Grade GradeOf(double index) => index switch
    {
        double.NaN => Grade.NotKnown,
        <= 0 => Grade.None,
        < 0.5 => Grade.Low,
        < 1 => Grade.Moderate,
        _ => Grade.High,
    };

    private static double HourlyGain(double temperatureC) =>
        PerHour + (temperatureC * (PerHourC + (PerHourC2 * temperatureC)));

    private static double Possible(Celsius temperature) => Guard.Within(temperature.Value, -50, 60, "°C", nameof(temperature));
}
