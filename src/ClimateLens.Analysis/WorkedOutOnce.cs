using System.Runtime.CompilerServices;
using ClimateLens.Nursery;

namespace ClimateLens.Analysis;

/// <summary>What was worked out of an input, for as long as the input lives: many reviews look back at the same earlier weeks. The function is pure, so that nobody can tell but by the time it takes.</summary>
/// <typeparam name="T">What is worked out.</typeparam>
internal sealed class WorkedOutOnce<T>(Func<HouseInput, T> workOut)
{
    private readonly ConditionalWeakTable<HouseInput, StrongBox<T>> _known = [];

    /// <summary>The answer for an input, by the identity of the object.</summary>
    public T Of(HouseInput input) => _known.GetValue(input, i => new StrongBox<T>(workOut(i))).Value!;
}
