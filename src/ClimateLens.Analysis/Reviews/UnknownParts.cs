using System.Collections.Immutable;
using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Outlook;
using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Analysis.Reviews;

/// <summary>Names every part of a review that is null, why it is so, and what would make it known.</summary>
internal static class UnknownParts
{
    public static ImmutableArray<Unknown> Of(Review review, HousePeriod period, SecondOpinionReport opinion, CauseState causes)
        => [.. Candidates(review, period, opinion, causes).Where(c => c.IsUnknown).Select(c => new Unknown(c.What, c.Why))];

    private static IEnumerable<(bool IsUnknown, string What, string Why)> Candidates(Review review, HousePeriod period, SecondOpinionReport opinion, CauseState causes)
    {
        yield return (period.Temperature is null, "airTemperature", Phrase.Of("No air temperature is logged for this house. Name its column in the nursery file."));
        yield return (!HasHumidity(period), "relativeHumidity", Phrase.Of("No relative humidity is logged for this house, nor anything it could be derived from together with air temperature. Name its column in the nursery file."));
        yield return (WhyNoClock(review) is not null, "clock", WhyNoClock(review) ?? "");
        yield return (opinion.NotLearned.Length > 0 || opinion.Sensors.IsEmpty, "secondOpinion", WhyNoSecondOpinion(opinion));
        yield return (review.RiskHours is null, "riskHours", WhyNoRisk(review, period));
        yield return (review.RiskHoursBefore is null, "riskHoursBefore", Phrase.Of("The seven days before the period are not loaded, or less than half of their hours have temperature and humidity, or more than half of those readings are doubtful."));
        yield return (review.WeekBefore is null, "weekBefore", Phrase.Of("The seven days before the period are not loaded, or have no usable temperature and humidity."));
        int unknown = review.Hours.Count(h => h.Wet is null);
        yield return (unknown > 0, "hours.wet", Phrase.Of($"Whether leaves were wet is not known in {Say.Count(unknown, "hour")}: the air is not known then, or the film of water from before is not."));
        yield return (review.Waterings is null && period.HasAir, "hours.wetFromWatering", Phrase.Of("Whether watering wetted leaves is not known: nothing tells of waterings, so that wet hours are those of dew alone."));
        yield return (review.LeafBasis is null, "leafBasis", Phrase.Of("The state of the leaves is not known without air temperature and humidity."));
        yield return (review.WetPeriods is null, "wetPeriods", Phrase.Of("How long leaves stayed wet is not known: in more than half of the time it is not known whether they were wet."));
        yield return (review.Canopy is null, "canopy", WhyNoCanopy(period));
        yield return (review.Waterings is null, "waterings", Phrase.Of("Nothing tells of waterings: there is neither a watering log nor a valve column for this house in the nursery file."));
        UnknownMethods? methods = UnknownMethods.Of(period.Input, review.Waterings ?? []);
        yield return (methods is not null, "waterings.method", methods?.Sentence() ?? "");
        yield return (review.Waterings?.Any(w => w.AfterCutOff == true) == true && causes.CausedBy is null, "waterings.riskHoursCaused", Phrase.Of("Which risk hours a late watering caused cannot be told, since the week could not be replayed. The rise of humidity shown is a difference, not an effect."));
        yield return (review.WateringHints is null, "wateringHints", Phrase.Of("Whether the log lacks a watering cannot be told: that takes a house balance with skill."));
        yield return (review.Floods is null, "floods", Phrase.Of("What floods of benches or floors leave in the air is not known: there is none in the period, or there are no two weeks of readings before it to compare with."));
        yield return (review.HouseBalance is null, "houseBalance", causes.WhyNot);
        yield return (review.MatchedWaterings is null, "matchedWaterings", Phrase.Of("No watering over the leaves in the period can be compared with alike hours without one: there was none, or there are no two weeks of readings before the period to compare with."));
        yield return (review.WhatIfs is null, "whatIfs", Phrase.Of($"What another watering time or more venting would have changed cannot be told. {causes.WhyNot}"));
        yield return (review.Causes is null, "causes", Phrase.Of($"Who put the humidity there cannot be told. {causes.WhyNot}"));
        foreach ((string name, string why) in causes.NotReplayed)
        {
            yield return (true, $"whatIfs.{name}", Phrase.Of($"{why} Its share, if it has one, is among that of the weather."));
        }

        yield return (review.Pots is null, "pots", Phrase.Of("No pot checks were recorded in this period."));
        yield return (review.Pots is { Drying: null }, "pots.drying", Phrase.Of("How fast the benches dry is not known: fewer than six stretches between two pot checks without a watering, or the air in them is not known."));
        yield return (review.Pots?.Drying is { } drying && drying.Benches.All(b => b.Morning is null), "pots.drying.forecast", WhyNoDryingForecast(review.Pots));
        string[] leafWords = LeafSigns.UnknownWords(period.Input);
        yield return (leafWords.Length > 0, "pots.leafState", Phrase.Of($"What pot checks say of leaves with the {(leafWords.Length == 1 ? Phrase.Of("word") : Phrase.Of("words"))} {Say.List(leafWords)} is not known; known are turgid, flagging, severe flagging and wilted."));
        yield return (review.Roots is null, "roots", Phrase.Of("Whether the weather in the pots favours root rot is not known without pot checks in this period."));
        yield return (review.Records is null, "records", Phrase.Of("No records (waterings, pot checks, plant widths, treatments, floors, tanks, scouting) fall into this period."));
        yield return (review.Scouting is null, "scouting", Phrase.Of($"Whether risk hours and disease go together is not known: no affected plants were counted in this house in the {ScoutedWeeks.Most} weeks up to the end of the period."));
        yield return (review.Outlook is null, "outlook", WhyNoOutlook(review.Outlook));
        yield return (review.Outlook is { RiskHours: null }, "outlook.riskHours", WhyNoOutlook(review.Outlook));
        yield return (review.Outlook is { DryingDays: 0 }, "outlook.latestFinish", Phrase.Of("The watering cut-off of the coming day is not known: on most of the days before it the drying of leaves is not."));
    }

    private static string WhyNoOutlook(OutlookReport? outlook) => outlook?.Score is not { SkillOverNightBefore: { } before, SkillOverMeanNight: { } mean } score
        ? Phrase.Of($"The risk hours of the coming night are not foretold: that takes {NightForecast.FewestLearned + FewestNights} nights up to the end of the period, with air temperature and humidity and the days before them.")
        : Phrase.Of($"The risk hours of the coming night are not foretold: on {score.Nights} past nights the forecast did not beat plain guesses beyond chance (skill {Say.Number(Math.Round(before, 2))} over the night before, {Say.Number(Math.Round(mean, 2))} over the mean night; 1 is perfect, 0 no better).");

    /// <summary>Nights to score, and the one that is not over when the next is foretold.</summary>
    private const int FewestNights = NightForecast.FewestScored + 1;

    /// <summary>Why none of the house's own clocks could be held against the sun; null where one could.</summary>
    private static string? WhyNoClock(Review review)
    {
        ClockReport[] own = [.. review.Clocks.Where(c => c.House == review.House.Id)];
        return own.Length > 0 && own.All(c => c.Check.Verdict == ClockVerdict.NotKnown)
            ? Phrase.Of($"Whether the clock of export \"{own[0].Source}\" runs right was not seen: {Say.InSentence(own[0].Check.Sentence)} A column with light or outside temperature in the same export would tell.")
            : null;
    }

    private static string WhyNoDryingForecast(PotReport? pots) => pots?.Drying?.Score switch
    {
        null => Phrase.Of("Tomorrow's levels are not foretold: there are too few past days on which such forecasts could be held against what was seen."),
        { Skill: null or <= 0 } score => Phrase.Of($"Tomorrow's levels are not foretold: over {score.Forecasts} past forecasts \"same as yesterday\" was no worse."),
        _ => Phrase.Of("Tomorrow's levels are not foretold: every bench was watered since its last pot check, or that check is more than a day old."),
    };

    private static string WhyNoSecondOpinion(SecondOpinionReport opinion)
    {
        string[] reasons = [.. opinion.NotLearned.Select(n => n.Why).Distinct()];
        return reasons.Length == 0
            ? Phrase.Of("No temperature or humidity is logged that could be predicted from other sensors.")
            : string.Join(' ', reasons.Select(why => $"{Say.List([.. opinion.NotLearned.Where(n => n.Why == why).Select(Name)])}: {Say.InSentence(why)}"));
    }

    private static string Name(NotLearned sensor)
        => ChannelCatalogue.Get(sensor.Channel).Label + (sensor.Sensor.Length == 0 ? "" : $" \"{sensor.Sensor}\"");

    private static string WhyNoCanopy(HousePeriod period) => StandingCrop.Of(period.Input) switch
    {
        null => Phrase.Of("The nursery file names no crop that stands in this house in the period: add [[house.crop]] with species, potted (or pinched) and spacing."),
        { Spacing.IsEmpty: true } => Phrase.Of("How far the crop has closed is not known without the distances at which it stands: add spacing to its [[house.crop]]."),
        _ => Phrase.Of("How far the crop has closed is not known without the day of potting or pinch: add potted or pinched to its [[house.crop]]."),
    };

    private static bool HasHumidity(HousePeriod period) => period.Humidity is not null || period.HumidityFrom is not null;

    private static string WhyNoRisk(Review review, HousePeriod period)
        => !HasHumidity(period) ? Phrase.Of("Relative humidity is not known, and without it neither is the dew point.")
            : period.Temperature is null ? Phrase.Of("Air temperature is not known, and without it neither is the dew point.")
            : Trust.MostlyDoubtful(period, period.FirstStep, period.Frame.Axis.Count) is Series doubtful ? Phrase.Of($"More than half of the used readings of {doubtful.Label.ToLowerInvariant()} are doubtful (see its notes under sensors): a total would say more than they carry. The hours are shown as they were read.")
            : Phrase.Of($"Only {Say.Count(review.Coverage.HoursWithData, "hour")} of {review.Coverage.ExpectedHours} have temperature and humidity: too few for a total.");
}
