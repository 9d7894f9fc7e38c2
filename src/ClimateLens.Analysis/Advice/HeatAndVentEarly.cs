using ClimateLens.Analysis.Causes;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>A minimum of heat and vent before sunrise would have avoided risk hours.</summary>
internal static class HeatAndVentEarly
{
    public const string Id = "heatAndVentBeforeSunrise";

    public static Candidate? Of(Evidence evidence)
        => Avoidable.Advice(
            evidence,
            Change.HeatAndVentBeforeSunrise,
            Id,
            Phrase.Of("With vents at least a tenth open and the air a kelvin warmer in the three hours before sunrise"),
            Phrase.Of("Set a minimum pipe temperature and a minimum vent opening for the hours before sunrise; watch that plants are not chilled."),
            Phrase.Of("Heating and venting before sunrise: extension advice and common practice; what it costs in fuel is not weighed here."),
            []);
}
