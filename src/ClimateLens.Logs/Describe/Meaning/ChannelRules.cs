using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>From the words of a header to a channel. The first rule that speaks decides.</summary>
internal static class ChannelRules
{
    private static readonly Func<HeaderText, ColumnFacts, FileContext, ChannelGuess?>[] Rules =
        [UnusedRules.Of, SetPointRules.Of, HumidityRules.Of, PlantRules.Of, SteeredRules.Of, LightRules.Of, WeatherRules.Of, WaterRules.Of, HeatRules.Of, AirRules.Of];

    /// <summary>The guess for a column of numbers.</summary>
    public static ChannelGuess Of(HeaderText header, ColumnFacts facts, FileContext context)
    {
        foreach (Func<HeaderText, ColumnFacts, FileContext, ChannelGuess?> rule in Rules)
        {
            if (rule(header, facts, context) is { } guess)
            {
                return guess;
            }
        }

        if (header.Raw.Length == 0 && context.IsHeaderless && UnnamedRules.Of(facts) is { } unnamed)
        {
            return unnamed;
        }

        string unit = header.Unit is { Quantities.Count: > 0 } known ? $"in {known.Written}, but of what the name does not say" : "the name says nothing that is known";
        return ChannelGuess.Unused(facts.Count == 0 ? unit : FormattableString.Invariant($"{unit} (values {facts.At(0.02):0.###} to {facts.At(0.98):0.###})"));
    }
}
