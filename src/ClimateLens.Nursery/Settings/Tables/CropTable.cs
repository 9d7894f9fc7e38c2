using System.Collections.Immutable;
using ClimateLens.Nursery.Settings.Reading;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>[[house.crop]] with its spacing steps.</summary>
internal static class CropTable
{
    public static readonly string[] Keys = ["species", "potted", "pinched", "sale", "potDiameterCm", "watchFor", "spacing", "pathogen"];
    public static readonly string[] SpacingKeys = ["from", "pattern", "distanceCm", "rowDistanceCm"];

    private static readonly string[] Patterns = ["square", "triangular", "rectangular"];

    public static CropSettings Read(TableReader crop)
    {
        string species = crop.Text("species", "\"cyclamen\"") ?? "";
        LocalDate? potted = crop.Date("potted");
        LocalDate? pinched = crop.Date("pinched");
        LocalDate? sale = crop.Date("sale");
        After(crop, "pinched", pinched, "potted", potted);
        After(crop, "sale", sale, "potted", potted);
        After(crop, "sale", sale, "pinched", pinched);
        double? pot = crop.Number("potDiameterCm", 2, 100, "centimetres");
        return new CropSettings(species.Trim().ToLowerInvariant(), potted, pinched, sale, pot, Spacing(crop, potted, sale, pot))
        {
            WatchFor = WatchFor(crop),
            Pathogens = [.. crop.Tables("pathogen", "[[house.crop.pathogen]]", PathogenTable.Keys).Select(PathogenTable.Read)],
        };
    }

    private static ImmutableArray<string> WatchFor(TableReader crop)
    {
        if (!crop.Has("watchFor"))
        {
            return [];
        }

        ImmutableArray<string> words = crop.Texts("watchFor", "[\"powderyMildew\"]");
        foreach (string word in words.Where(w => w != "powderyMildew"))
        {
            crop.Faults.Error(FaultCodes.Choice, crop.PlaceOf("watchFor"), $"{Problems.Excerpt.Quoted(word)} cannot be watched for", "powderyMildew", "write watchFor = [\"powderyMildew\"], or take it out; grey mould is always watched for.");
        }

        return words;
    }

    private static ImmutableArray<SpacingStep> Spacing(TableReader crop, LocalDate? potted, LocalDate? sale, double? potDiameterCm)
    {
        List<SpacingStep> steps = [];
        LocalDate? before = null;
        foreach (TableReader table in crop.Tables("spacing", "[[house.crop.spacing]]", SpacingKeys))
        {
            LocalDate? from = table.Date("from", "2025-08-04");
            After(table, "from", from, "potted", potted);
            if (from is { } day && sale is { } end && day > end)
            {
                table.Faults.Error(FaultCodes.Order, table.PlaceOf("from"), $"from = {Show(day)} is after sale = {Show(end)}", "", "look at both dates again.");
            }

            if (from <= before)
            {
                table.Faults.Error(FaultCodes.Order, table.PlaceOf("from"), $"from = {Show(from.Value)} is not after the step before it, {Show(before.Value)}", "", "write the spacing steps in the order of their dates.");
            }

            before = from ?? before;
            steps.Add(Step(table, from ?? default, potDiameterCm));
        }

        return [.. steps];
    }

    private static SpacingStep Step(TableReader table, LocalDate from, double? potDiameterCm)
    {
        string pattern = table.Choice("pattern", Patterns, "\"square\"") ?? "";
        double? distance = table.Number("distanceCm", 2, 300, "centimetres", "14");
        double? rowDistance = table.Number("rowDistanceCm", 2, 300, "centimetres", pattern == "rectangular" ? "20" : null);
        if (pattern is "square" or "triangular")
        {
            table.NotHere("rowDistanceCm", $"has no meaning in a {pattern} pattern", "take it out, or write pattern = \"rectangular\"");
        }

        Narrow("distanceCm", distance);
        Narrow("rowDistanceCm", rowDistance);
        return new SpacingStep(from, pattern, distance ?? 0, rowDistance);

        void Narrow(string key, double? cm)
        {
            if (cm < potDiameterCm)
            {
                table.Faults.Warning(FaultCodes.Spacing, table.PlaceOf(key), $"{key} = {NumberKeys.Show(cm.Value)} is less than the pot's {NumberKeys.Show(potDiameterCm.Value)} cm", "centre to centre, at least the pot's width", "measure from pot centre to pot centre.");
            }
        }
    }

    private static void After(TableReader table, string key, LocalDate? date, string earlierKey, LocalDate? earlier)
    {
        if (date < earlier)
        {
            table.Faults.Error(FaultCodes.Order, table.PlaceOf(key), $"{key} = {Show(date.Value)} is before {earlierKey} = {Show(earlier.Value)}", "", "look at both dates again.");
        }
    }

    private static string Show(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
