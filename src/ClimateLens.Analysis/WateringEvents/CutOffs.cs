using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Leaf;
using ClimateLens.Science.Wetness;
using NodaTime;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>The watering cut-off of every day of run-in and period.</summary>
/// <remarks>
/// <para><b>Formula:</b> the latest finish between sunrise and sunset after which a full film on the leaves is gone an hour before sunset (<see cref="LatestWetting"/>, with the air,
/// light and cover of that day). Where that is not known, or where the nursery file sets <c>dryingHours</c>: sunset less these.</para>
/// <para><b>Source:</b> that of <see cref="FoliageFilm"/>; the hour to spare is common practice, no source. <b>Error:</b> about an hour; it says when leaves at the mean of the canopy are dry.</para>
/// </remarks>
internal sealed class CutOffs
{
    /// <summary>Time to spare before sunset. Common practice, no source.</summary>
    public static readonly Duration Spare = Duration.FromHours(1);

    /// <summary>None known.</summary>
    public static CutOffs None { get; } = new();

    /// <summary>A day of which the light is not known for a larger share than this is not worked out: leaves dry by the sun. Choice of this project. [1]</summary>
    private const double MostUnknown = 0.1;

    private readonly Dictionary<LocalDate, DayCutOff> _days = [];

    private CutOffs()
    {
    }

    /// <summary>Works the days out.</summary>
    /// <param name="period">The house period.</param>
    /// <param name="foliage">Its leaves, last run for the readings as they are.</param>
    public CutOffs(HousePeriod period, FoliageHours foliage)
    {
        DateTimeZone zone = period.Frame.Axis.Zone;
        bool ruleOnly = period.Input.House.Rules.SetByUser.Contains("dryingHours");
        LocalDate last = period.Frame.Axis.End.InZone(zone).Date;
        for (LocalDate day = period.Frame.Axis.Start.InZone(zone).Date; day <= last; day = day.PlusDays(1))
        {
            if (period.Sun.Of(day).Sunset is Instant sunset)
            {
                DayCutOff? film = ruleOnly || period.Sun.Of(day).Sunrise is not Instant sunrise ? null : ByFilm(period, foliage, sunrise, sunset - Spare);
                _days[day] = film ?? new DayCutOff(sunset - Duration.FromHours(period.Input.House.Rules.DryingHours), ByFilm: false);
            }
        }
    }

    /// <summary>The cut-off of a local day; null in polar day or night.</summary>
    public DayCutOff? Of(LocalDate day) => _days.TryGetValue(day, out DayCutOff cutOff) ? cutOff : null;

    private static DayCutOff? ByFilm(HousePeriod period, FoliageHours foliage, Instant sunrise, Instant dryBy)
    {
        TimeAxis axis = period.Frame.Axis;
        int from = axis.IndexOf(sunrise), to = axis.IndexOf(dryBy);
        if (from < 0 || to > axis.Count || to <= from || UnknownSun(period.Foliage!, from, to) > MostUnknown * (to - from))
        {
            return null;
        }

        LeafClimate day = foliage.Climate.Between(from, to);
        double dry = WetStates.Default.DryBelowMm;
        if (LatestWetting.DryingHours(day, axis.Step.TotalSeconds, foliage.Film, dry) is double.NaN)
        {
            return null;
        }

        int latest = LatestWetting.Of(day, axis.Step.TotalSeconds, foliage.Film, dry);
        return new DayCutOff(latest < 0 ? null : axis.StartOf(from + latest), ByFilm: true);
    }

    private static int UnknownSun(FoliageWeather leaves, int from, int to)
    {
        int unknown = 0;
        for (int i = from; i < to; i++)
        {
            unknown += double.IsNaN(leaves.AbsorbedWm2[i]) ? 1 : 0;
        }

        return unknown;
    }
}
