using System.Text.Json;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Matching;
using Interval = ClimateLens.Science.Statistics.Interval;

namespace ClimateLens.Analysis.Causes;

/// <summary>Balance and comparison as the review tells them.</summary>
internal static class CauseReports
{
    private const int PointEvery = 15; // minutes between points of the curve

    /// <summary>The balance as the review tells it.</summary>
    public static HouseBalanceReport Of(HouseBalance balance)
    {
        BalanceFit fit = balance.Fit;
        return new HouseBalanceReport(
            Math.Round(balance.Inputs.Steps * balance.Inputs.StepHours / 24, 1),
            [.. fit.Fitted.Select(Of)],
            Math.Round(fit.ResidualGm3, 3),
            balance.Score?.HeldOutDays ?? 0,
            Rounded(balance.Score?.Persistence.Skill),
            Rounded(balance.Score?.DailyCurve.Skill),
            balance.HasSkill,
            [.. Lacks(fit.Terms)])
        {
            Learned = balance.Learned is LearnedResponse learned ? Of(learned, balance.Score) : null,
        };
    }

    /// <summary>The balance's report with what its challenger gives for the waterings that were compared.</summary>
    public static HouseBalanceReport With(HouseBalanceReport report, WateringMatch match)
        => report.Learned is not { } learned || double.IsNaN(match.Learned.Value) ? report : report with { Learned = learned with { EffectGm3 = Of(match.Learned) } };

    /// <summary>The comparison as the review tells it.</summary>
    public static MatchedWaterings Of(WateringMatch match, double stepHours)
    {
        MatchedEffect effect = match.Measured;
        int every = Math.Max(1, (int)Math.Round(PointEvery / 60.0 / stepHours));
        return new MatchedWaterings(
            effect.Events.Count,
            effect.Matched,
            effect.Candidates,
            effect.Matched == 0 ? null : Of(effect.Effect),
            double.IsNaN(match.Modelled.Value) ? null : Of(match.Modelled),
            match.Agrees,
            [.. effect.Curve.Select((point, i) => (point, i)).Where(p => p.i % every == 0 && double.IsFinite(p.point.Value)).Select(p => new EffectPoint(
                Math.Round((p.i + effect.FirstLag) * stepHours, 3), Math.Round(p.point.Value, 3), Rounded(p.point.Low), Rounded(p.point.High)))],
            [.. effect.Balance.Where(b => double.IsFinite(b.After)).Select(b => new MatchedCovariate(b.Name, Math.Round(b.Before, 2), Math.Round(b.After, 2)))],
            [.. effect.LeftOut],
            effect.Placebo.Sets,
            Rounded(effect.Placebo.RejectionRate));
    }

    private static LearnedResponseReport Of(LearnedResponse learned, HeldOutScore? balance)
    {
        (double own, double other) = balance is null ? (double.NaN, double.NaN) : HeldOutScore.OnCommonSteps(learned.Score, balance);
        return new LearnedResponseReport(
            learned.UsesTrees ? "planeAndTrees" : "plane",
            learned.Score.HeldOutDays,
            Rounded(learned.Score.Persistence.Skill),
            Rounded(learned.Score.DailyCurve.Skill),
            Rounded(Math.Sqrt(own)),
            Rounded(Math.Sqrt(other)),
            double.IsNaN(own - other) ? null : own < other ? "learned" : "balance",
            null);
    }

    private static BalanceParameter Of(FittedTerm term) => new(
        JsonNamingPolicy.CamelCase.ConvertName(term.Info.Term.ToString()),
        Significant(term.Value),
        double.IsNaN(term.Error) ? null : Significant(term.Error),
        term.Info.Unit,
        term.Info.Low,
        term.Info.High,
        term.AtLow ? "low" : term.AtHigh ? "high" : "",
        term.IsTold,
        term.Info.Source);

    private static IEnumerable<string> Lacks(BalanceTerms terms)
    {
        if (!terms.Vent)
        {
            yield return Phrase.Of("Vent position is not logged: all exchange with the outside is one number, and what more venting would do cannot be told.");
        }

        if (!terms.Wind)
        {
            yield return Phrase.Of("Wind is not logged: windy and still hours exchange alike.");
        }

        if (!terms.Sun)
        {
            yield return Phrase.Of("No light or radiation is logged: transpiration follows the dryness of the air alone.");
        }

        if (!terms.Cover)
        {
            yield return Phrase.Of("Ground cover is not known: the crop counts as it is on the whole.");
        }

        if (!terms.CoverTemperature)
        {
            yield return Phrase.Of("The temperature of the cover cannot be worked out: dew on it hides in the exchange.");
        }

        if (!terms.LeafWatering)
        {
            yield return Phrase.Of("No watering over the leaves fell into the weeks before: what one does to the humidity could not be fitted.");
        }
    }

    /// <summary>An interval, to the mg; without a range low and high are the value.</summary>
    public static Estimate Of(Interval interval)
    {
        double value = Math.Round(interval.Value, 3);
        return new Estimate(value, double.IsNaN(interval.Low) ? value : Math.Round(interval.Low, 3), double.IsNaN(interval.High) ? value : Math.Round(interval.High, 3));
    }

    /// <summary>Three decimals; null where not known.</summary>
    public static double? Rounded(double? value) => value is double known && double.IsFinite(known) ? Math.Round(known, 3) : null;

    private static double Significant(double value)
    {
        if (value == 0)
        {
            return 0;
        }

        int decimals = Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 10);
        return Math.Round(value, decimals);
    }
}
