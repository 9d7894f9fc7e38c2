using System.Collections.Frozen;
using System.Collections.Immutable;

namespace ClimateLens.Science.Treatments;

/// <summary>Groups of which something is known here. An open list: a code that is not in it is counted all the same.</summary>
/// <remarks>
/// <b>Source:</b> risk of 4 and 32 seen in an excerpt of [FRAC18]; every other risk from memory. P07 was 33 until it was renamed (memory), so both are one. <b>Error:</b> lists change; the label and the
/// current list of codes rule.
/// </remarks>
public static class ResistanceGroups
{
    /// <summary>The list.</summary>
    public static ImmutableArray<ResistanceGroup> All { get; } =
    [
        new("1", "benzimidazoles", ResistanceRisk.High, false),
        new("4", "phenylamides", ResistanceRisk.High, true),
        new("11", "QoI", ResistanceRisk.High, false),
        new("14", "aromatic hydrocarbons", ResistanceRisk.Medium, false),
        new("21", "QiI", ResistanceRisk.High, false),
        new("28", "carbamates", ResistanceRisk.Medium, false),
        new("32", "isoxazoles", ResistanceRisk.Low, true),
        new("40", "carboxylic acid amides", ResistanceRisk.Medium, false),
        new("43", "benzamides", ResistanceRisk.Medium, false),
        new("49", "OSBP inhibitors", ResistanceRisk.High, false),
        new("BM02", "biologicals", ResistanceRisk.Low, false),
        new("M03", "dithiocarbamates", ResistanceRisk.Low, false),
        new("M04", "phthalimides", ResistanceRisk.Low, false),
        new("P07", "phosphonates", ResistanceRisk.Low, false),
        new("33", "phosphonates", ResistanceRisk.Low, false),
    ];

    private static readonly FrozenDictionary<string, ResistanceGroup> ByCode = All.ToFrozenDictionary(g => g.Code, StringComparer.Ordinal);

    /// <summary>The group of a code, or null where nothing is known of it.</summary>
    /// <param name="code">A code of <see cref="GroupRuns.CodesOf"/>.</param>
    public static ResistanceGroup? Of(string code) => ByCode.GetValueOrDefault(code);
}
