using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Meaning;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Logs.Describe.Books;

/// <summary>Finds the fields of a kind of record by the words of the headers.</summary>
internal static class RecordFieldsGuess
{
    private static readonly (string Field, Idea[] Ideas)[] Words =
    [
        ("reentryUntil", [Idea.Reentry]), ("activeIngredient", [Idea.ActiveIngredient]), ("end", [Idea.End]), ("minutes", [Idea.Minutes, Idea.Minimum]), ("litres", [Idea.Amount]),
        ("volumePerPot", [Idea.Amount, Idea.Pot]), ("mediumTemperature", [Idea.Temperature]), ("weight", [Idea.Weight]), ("level", [Idea.Level, Idea.Moisture]), ("leafState", [Idea.LeafState, Idea.Leaf]), ("width", [Idea.Width]),
        ("symptom", [Idea.Symptom]), ("count", [Idea.Count]), ("tank", [Idea.Tank]), ("reading", [Idea.Value]), ("readingUnit", [Idea.Unit]), ("rateUnit", [Idea.Unit]), ("rate", [Idea.Rate, Idea.Dosing]),
        ("group", [Idea.Group]), ("purpose", [Idea.Purpose, Idea.Symptom]), ("method", [Idea.Method, Idea.Irrigation]), ("grader", [Idea.Operator]), ("operator", [Idea.Operator]), ("plant", [Idea.Plant, Idea.Pot]),
        ("pot", [Idea.Pot, Idea.Plant]), ("bench", [Idea.Bench]), ("what", [Idea.What, Idea.Treatment, Idea.Variable, Idea.Floor]), ("note", [Idea.Note]), ("house", [Idea.House]),
    ];

    /// <summary>The fields that the columns hold, each once.</summary>
    public static ImmutableArray<RecordColumn> Of(RecordKind kind, Study study, TimeGuess time)
    {
        var columns = ImmutableArray.CreateBuilder<RecordColumn>();
        var taken = new HashSet<string>(StringComparer.Ordinal);
        for (int i = 0; i < study.Headers.Length; i++)
        {
            HeaderText header = study.Headers[i];
            if (time.Source.Has(i) || study.Numbers[i].Filled == 0 || !TryField(kind, header, taken, out RecordField? field))
            {
                continue;
            }

            taken.Add(field.Name);
            string said = string.Join(", ", header.Words.Select(w => $"{w.Word}: {IdeaNames.Of(w.Idea)}").Distinct());
            columns.Add(new RecordColumn(i, field.Name, Sureness.Likely, said, Unit(field, header)));
        }

        return columns.ToImmutable();
    }

    private static bool TryField(RecordKind kind, HeaderText header, HashSet<string> taken, [NotNullWhen(true)] out RecordField? field)
    {
        field = RecordFields.Of(kind).FirstOrDefault(f => !taken.Contains(f.Name) && Squeezed(f.Name) == Squeezed(header.Name) && f.Type != RecordFieldType.Time);
        foreach ((string name, Idea[] ideas) in field is null ? Words : [])
        {
            if (!taken.Contains(name) && RecordFields.TryGet(kind, name, out RecordField? known) && header.HasAny(ideas) && Fits(known, header))
            {
                field = known;
                return true;
            }
        }

        if (field is null && header.Unit is { } unit)
        {
            field = RecordFields.Of(kind).FirstOrDefault(f => !taken.Contains(f.Name) && f.Quantity is { } q && unit.Measures(q));
        }

        if (field is null && HouseTags.Of(header) is null && header.Words.Any(w => w.Word is "kas" or "serre" or "greenhouse" or "serra" or "invernadero") && !taken.Contains("house"))
        {
            RecordFields.TryGet(kind, "house", out field);
        }

        return field is not null;
    }

    private static bool Fits(RecordField field, HeaderText header)
        => field.Quantity is not { } quantity || header.Unit is null || header.Unit.Measures(quantity);

    private static string Squeezed(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    private static UnitGuess? Unit(RecordField field, HeaderText header)
    {
        if (field.Quantity is not { } quantity)
        {
            return null;
        }

        if (header.Unit is { } unit && unit.Measures(quantity))
        {
            return UnitGuess.Is(unit.Code, Sureness.Sure, $"\"{unit.Written}\" in the header");
        }

        string? named = header.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries).FirstOrDefault(w => w.Length > 1 && UnitWords.Of(w)?.Measures(quantity) == true);
        return named is not null ? UnitGuess.Is(UnitWords.Of(named)!.Code, Sureness.Likely, $"\"{named}\" in the header")
            : field.DefaultUnit is { } usual ? UnitGuess.Is(usual, Sureness.Likely, "no unit in the file; the usual one")
            : UnitGuess.Ask("no unit in the file", [.. UnitCatalogue.CodesOf(quantity).Take(3)]);
    }
}
