using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Cutting;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Reading;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Guesses what the rows of a long table are, for each combination of its keys.</summary>
/// <param name="study">The file.</param>
/// <param name="numbers">Its numbers.</param>
/// <param name="keys">Its keys.</param>
internal sealed class LongMeaning(Study study, FileNumbers numbers, LongKeys keys)
{
    /// <summary>More columns than these are not drafted.</summary>
    public const int MostColumns = 200;

    /// <summary>The columns with the rows that they are read from.</summary>
    public ImmutableArray<ColumnFinding> Judge(FileMeaning meaning, Func<int, bool> isTime)
    {
        int[] values = [.. Enumerable.Range(0, study.Headers.Length).Where(c => IsValue(c) && !isTime(c))];
        int value = values.OrderBy(c => study.Headers[c].Has(Idea.Value) ? 0 : 1).FirstOrDefault(-1);
        var columns = new List<(ColumnFacts Facts, HeaderText Header, ImmutableArray<(int, string)> Where)>();
        foreach ((string[] texts, List<SampleRow> rows) in keys.Combinations(study))
        {
            ImmutableArray<(int, string)> where = [.. keys.Keys.Zip(texts)];
            foreach (int column in keys.Variable >= 0 ? value < 0 ? [] : [value] : values)
            {
                if (columns.Count < MostColumns)
                {
                    columns.Add((numbers.Of(study, column, rows), Header(column, where, rows), where));
                }
            }
        }

        return meaning.Judge(columns);
    }

    private bool IsValue(int column) => study.Layout.Sorts[column] == CellSort.Number && !keys.Keys.Contains(column) && numbers.Columns[column].IsNumeric;

    /// <summary>The text of the variable is the header; the unit stands beside it, or in the header of the values.</summary>
    private HeaderText Header(int column, ImmutableArray<(int Column, string Text)> where, List<SampleRow> rows)
    {
        if (keys.Variable < 0)
        {
            return study.Headers[column];
        }

        string unit = keys.Unit >= 0 && keys.Unit < rows[0].Cells.Length ? rows[0].Cells[keys.Unit] : "";
        string sensor = string.Join(' ', where.Where(w => w.Column != keys.Variable).Select(w => w.Text));
        return HeaderText.Of(where.First(w => w.Column == keys.Variable).Text, unit, sensor);
    }
}
