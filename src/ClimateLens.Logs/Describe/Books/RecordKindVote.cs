using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Cutting;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Logs.Describe.Books;

/// <summary>Tells books of records from readings by the words of their headers.</summary>
internal static class RecordKindVote
{
    private const double RegularSteps = 0.9;

    private static readonly Idea[] Climate =
        [Idea.Humidity, Idea.VapourPressureDeficit, Idea.HumidityDeficit, Idea.CarbonDioxide, Idea.Radiation, Idea.Vent, Idea.Screen, Idea.Wind, Idea.DewPoint, Idea.SetPoint];

    /// <summary>The kind with the words that speak for it; null for readings.</summary>
    public static (RecordKind Kind, string Evidence)? Of(Study study, TimeGuess time, HeaderText title)
    {
        HeaderText[] headers = [.. study.Headers];
        bool regular = time.Tally.Order.UsualStep() is { Micros: > 0 and < 43_200_000_000, Share: > RegularSteps } && time.Tally.Read > 20;
        if (headers.Count(h => h.HasAny(Climate)) > 1)
        {
            return null;
        }

        bool Has(params Idea[] ideas) => headers.Any(h => h.HasAny(ideas));
        bool Title(params Idea[] ideas) => title.HasAny(ideas);
        bool texts = study.Layout.Sorts.Any(s => s == CellSort.Text);

        (RecordKind Kind, bool Fits, string Why)[] kinds =
        [
            (RecordKind.Floors, Title(Idea.Floor) && Has(Idea.What, Idea.Treatment), "floor in the title or name, and what was done"),
            (RecordKind.Treatments, Has(Idea.ActiveIngredient, Idea.Reentry) || ((Has(Idea.Treatment) || Title(Idea.Treatment)) && Has(Idea.What, Idea.Rate, Idea.Purpose)), "active ingredient, treatment or re-entry"),
            (RecordKind.Scouting, Has(Idea.Symptom) && Has(Idea.Count, Idea.Level), "symptom and count"),
            (RecordKind.PlantWidths, Has(Idea.Width) && (Has(Idea.Plant, Idea.Pot) || Title(Idea.Plant, Idea.Width)), "plant and width"),
            (RecordKind.PotChecks, Has(Idea.Pot) && Has(Idea.Level, Idea.Weight, Idea.LeafState, Idea.Moisture), "pot and level or weight"),
            (RecordKind.Waterings, !regular && (Has(Idea.Minutes, Idea.End) || HasMinutes(headers)) && (Has(Idea.Irrigation, Idea.Amount, Idea.Method, Idea.Water) || Title(Idea.Irrigation)), "end or minutes, and litres, method or water"),
            (RecordKind.Waterings, !regular && Title(Idea.Irrigation) && Has(Idea.Amount, Idea.Method, Idea.Bench), "watering in the title or name"),
            (RecordKind.Tanks, Has(Idea.Tank) && Has(Idea.Value, Idea.Conductivity, Idea.Acidity, Idea.What), "tank and reading"),
            (RecordKind.Floors, Has(Idea.Floor) && Has(Idea.What, Idea.Treatment), "floor and what was done"),
        ];
        (RecordKind Kind, bool Fits, string Why) found = kinds.FirstOrDefault(k => k.Fits && (texts || k.Kind is RecordKind.Waterings or RecordKind.PlantWidths or RecordKind.PotChecks));
        return found.Fits ? (found.Kind, $"header words: {found.Why}") : null;
    }

    private static bool HasMinutes(HeaderText[] headers) => headers.Any(h => h.Unit?.Code is "min" or "s" or "h" || h.Words.Any(w => w.Word is "min" or "duration"));
}
