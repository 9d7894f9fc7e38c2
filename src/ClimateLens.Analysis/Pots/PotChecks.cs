using System.Collections.Immutable;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Pots;

namespace ClimateLens.Analysis.Pots;

/// <summary>The pot checks of a house in time order, from its records. A check that tells nothing of its pot is passed over.</summary>
internal static class PotChecks
{
    /// <summary>All checks that were loaded, those before the period too.</summary>
    public static ImmutableArray<PotCheck> Of(HouseInput input)
    {
        Dictionary<string, string> spelling = new(StringComparer.OrdinalIgnoreCase);
        return
        [
            .. input.Records
                .Where(row => row.Kind == RecordKind.PotChecks && row.At < input.Period.End)
                .Select(row => Check(row, input.House.Pots, spelling))
                .Where(check => check.Moisture is not null || check.Leaves != LeafSign.NotKnown || check.MediumC is not null)
                .OrderBy(check => check.At),
        ];
    }

    private static PotCheck Check(RecordRow row, PotRules rules, Dictionary<string, string> spelling)
    {
        string bench = row.Text("bench");
        if (!spelling.TryGetValue(bench, out string? known))
        {
            spelling[bench] = known = bench;
        }

        double? fraction = rules is { DryWeightG: { } dry, SoakedWeightG: { } soaked } && row.Number("weight") is >= 0 and { } weight ? PotWeight.Fraction(weight, dry, soaked) : null;
        double? level = row.Number("level") is >= MoistureScale.Driest and <= MoistureScale.Wettest and { } graded ? graded : null;
        return new(
            row.At,
            known,
            row.Text("pot"),
            row.Signed(),
            level,
            fraction is { } f ? PotWeight.LevelOf(f) : null,
            fraction,
            LeafSigns.Of(row.Text("leafState")),
            row.Number("mediumTemperature"));
    }
}
