namespace ClimateLens.Analysis.Reviews;

/// <summary>A way to tell wet leaves and what it said of the period.</summary>
/// <param name="Key"><c>film</c>, <c>humidity</c>, <c>changingHumidity</c>, <c>dewPointDepression</c> or <c>decisionTree</c>.</param>
/// <param name="Name">For people.</param>
/// <param name="Source">Key of the source in docs/references.md.</param>
/// <param name="Counts">Whether its opinion counts under glass.</param>
/// <param name="Caution">What to know of it.</param>
/// <param name="WetHours">Hours that it takes for wet.</param>
/// <param name="KnownHours">Hours of which it says anything.</param>
public sealed record WetnessOpinion(string Key, string Name, string Source, bool Counts, string Caution, int WetHours, int KnownHours)
{
    /// <summary>Hours in which it says the same as the film model.</summary>
    public int AgreesHours { get; init; }

    /// <summary>How it did against a leaf-wetness sensor; null without one.</summary>
    public WetnessScore? Score { get; init; }
}

/// <summary>An opinion on wet leaves against a leaf-wetness sensor, over the days of run-in and period.</summary>
/// <param name="Days">Days scored.</param>
/// <param name="Hits">Both wet. [h]</param>
/// <param name="Misses">Only the sensor wet. [h]</param>
/// <param name="FalseAlarms">Only the opinion wet. [h]</param>
/// <param name="CorrectDry">Both dry. [h]</param>
/// <param name="BiasHoursADay">Wet hours a day told too many. [h/d]</param>
/// <param name="BiasLow">5 % of days drawn anew lie below; null with fewer than five days. [h/d]</param>
/// <param name="BiasHigh">5 % lie above. [h/d]</param>
public sealed record WetnessScore(int Days, double Hits, double Misses, double FalseAlarms, double CorrectDry, double? BiasHoursADay, double? BiasLow, double? BiasHigh);

/// <summary>A plain limit or rule against grey mould or powdery mildew that is published, and where the period stands to it.</summary>
/// <param name="Key">Key.</param>
/// <param name="Text">The limit and what was found, as a finished sentence.</param>
/// <param name="Passed">Whether it was passed; null where the data do not tell or the limit is only counted.</param>
/// <param name="Source">Published source.</param>
public sealed record PublishedLimit(string Key, string Text, bool? Passed, string Source);
