using System.Collections.Frozen;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>How people write watering methods. Letters only are compared, so that "ebb and flow" and "Ebb-and-Flow" are one.</summary>
internal static class MethodWords
{
    private static readonly FrozenDictionary<string, WateringMethod> Known = new Dictionary<string, WateringMethod>
    {
        ["overheadboom"] = WateringMethod.OverheadBoom,
        ["boom"] = WateringMethod.OverheadBoom,
        ["overhead"] = WateringMethod.OverheadBoom,
        ["sprinkler"] = WateringMethod.Sprinkler,
        ["sprinklers"] = WateringMethod.Sprinkler,
        ["overheadsprinkler"] = WateringMethod.Sprinkler,
        ["hose"] = WateringMethod.Hose,
        ["hand"] = WateringMethod.Hose,
        ["byhand"] = WateringMethod.Hose,
        ["handwatering"] = WateringMethod.Hose,
        ["drip"] = WateringMethod.Drip,
        ["dripper"] = WateringMethod.Drip,
        ["emitter"] = WateringMethod.Drip,
        ["emitters"] = WateringMethod.Drip,
        ["ebbandflow"] = WateringMethod.EbbAndFlow,
        ["ebbflow"] = WateringMethod.EbbAndFlow,
        ["ebb"] = WateringMethod.EbbAndFlow,
        ["ebbandflood"] = WateringMethod.EbbAndFlow,
        ["floodbench"] = WateringMethod.EbbAndFlow,
        ["floodfloor"] = WateringMethod.FloodFloor,
        ["floorflood"] = WateringMethod.FloodFloor,
        ["fog"] = WateringMethod.Fog,
        ["fogging"] = WateringMethod.Fog,
        ["mist"] = WateringMethod.Fog,
        ["misting"] = WateringMethod.Fog,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The method, or null for words that we do not know.</summary>
    public static WateringMethod? Read(string text)
    {
        string letters = string.Concat(text.ToLowerInvariant().Where(char.IsAsciiLetterLower));
        return Known.TryGetValue(letters, out WateringMethod method) ? method : null;
    }

    /// <summary>
    /// Whether a method wets leaves. Fog counts as wetting, which errs on the careful side: light fog dries before it lands.
    /// Hand watering counts as wetting, since a log does not say where the hose was held. Common practice, no source.
    /// </summary>
    public static bool WetsLeaves(WateringMethod method) => method
        is WateringMethod.OverheadBoom or WateringMethod.Sprinkler or WateringMethod.Hose or WateringMethod.Fog;
}
