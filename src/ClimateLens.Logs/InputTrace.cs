namespace ClimateLens.Logs;

/// <summary>What the ledger tells of the input of a house period, without reading it.</summary>
/// <param name="Hash">Equal traces mean equal inputs, as long as the program is the same. Different ones say nothing: the input may be as it was.</param>
/// <param name="HasReadings">Whether a source of the house itself has a stamp in the period; null where only the readings tell.</param>
/// <param name="Values">About how many values the input holds.</param>
public sealed record InputTrace(string Hash, bool? HasReadings, long Values);
