using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Leaf;

namespace ClimateLens.Analysis.Foliage;

/// <summary>The assumed difference between the air among the leaves and the main sensor, as the nursery file has it.</summary>
internal static class AssumedCanopyAir
{
    /// <summary>The assumption; none where it is switched off.</summary>
    public static InCanopyAir Of(RiskRules rules) => rules.CanopyDifference
        ? new(rules.CanopyTemperatureK, rules.CanopyTemperatureErrorK, rules.CanopyHumidityPct, rules.CanopyHumidityErrorPct)
        : InCanopyAir.None;
}
