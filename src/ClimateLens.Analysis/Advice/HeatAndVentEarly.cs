using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Analysis.Advice;

/// <summary>A minimum of heat and vent before sunrise would have avoided risk hours.</summary>
internal static class HeatAndVentEarly
{
    public const string Id = "heatAndVentBeforeSunrise";

    public static Candidate? Of(Evidence evidence)
    {
        Estimate? avoided = Avoidable.By(evidence, Change.HeatAndVentBeforeSunrise);
        return !Avoidable.IsWorthwhile(avoided) ? null : new Candidate(
            Id,
            avoided!.Value,
            $"With vents at least a tenth open and the air a kelvin warmer in the three hours before sunrise, {Avoidable.Hours(evidence, avoided)} would not have been.",
            "Set a minimum pipe temperature and a minimum vent opening for the hours before sunrise; watch that plants are not chilled.",
            $"{Avoidable.Caution} Heating and venting before sunrise: extension advice and common practice; what it costs in fuel is not weighed here.",
            []);
    }
}
