using System.Collections.Frozen;

namespace ClimateLens.Nursery.Records;

/// <summary>
/// The words for watering methods: <c>overheadBoom</c>, <c>drip</c> and so on in nursery files, and the everyday words that people
/// write in watering logs. The one place that knows them.
/// </summary>
public static class WateringMethods
{
    /// <summary>Everyday words as they are compared: letters only, in lower case, "&amp;" as "and".</summary>
    private static readonly FrozenDictionary<string, WateringMethod> Everyday =
        new (WateringMethod Method, string[] Words)[]
        {
            (WateringMethod.OverheadBoom, ["boom", "booms", "overhead"]),
            (WateringMethod.Sprinkler, ["sprinklers", "overheadsprinkler", "overheadsprinklers"]),
            (WateringMethod.Hose, ["hand", "byhand", "handwatering", "hoses", "handhose"]),
            (WateringMethod.Drip, ["dripper", "drippers", "dripline", "driplines", "emitter", "emitters"]),
            (WateringMethod.EbbAndFlow, ["ebbflow", "ebb", "ebbandflood", "ebbflood", "floodbench", "floodbenches"]),
            (WateringMethod.FloodFloor, ["floodfloors", "floodedfloor", "floodedfloors", "floorflood"]),
            (WateringMethod.Fog, ["fogging", "mist", "misting"]),
        }
        .SelectMany(m => m.Words.Append(Letters(FileWords<WateringMethod>.Of(m.Method))).Select(word => KeyValuePair.Create(word, m.Method)))
        .ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The words of nursery files, in the order of <see cref="WateringMethod"/>.</summary>
    public static IReadOnlyList<string> Words => FileWords<WateringMethod>.All;

    /// <summary>
    /// Finds the method for a word of files or an everyday one. Capitals, spaces, hyphens, slashes and underscores do not count, so that
    /// "Ebb &amp; Flow", "ebb/flow" and "ebb-and-flow" are one.
    /// </summary>
    public static bool TryParse(string word, out WateringMethod method) => Everyday.TryGetValue(Letters(word), out method);

    /// <summary>The word for a method.</summary>
    public static string WordOf(WateringMethod method) => FileWords<WateringMethod>.Of(method);

    /// <summary>Drops what people put between words; any other sign stays, so that "drip?" or "drip 2" is no word.</summary>
    private static string Letters(string word)
        => string.Concat(word.Replace("&", "and", StringComparison.Ordinal).ToLowerInvariant().Where(c => !char.IsWhiteSpace(c) && c is not ('-' or '/' or '_')));
}
