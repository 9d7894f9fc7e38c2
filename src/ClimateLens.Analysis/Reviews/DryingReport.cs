using System.Collections.Immutable;
using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>How fast the benches dry in the drying power of the air.</summary>
/// <param name="Stretches">Stretches without a watering that it was learned from.</param>
/// <param name="Noise">Standard deviation of a stretch's fall about its line. [levels]</param>
/// <param name="Benches">Each bench.</param>
/// <param name="Score">The forecast on past days; null where there were none to score.</param>
public sealed record DryingReport(int Stretches, double Noise, ImmutableArray<BenchDrying> Benches, DryingScore? Score);

/// <summary>How a bench dries.</summary>
/// <param name="Bench">Bench.</param>
/// <param name="RatePerKPaH">Levels lost a kPa h with its range. [1/(kPa h)]</param>
/// <param name="FallADay">Levels lost on a day like those of the last week; null where their air is not known. [levels]</param>
/// <param name="Last">Its last visit; null where it had none in the last day of the period.</param>
/// <param name="Morning">Level in the middle of tomorrow's first round if it is not watered before; null where that is not known or not shown to be worth telling.</param>
/// <param name="Afternoon">The same for the last round.</param>
/// <param name="WaterInTheMorning">Whether it would be below the band by then.</param>
public sealed record BenchDrying(string Bench, Estimate RatePerKPaH, double? FallADay, PotVisit? Last, LevelForecast? Morning, LevelForecast? Afternoon, bool WaterInTheMorning);

/// <summary>A level to come. [level]</summary>
public sealed record LevelForecast(OffsetDateTime At, Estimate Level);

/// <summary>Forecasts of past days from the days before each, against "same as yesterday".</summary>
/// <param name="Forecasts">Levels forecast and then seen.</param>
/// <param name="Skill">1 perfect, 0 no better than "same as yesterday", below 0 worse; null where "same as yesterday" never missed. [1]</param>
/// <param name="Rmse">Root mean square of the misses. [levels]</param>
/// <param name="RmseYesterday">The same for "same as yesterday". [levels]</param>
/// <param name="ShareInRange">Share of the levels that lay in the forecast's 5 to 95 % range. [1]</param>
public sealed record DryingScore(int Forecasts, double? Skill, double Rmse, double RmseYesterday, double ShareInRange);
