using System.Collections.Immutable;

namespace ClimateLens.Analysis.Foliage;

/// <summary>On what the weather of the leaves rests, in words: finished sentences without a subject that repeats.</summary>
/// <param name="Measured">What a sensor of the house or nursery tells.</param>
/// <param name="Modelled">What is worked out from that.</param>
/// <param name="Assumed">What nobody measured and the review takes for granted.</param>
public sealed record FoliageBasis(ImmutableArray<string> Measured, ImmutableArray<string> Modelled, ImmutableArray<string> Assumed)
{
    /// <summary>Nothing yet.</summary>
    public static FoliageBasis None { get; } = new([], [], []);

    /// <summary>With one more thing measured.</summary>
    public FoliageBasis AndMeasured(string what) => this with { Measured = Measured.Add(what) };

    /// <summary>With one more thing worked out.</summary>
    public FoliageBasis AndModelled(string what) => this with { Modelled = Modelled.Add(what) };

    /// <summary>With one more thing assumed.</summary>
    public FoliageBasis AndAssumed(string what) => this with { Assumed = Assumed.Add(what) };
}
