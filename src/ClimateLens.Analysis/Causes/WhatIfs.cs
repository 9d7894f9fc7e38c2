using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Causes;

/// <summary>What-ifs and shares from replayed weeks.</summary>
/// <remarks>
/// <para><b>Formula:</b> hours avoided by a set of changes: risk hours as it was less those under it, both by the same draws. The share of a cause is the Shapley value (<see cref="ShapleyValues"/>) of its change
/// in the game of hours avoided; weather has what no change avoids. The replay has fewer draws than the total of the page and may differ from it by an hour or so, so that both are scaled to
/// the total; shares add up to it to 1e-9.</para>
/// </remarks>
internal static class WhatIfs
{
    /// <summary>Each change by itself, then all of them at once; changes that cannot be told are left out.</summary>
    public static ImmutableArray<WhatIf> Of(ReplayedWeeks weeks, Estimate total)
        => [.. ChangeNames.Each.Where(c => weeks.Known.HasFlag(c)).Append(weeks.Known).Select(set => Of(weeks, set, total))];

    /// <summary>The shares: causes whose change can be told, then weather with the rest.</summary>
    public static ImmutableArray<Cause> Shares(ReplayedWeeks weeks, Estimate total)
    {
        Change[] players = [.. ChangeNames.Each.Where(c => weeks.Known.HasFlag(c))];
        double[] shares = Game(players, set => weeks.Values[set]);
        double scale = Scale(weeks, total);
        double[][] drawn = [.. Enumerable.Range(0, weeks.Draws).Select(d => Game(players, set => weeks.Counts[set]![d]))];
        List<Cause> causes = [.. players.Select((p, i) => new Cause(ChangeNames.Cause(p), Widened(Estimates.Of(scale * shares[i], [.. drawn.Select(d => d[i])]), p, total)))];
        double rest = total.Value - causes.Sum(c => c.RiskHours.Value);
        double[] left = [.. weeks.Counts[(int)weeks.Known]!];
        return [.. causes, new Cause(ChangeNames.Weather, Estimates.Of(rest, left))];
    }

    /// <summary>What each late watering caused: the hours of its round that an earlier finish would have avoided, shared evenly within the round.</summary>
    public static ImmutableDictionary<WateringEvent, Estimate> Caused(ReplayedWeeks weeks, Estimate total)
    {
        var caused = ImmutableDictionary.CreateBuilder<WateringEvent, Estimate>();
        for (int round = 0; round < weeks.Late.Count; round++)
        {
            ImmutableArray<WateringEvent> waterings = weeks.Late.Waterings(round);
            Estimate each = Estimates.Of(Scale(weeks, total) * weeks.ValueByLateRound[round] / waterings.Length, [.. weeks.ByLateRound[round].Select(h => h / waterings.Length)]);
            each = Widened(each, Change.WaterBeforeCutOff, total);
            foreach (WateringEvent e in waterings)
            {
                caused[e] = new Estimate(Math.Round(each.Value, 2), Math.Round(each.Low, 2), Math.Round(each.High, 2));
            }
        }

        return caused.ToImmutable();
    }

    private static WhatIf Of(ReplayedWeeks weeks, Change set, Estimate total)
    {
        double[] before = weeks.Counts[0]!, after = weeks.Counts[(int)set]!;
        int avoided = (int)Math.Round(Scale(weeks, total) * (weeks.Values[0] - weeks.Values[(int)set]), MidpointRounding.AwayFromZero);
        Estimate left = Estimates.OfCount((int)total.Value - avoided, [.. after]), fewer = Widened(Estimates.OfCount(avoided, [.. before.Select((b, d) => b - after[d])]), set, total);
        fewer = fewer with { High = Math.Ceiling(fewer.High) };
        return new WhatIf(
            set == weeks.Known ? ChangeNames.All : ChangeNames.WhatIf(set),
            left with { Low = Math.Max(0, Math.Min(left.Low, total.Value - fewer.High)) },
            fewer);
    }

    /// <summary>A range, wider upwards by what replays of simulated weeks missed there (<see cref="ReplayRates.UpwardStretch"/>); no more than all risk hours of the week.</summary>
    private static Estimate Widened(Estimate avoided, Change set, Estimate total)
    {
        double high = avoided.Value + (ReplayRates.UpwardStretch(set) * (avoided.High - avoided.Value));
        return avoided with { High = Math.Max(avoided.High, Math.Min(high, Math.Max(total.High, avoided.Value))) };
    }

    private static double Scale(ReplayedWeeks weeks, Estimate total) => weeks.Values[0] > 0 ? total.Value / weeks.Values[0] : 0;

    private static double[] Game(Change[] players, Func<int, double> value)
    {
        if (players.Length == 0)
        {
            return [];
        }

        double[] avoided = new double[1 << players.Length];
        for (int set = 1; set < avoided.Length; set++)
        {
            int changes = players.Where((_, i) => (set & (1 << i)) != 0).Aggregate(0, (all, p) => all | (int)p);
            avoided[set] = value(0) - value(changes);
        }

        return ShapleyValues.Of(avoided);
    }
}
