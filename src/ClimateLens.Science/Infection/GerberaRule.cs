namespace ClimateLens.Science.Infection;

/// <summary>Days on which cut gerbera carried a great risk of grey mould spots after harvest, by the weather before.</summary>
/// <remarks>
/// <para><b>Rule:</b> mean humidity in the house above 70 % on each of the days 6, 7 and 8 before harvest, and global radiation outside below
/// 1500 J/cm² on each of the days 1, 2 and 3 before it.</para>
/// <para><b>Source:</b> [KERSSIES94], summary of the thesis. <b>Range:</b> gerbera in one country's greenhouses; for another crop it is an opinion without
/// evidence. <b>Error:</b> hit and false-alarm rates were not seen; humidity, radiation and the age of the crop explained 77 to 81 % of the
/// variance of spots (abstract).</para>
/// </remarks>
public static class GerberaRule
{
    /// <summary>Mean humidity of a day must be above. [%]</summary>
    public const double HumidityAbovePct = 70;

    /// <summary>Global radiation of a day must be below. [J/cm²]</summary>
    public const double RadiationBelowJcm2 = 1500;

    /// <summary>Days before a harvest that the rule looks back.</summary>
    public const int DaysBack = 8;

    /// <summary>Great risk for flowers cut on each day: 1 for yes, 0 for no, NaN for not known.</summary>
    /// <param name="humidityPct">Mean humidity in the house of each day; NaN for not known. [%]</param>
    /// <param name="radiationJcm2">Global radiation outside of each day; NaN for not known. [J/cm²]</param>
    /// <param name="great">Receives the answer for each day.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <remarks>One day that fails makes the answer no, whatever is not known. Allocates nothing.</remarks>
    public static void Of(ReadOnlySpan<double> humidityPct, ReadOnlySpan<double> radiationJcm2, Span<double> great)
    {
        Guard.SameLength(humidityPct.Length, radiationJcm2.Length);
        Guard.SameLength(humidityPct.Length, great.Length);
        for (int day = 0; day < great.Length; day++)
        {
            double all = 1;
            for (int back = 1; back <= 3; back++)
            {
                all = ThreeValued.And(all, ThreeValued.Below(Before(radiationJcm2, day, back), RadiationBelowJcm2));
                all = ThreeValued.And(all, ThreeValued.Above(Before(humidityPct, day, back + 5), HumidityAbovePct));
            }

            great[day] = all;
        }
    }

    private static double Before(ReadOnlySpan<double> days, int day, int back) => day >= back ? days[day - back] : double.NaN;
}
