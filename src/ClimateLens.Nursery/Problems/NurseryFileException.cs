namespace ClimateLens.Nursery.Problems;

/// <summary>The nursery file cannot be used; lists every fault at once. The command line answers with exit code 78.</summary>
/// <param name="problems">All faults found, in file order; at least one is an error.</param>
public sealed class NurseryFileException(IReadOnlyList<Problem> problems)
    : Exception(string.Join(Environment.NewLine, problems))
{
    /// <summary>All faults found, in file order.</summary>
    public IReadOnlyList<Problem> Problems { get; } = problems;
}
