using System.Runtime.CompilerServices;

namespace ClimateLens.Analysis;

/// <summary>What was worked out of an input, for as long as the input lives: many reviews look back at the same earlier weeks, and all are of one nursery. The function is pure, so that nobody can tell but by the time it takes.</summary>
/// <typeparam name="TInput">What of.</typeparam>
/// <typeparam name="T">What is worked out.</typeparam>
internal sealed class WorkedOutOnce<TInput, T>(Func<TInput, T> workOut)
    where TInput : class
{
    private readonly ConditionalWeakTable<TInput, StrongBox<T>> _known = [];

    /// <summary>The answer for an input, by the identity of the object.</summary>
    public T Of(TInput input) => _known.GetValue(input, i => new StrongBox<T>(workOut(i))).Value!;
}
