using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Cutting;

namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>The marks, the codes for "no value" and the values of a file's columns.</summary>
/// <param name="Marks">Marks of the file.</param>
/// <param name="ColumnMarks">Decimal marks of columns that differ from the file's.</param>
/// <param name="Missing">Codes for "no value".</param>
/// <param name="Columns">Facts of each column.</param>
internal sealed record FileNumbers(MarkGuess Marks, ImmutableDictionary<int, string> ColumnMarks, MissingCodesFound Missing, ImmutableArray<ColumnFacts> Columns)
{
    /// <summary>Judges the numbers of a file.</summary>
    public static FileNumbers Of(Study study, TimeGuess? time)
    {
        bool IsData(int column) => study.Layout.Sorts[column] == CellSort.Number && time?.Has(column) != true;

        int[] data = [.. Enumerable.Range(0, study.Layout.Fields).Where(IsData)];
        MarkGuess marks = MarkVote.Of([.. data.Select(c => study.Numbers[c])]);
        ImmutableDictionary<int, string> own = marks.Decimal is "." or ","
            ? data.Select(c => (Column: c, Mark: MarkVote.OfColumn(study.Numbers[c]))).Where(m => m.Mark is not null && $"{m.Mark}" != marks.Decimal).ToImmutableDictionary(m => m.Column, m => $"{m.Mark}")
            : ImmutableDictionary<int, string>.Empty;
        string MarksOf(int column) => own.GetValueOrDefault(column, marks.Decimal);

        var missing = MissingCodesFound.Of(study, MarksOf, IsData);
        ImmutableArray<ColumnFacts> columns = [.. Enumerable.Range(0, study.Layout.Fields).Select(c => Facts(study, c, MarksOf(c), missing.In(c)))];
        return new FileNumbers(marks, own, missing, columns);
    }

    /// <summary>Facts of a column over given rows only.</summary>
    public ColumnFacts Of(Study study, int column, IEnumerable<Reading.SampleRow> rows)
        => new(column, study.Headers[column], study.Numbers[column], Values(rows, column, ColumnMarks.GetValueOrDefault(column, Marks.Decimal), Missing.In(column)), Missing.In(column));

    private static ColumnFacts Facts(Study study, int column, string marks, IReadOnlyList<string> codes)
        => new(column, study.Headers[column], study.Numbers[column], Values(study.Sample, column, marks, codes), codes);

    private static double[] Values(IEnumerable<Reading.SampleRow> rows, int column, string marks, IReadOnlyList<string> codes)
    {
        double[] numbers = [.. codes.Select(c => SampleNumber.Read(c, marks)).Where(double.IsFinite)];
        return
        [
            .. rows.Select(row =>
            {
                double value = column < row.Cells.Length ? SampleNumber.Read(row.Cells[column], marks) : double.NaN;
                return numbers.Contains(value) ? double.NaN : value;
            }),
        ];
    }
}
