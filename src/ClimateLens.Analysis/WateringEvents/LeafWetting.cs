using ClimateLens.Nursery.Records;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>Which watering methods wet leaves.</summary>
internal static class LeafWetting
{
    /// <summary>
    /// Whether a method wets leaves. Fog counts as wetting, which errs on the careful side: light fog dries before it lands.
    /// Hand watering counts as wetting, since a log does not say where the hose was held. Common practice, no source.
    /// </summary>
    public static bool By(WateringMethod method) => method
        is WateringMethod.OverheadBoom or WateringMethod.Sprinkler or WateringMethod.Hose or WateringMethod.Fog;
}
