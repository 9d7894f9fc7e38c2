using ClimateLens.Science.Leaf;

namespace ClimateLens.Science.Wetness;

/// <summary>How late foliage may be filled with water and still be dry by the end of a stretch.</summary>
/// <remarks>
/// <para><b>Formula:</b> the latest step at whose start a full film is gone, by <see cref="FoliageFilm"/>, at some step of the stretch. A film that began to dry earlier is never
/// the thicker one later on, so that halving finds it.</para>
/// <para><b>Source and error:</b> those of <see cref="FoliageFilm"/>; drying times of such models miss by about an hour.</para>
/// </remarks>
public static class LatestWetting
{
    /// <summary>Index of that step; -1 where none is early enough, or where the weather is not known.</summary>
    /// <param name="climate">Weather of the leaf over the stretch; its last step ends at the time by which leaves are to be dry.</param>
    /// <param name="stepSeconds">Length of a step, above 0 to 3600. [s]</param>
    /// <param name="parameters">What the foliage is like.</param>
    /// <param name="dryBelowMm">A film below this counts as dry. [mm]</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A parameter is impossible.</exception>
    public static int Of(in LeafClimate climate, double stepSeconds, in FilmParameters parameters, double dryBelowMm)
    {
        double[] leaf = new double[climate.Length], film = new double[climate.Length];
        int dries = -1, stays = climate.Length;
        while (stays - dries > 1)
        {
            int middle = (dries + stays) / 2;
            if (DriesAfter(climate.From(middle), stepSeconds, parameters, dryBelowMm, leaf, film) is not double hours)
            {
                stays = middle;
            }
            else if (double.IsNaN(hours))
            {
                return -1;
            }
            else
            {
                dries = middle;
            }
        }

        return dries;
    }

    /// <summary>Hours in which a full film dries; null where it does not within the stretch, NaN where the weather is not known for so long that the film is not. [h]</summary>
    /// <param name="climate">Weather of the leaf from the moment at which the film is full.</param>
    /// <param name="stepSeconds">Length of a step, above 0 to 3600. [s]</param>
    /// <param name="parameters">What the foliage is like.</param>
    /// <param name="dryBelowMm">A film below this counts as dry. [mm]</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A parameter is impossible.</exception>
    public static double? DryingHours(in LeafClimate climate, double stepSeconds, in FilmParameters parameters, double dryBelowMm)
        => DriesAfter(climate, stepSeconds, parameters, dryBelowMm, new double[climate.Length], new double[climate.Length]);

    private static double? DriesAfter(in LeafClimate climate, double stepSeconds, in FilmParameters parameters, double dryBelowMm, double[] leafC, double[] filmMm)
    {
        Span<double> film = filmMm.AsSpan(0, climate.Length);
        FoliageFilm.Run(climate, [], stepSeconds, parameters, parameters.CapacityMm, leafC.AsSpan(0, climate.Length), film);
        for (int i = 0, unknown = 0; i < film.Length; i++)
        {
            unknown = double.IsNaN(film[i]) ? unknown + 1 : 0;
            if (unknown > parameters.LongestHold)
            {
                return double.NaN;
            }

            if (film[i] < dryBelowMm)
            {
                return (i + 1) * stepSeconds / 3600;
            }
        }

        return null;
    }
}
