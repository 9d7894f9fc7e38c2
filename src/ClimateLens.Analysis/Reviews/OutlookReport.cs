using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>What the days before say of the first night that begins after the period.</summary>
/// <param name="Sunset">Its beginning.</param>
/// <param name="Sunrise">Its end.</param>
/// <param name="RiskHours">Its risk hours with their 5 to 95 % range; null where no forecast beats plain guesses. [h]</param>
/// <param name="Score">How the forecast did on past nights; null where too few are known.</param>
/// <param name="LatestFinish">Latest finish of a watering over the leaves on its day, if it dries as the middle one of the seven days before; null where on most of them none let leaves dry, or it is not known.</param>
/// <param name="LatestFinishOnWorstDay">The same by the day that dried worst; null where none let leaves dry on it, or it is not known.</param>
/// <param name="DryingDays">Days that these two come from; 0 where they are not known.</param>
/// <param name="FinishMissHours">How far such a guess was off on the days of the period, on the mean; null where too few can be compared. [h]</param>
public sealed record OutlookReport(
    OffsetDateTime Sunset, OffsetDateTime Sunrise, Estimate? RiskHours, OutlookScore? Score, OffsetDateTime? LatestFinish, OffsetDateTime? LatestFinishOnWorstDay, int DryingDays, double? FinishMissHours);

/// <summary>A forecast on past nights, each foretold from the nights before it.</summary>
/// <param name="Nights">Nights scored.</param>
/// <param name="SkillOverNightBefore">Skill over the night before; 1 is perfect, 0 no better. [1]</param>
/// <param name="SkillOverMeanNight">Skill over the mean of the nights before. [1]</param>
/// <param name="MeanMissHours">Mean absolute error. [h]</param>
public sealed record OutlookScore(int Nights, double? SkillOverNightBefore, double? SkillOverMeanNight, double MeanMissHours);
