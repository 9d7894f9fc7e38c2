using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Logs.Cells;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>What is worth knowing of a file beside the keys.</summary>
internal static class FileNotes
{
    private const int WordsShown = 4;

    /// <summary>The notes.</summary>
    public static ImmutableArray<string> Of(Study study, TimeGuess time, FileNumbers numbers)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        if (!study.Layout.Titles.IsEmpty)
        {
            notes.Add($"above the names stands {string.Join(" | ", study.Layout.Titles.Take(3).Select(Excerpt.Quoted))}");
        }

        if (study.OddCount > 0)
        {
            string lines = string.Join("; ", study.Odd.Select(line => string.Create(CultureInfo.InvariantCulture, $"line {line.Number} {Excerpt.Quoted(line.Text.Trim())}")));
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"{study.OddCount} lines below the header look unlike the rows of data: {lines}"));
        }

        if (time.Order.NewestFirst)
        {
            notes.Add("the newest row stands first");
        }

        if (time.Share < 1 && time.Tally.FirstFailure is { } failure)
        {
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"{(1 - time.Share) * 100:0.##} % of the rows have another time, such as {Excerpt.Quoted(failure)}"));
        }

        if (study.Rows > time.Tally.Rows)
        {
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"rows without a whole time of their own: {study.Rows - time.Tally.Rows} of {study.Rows}; the import sets them aside"));
        }

        notes.AddRange(Words(study, numbers));
        if (study.IsCut)
        {
            notes.Add("only the first 256 MiB of a file were looked at");
        }

        return notes.ToImmutable();
    }

    /// <summary>Texts in columns of numbers that mean nothing known.</summary>
    private static IEnumerable<string> Words(Study study, FileNumbers numbers)
    {
        foreach (ColumnFacts column in numbers.Columns.Where(c => c.IsNumeric))
        {
            string[] unknown = [.. column.Tally.Texts.Keys.Where(t => !MissingWords.Contains(t)).Take(WordsShown).Select(Excerpt.Quoted)];
            if (unknown.Length > 0)
            {
                yield return $"{Excerpt.Quoted(study.Headers[column.Column].Raw)} also holds {string.Join(", ", unknown)}; if that means \"no value\", add it to missingValues";
            }
        }
    }
}
