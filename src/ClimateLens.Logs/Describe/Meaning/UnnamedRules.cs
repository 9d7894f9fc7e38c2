using ClimateLens.Logs.Describe.Numbers;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Columns of a file without a header: what the values could be is asked, never taken.</summary>
internal static class UnnamedRules
{
    /// <summary>The question; null where the values say nothing.</summary>
    public static ChannelGuess? Of(ColumnFacts facts)
    {
        if (facts.Count == 0 || facts.Distinct < 5)
        {
            return null;
        }

        string values = FormattableString.Invariant($"no name; values {facts.At(0.02):0.###} to {facts.At(0.98):0.###}");
        string[] channels = (facts.Min, facts.Median, facts.Max) switch
        {
            ( >= -30, > 250 and < 3000, > 300 and < 5000) => ["carbonDioxide"],
            ( >= -5, >= 0, > 150 and < 1500) when facts.ShareBetween(-5, 5) > 0.2 => ["globalRadiation"],
            ( > 10, > 35, <= 100.5) => ["relativeHumidity"],
            ( > -30, > 2, < 50) => ["airTemperature", "outsideTemperature"],
            _ => [],
        };
        return channels.Length == 0 ? null : ChannelGuess.Either($"{values}: is it this?", channels);
    }
}
