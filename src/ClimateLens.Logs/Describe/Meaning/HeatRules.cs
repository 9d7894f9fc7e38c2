using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Pipes and heating water.</summary>
internal static class HeatRules
{
    private const double HotterThanSetPoints = 40;
    private const double ColderThanPipes = 30;

    public static ChannelGuess? Of(HeaderText header, ColumnFacts facts, FileContext context)
    {
        bool temperature = header.Has(Idea.Temperature) || header.Unit?.Measures(Quantity.Temperature) == true;
        string side = header.Has(Idea.Return) ? "return" : header.Has(Idea.Supply) ? "supply" : "";
        if (header.Has(Idea.Pipe))
        {
            return temperature || header.Unit is null ? ChannelGuess.Is("heatingPipeTemperature", header, temperature ? Sureness.Sure : Sureness.Likely) with { Sensor = side } : ChannelGuess.Unused("of a pipe, but no temperature");
        }

        if (header.HasAny(Idea.Supply, Idea.Return) && header.Has(Idea.Air))
        {
            return ChannelGuess.Unused("of the air in a duct, no channel");
        }

        if (header.HasAny(Idea.Supply, Idea.Return) && (temperature || (header.Unit is null && header.HasAny(Idea.Heating, Idea.Water))))
        {
            return ChannelGuess.Is("heatingPipeTemperature", header, Sureness.Likely) with { Sensor = side };
        }

        if (header.Unit is null && facts.Count > 0 && facts.Min > 5 && facts.Max is > 25 and < 100 && header.Words.Any(w => w.Idea is Idea.Supply or Idea.Return && w.Word is "fremlob" or "vorlauf" or "aanvoer" or "mandata" or "returlob" or "rucklauf"))
        {
            return ChannelGuess.Is("heatingPipeTemperature", header, Sureness.Likely) with { Sensor = side };
        }

        if (!header.Has(Idea.Heating))
        {
            return header.HasAny(Idea.Supply, Idea.Return) ? ChannelGuess.Unused("a flow, but of what the name does not say") : null;
        }

        if (!temperature)
        {
            return ChannelGuess.Unused("heating, but no temperature");
        }

        return facts.Count > 0 && facts.Max > HotterThanSetPoints && header.Unit?.Code != "[degF]" && !header.Has(Idea.Air)
            ? new ChannelGuess(["heatingPipeTemperature"], Sureness.Likely, "heating, temperature, and hotter than air")
            : facts.Count > 0 && facts.Max < ColderThanPipes && facts.Distinct <= 40
            ? new ChannelGuess(["heatingSetPoint"], Sureness.Likely, "heating, temperature, and few different values as of a set point")
            : ChannelGuess.Either("heating and temperature: the set point, or the pipe?", "heatingSetPoint", "heatingPipeTemperature");
    }
}
