using ClimateLens.Logs.Readings;
using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Import;

/// <summary>What an import works with.</summary>
/// <param name="Transaction">Takes what changes; null for a check, which keeps nothing.</param>
/// <param name="Spill">For rows that do not fit into memory.</param>
/// <param name="Limits">How much of them fits.</param>
/// <param name="Settings">Hash of the settings that files are read with.</param>
internal sealed record Workshop(StoreTransaction? Transaction, SpillFolder Spill, MemoryLimits Limits, string Settings);
