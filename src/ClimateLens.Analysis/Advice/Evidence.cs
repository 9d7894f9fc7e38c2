using System.Collections.Immutable;
using ClimateLens.Analysis.Care;
using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Advice;

/// <summary>What the rules look at.</summary>
/// <param name="Period">The house period with its flags and columns.</param>
/// <param name="Risk">Hours, margins and risk.</param>
/// <param name="Waterings">Waterings of the period; empty also when nothing tells of any.</param>
/// <param name="Coverage">Coverage of the period.</param>
/// <param name="Causes">Who put the humidity there.</param>
/// <param name="Pots">What people saw of the pots.</param>
/// <param name="Care">What the records say.</param>
internal sealed record Evidence(HousePeriod Period, RiskState Risk, ImmutableArray<Watering> Waterings, Coverage Coverage, CauseState Causes, PotState Pots, CareState Care)
{
    /// <summary>The nursery's zone.</summary>
    public DateTimeZone Zone => Period.Frame.Axis.Zone;

    /// <summary>Risk hours of the period, whether or not the data carry a total.</summary>
    public int RiskHours => Risk.Count(Period.Input.Period.Start, Period.Input.Period.End);

    /// <summary>The nights whose morning falls in the period, each whole where the data are loaded.</summary>
    public ImmutableArray<NightHours> Nights { get; } = NightHours.Of(Period, Risk);

    /// <summary>Those of them that have data for at least half of their hours.</summary>
    public IEnumerable<NightHours> JudgedNights => Nights.Where(n => n.IsJudged);

    /// <summary>Steps of the period with a flag.</summary>
    public int Steps(Series series, QualityFlag flag) => Period.Frame.Flags(series.Key).AsSpan()[Period.FirstStep..].Count(flag);

    /// <summary>The series that the risk rests on, each export by itself.</summary>
    public IEnumerable<Series> Main
        => ((Series?[])[Period.Temperature, Period.Humidity ?? Period.HumidityFrom]).SelectMany(main => Period.Series.Where(s => JoinedSources.IsBehind(s, main)));
}

/// <summary>A finding before it is ranked.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="HoursAtStake">Hours of the period that it concerns: the rank. [h]</param>
/// <param name="Text">The statement.</param>
/// <param name="Action">What to do, or empty.</param>
/// <param name="Caution">Caution and source, or empty.</param>
/// <param name="Facts">What it rests on.</param>
internal sealed record Candidate(string Id, double HoursAtStake, string Text, string Action, string Caution, ImmutableArray<string> Facts)
{
    /// <summary>Risk hours that doing so would have avoided, where that is known.</summary>
    public Estimate? Avoided { get; init; }
}
