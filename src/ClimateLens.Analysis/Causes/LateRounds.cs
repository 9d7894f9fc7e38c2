using System.Collections.Immutable;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.WateringEvents;
using NodaTime;

namespace ClimateLens.Analysis.Causes;

/// <summary>
/// The late rounds of watering of a period, and to which of them an hour that an earlier finish would have changed belongs: the last one on whose day the sun had risen, since finished earlier it would have been done in that morning.
/// </summary>
/// <remarks><b>Assumed:</b> a round is to blame for two days at the most; its waterings share its hours evenly. Choices of this project.</remarks>
internal sealed class LateRounds
{
    private static readonly Duration Reach = Duration.FromHours(48);

    private readonly ImmutableArray<ImmutableArray<WateringEvent>> _rounds;
    private readonly Instant[] _from;
    private readonly int[] _roundOf;

    /// <summary>Finds them.</summary>
    /// <param name="period">The house period.</param>
    /// <param name="cutOffs">Its cut-offs.</param>
    /// <param name="hours">Its hours.</param>
    public LateRounds(HousePeriod period, CutOffs cutOffs, HourTable hours)
    {
        _rounds = [.. WateringRound.Of(period.Events.Where(e => OtherWaterings.IsLate(period, cutOffs, e))).GroupBy(r => r.Round).Select(g => g.Select(r => r.Event).ToImmutableArray())];
        _from = [.. _rounds.Select(r => Instant.Min(r[0].Start, period.Sun.Of(r[0].Start.InZone(period.Frame.Axis.Zone).Date).Sunrise ?? r[0].Start))];
        _roundOf = [.. Enumerable.Range(0, hours.Count).Select(h => RoundBefore(hours.StartOf(h) + Duration.FromHours(1)))];
    }

    /// <summary>Number of rounds.</summary>
    public int Count => _rounds.Length;

    /// <summary>Index of the round that an hour belongs to; -1 for none.</summary>
    public int Of(int hour) => _roundOf[hour];

    /// <summary>Waterings of a round.</summary>
    public ImmutableArray<WateringEvent> Waterings(int round) => _rounds[round];

    private int RoundBefore(Instant end)
    {
        for (int r = _rounds.Length - 1; r >= 0; r--)
        {
            if (_from[r] < end)
            {
                return end - _from[r] <= Reach ? r : -1;
            }
        }

        return -1;
    }
}
