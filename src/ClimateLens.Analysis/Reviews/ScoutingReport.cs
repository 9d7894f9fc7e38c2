using System.Collections.Immutable;

namespace ClimateLens.Analysis.Reviews;

/// <summary>Risk hours by week beside the plants that were found affected, over the weeks before and with the period.</summary>
/// <param name="Weeks">Weeks with a count or before one, oldest first; the period itself where it is a whole week.</param>
/// <param name="Symptoms">What was counted, in the order of the words.</param>
public sealed record ScoutingReport(ImmutableArray<ScoutedWeek> Weeks, ImmutableArray<ScoutedSymptom> Symptoms);

/// <summary>A week that is looked back at.</summary>
/// <param name="Week">ISO 8601 week.</param>
/// <param name="RiskHours">Risk hours; of an earlier week by fewer draws than its own page; null where too little is known. [h]</param>
public sealed record ScoutedWeek(string Week, int? RiskHours);

/// <summary>What was counted of one symptom.</summary>
/// <param name="Symptom">As it was written, in lower case; empty where none was named.</param>
/// <param name="Plants">Affected plants by week, in step with <see cref="ScoutingReport.Weeks"/>; null where none were counted.</param>
/// <param name="Pairs">Weeks with a count whose week before has risk hours.</param>
/// <param name="Correlation">Rank correlation of counts and risk hours of the week before, with its 5 to 95 % range; null below <see cref="Scouting.ScoutingOf.FewestPairs"/> pairs or where one of them never changes. [1]</param>
/// <param name="ChanceShare">Share of random pairings that lie at least as far from 0; null likewise. [1]</param>
public sealed record ScoutedSymptom(string Symptom, ImmutableArray<double?> Plants, int Pairs, Estimate? Correlation, double? ChanceShare);
