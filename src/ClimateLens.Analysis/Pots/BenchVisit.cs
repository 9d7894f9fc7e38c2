using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>What one round saw of a bench: the mean of its pots.</summary>
/// <param name="Bench">Bench.</param>
/// <param name="At">Time of the first of its checks.</param>
/// <param name="Level">Mean level. [level]</param>
/// <param name="Checks">Pots with a level.</param>
internal readonly record struct BenchVisit(string Bench, Instant At, double Level, int Checks);
