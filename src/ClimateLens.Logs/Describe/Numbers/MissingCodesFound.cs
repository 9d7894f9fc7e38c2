using System.Collections.Immutable;
using System.Globalization;

namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>Numbers that mean "no value": those of the whole file and those of single columns. Words need no mention, the import knows them.</summary>
/// <param name="Everywhere">For the export, with how often each stands.</param>
/// <param name="ByColumn">For single columns, by 0-based column.</param>
internal sealed record MissingCodesFound(ImmutableArray<(string Text, int Count)> Everywhere, ImmutableDictionary<int, ImmutableArray<string>> ByColumn)
{
    private const double Apart = 0.5;
    private const int MostCodes = 8; // a column of serial numbers or stamps has more

    /// <summary>Finds the codes of a file.</summary>
    /// <param name="study">The file.</param>
    /// <param name="marks">Decimal marks by column.</param>
    /// <param name="isData">Whether a column holds values.</param>
    public static MissingCodesFound Of(Study study, Func<int, string> marks, Func<int, bool> isData)
    {
        int[] columns = [.. Enumerable.Range(0, study.Layout.Fields).Where(isData)];
        var spans = columns.ToDictionary(c => c, c => Span(study, c, marks(c)));
        var numbers = new Dictionary<double, List<(int Column, string Text, int Count)>>();
        foreach (int column in columns)
        {
            NumberTally tally = study.Numbers[column];
            foreach ((string text, int count) in tally.Suspects.Where(_ => tally.Suspects.Count <= MostCodes))
            {
                double value = SampleNumber.Read(text, marks(column));
                if (!double.IsNaN(value) && IsApart(value, spans[column], count))
                {
                    numbers.TryAdd(value, []);
                    numbers[value].Add((column, text, count));
                }
            }
        }

        return Divide(numbers, columns, spans);
    }

    /// <summary>A code of several columns that is a value of none is one of the file.</summary>
    private static MissingCodesFound Divide(
        Dictionary<double, List<(int Column, string Text, int Count)>> numbers, int[] columns, Dictionary<int, (double Low, double High)> spans)
    {
        var everywhere = new List<(string Text, int Count)>();
        var single = new Dictionary<int, List<string>>();
        foreach ((double value, List<(int Column, string Text, int Count)> places) in numbers.OrderBy(n => n.Key))
        {
            bool elsewhere = columns.Any(c => value >= spans[c].Low && value <= spans[c].High);
            bool negative = value <= -99;
            if (!elsewhere && (places.Count > 1 || negative))
            {
                everywhere.Add((places[0].Text, places.Sum(p => p.Count)));
                continue;
            }

            foreach ((int column, string text, int _) in places)
            {
                single.TryAdd(column, []);
                single[column].Add(text);
            }
        }

        return new MissingCodesFound([.. everywhere], single.ToImmutableDictionary(s => s.Key, s => s.Value.ToImmutableArray()));
    }

    /// <summary>The values of a column without those that may be codes.</summary>
    private static (double Low, double High) Span(Study study, int column, string marks)
    {
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (Reading.SampleRow row in study.Sample)
        {
            string cell = column < row.Cells.Length ? row.Cells[column] : "";
            double value = SampleNumber.Read(cell, marks);
            if (!double.IsNaN(value) && !SentinelCodes.IsKnown(value))
            {
                low = Math.Min(low, value);
                high = Math.Max(high, value);
            }
        }

        return (low, high);
    }

    private static bool IsApart(double value, (double Low, double High) span, int count)
    {
        if (double.IsInfinity(span.Low))
        {
            return value < -98 || Math.Abs(value) >= 6553;
        }

        double range = Math.Max(1, span.High - span.Low);
        return value < span.Low - (Apart * range) - 1 || (value > span.High + (Apart * range) + 1 && (count > 1 || value > 10 * Math.Max(1, Math.Abs(span.High))));
    }

    /// <summary>The codes as a comment.</summary>
    public string Evidence() => string.Join(", ", Everywhere.Select(e => string.Create(CultureInfo.InvariantCulture, $"\"{e.Text}\" {e.Count} times")));

    /// <summary>The codes that count in a column.</summary>
    public IReadOnlyList<string> In(int column) => [.. Everywhere.Select(e => e.Text), .. ByColumn.GetValueOrDefault(column, [])];
}
