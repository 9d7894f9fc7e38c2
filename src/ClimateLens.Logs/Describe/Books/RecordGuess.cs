using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Meaning;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Logs.Describe.Books;

/// <summary>A file that is a book of records.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Sureness">How sure.</param>
/// <param name="Evidence">Why.</param>
/// <param name="Fields">Its columns.</param>
internal sealed record RecordGuess(RecordKind Kind, Sureness Sureness, string Evidence, ImmutableArray<RecordColumn> Fields);

/// <summary>A column of a book of records.</summary>
/// <param name="Column">0-based column.</param>
/// <param name="Field">The field that it holds.</param>
/// <param name="Sureness">How sure.</param>
/// <param name="Evidence">Why.</param>
/// <param name="Unit">Its unit, or null where none is needed.</param>
internal sealed record RecordColumn(int Column, string Field, Sureness Sureness, string Evidence, UnitGuess? Unit);
