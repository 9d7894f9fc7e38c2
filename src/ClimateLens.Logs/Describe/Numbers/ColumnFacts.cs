using ClimateLens.Logs.Cells;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>What the values of one column are like.</summary>
internal sealed class ColumnFacts
{
    private const int MostDistinct = 400;
    private readonly double[] _sorted;

    /// <summary>Takes the values of the sample.</summary>
    /// <param name="column">0-based column.</param>
    /// <param name="header">Its header.</param>
    /// <param name="tally">What its cells look like, over all rows.</param>
    /// <param name="values">Values of the sampled rows; NaN where there is none.</param>
    /// <param name="codes">Texts of the column that mean "no value".</param>
    public ColumnFacts(int column, HeaderText header, NumberTally tally, double[] values, IReadOnlyList<string> codes)
    {
        Column = column;
        Header = header;
        Tally = tally;
        Values = values;
        Codes = codes;
        _sorted = [.. values.Where(v => !double.IsNaN(v)).Order()];
        Distinct = _sorted.Distinct().Take(MostDistinct).Count();
    }

    /// <summary>0-based column.</summary>
    public int Column { get; }

    /// <summary>Its header.</summary>
    public HeaderText Header { get; }

    /// <summary>What its cells look like, over all rows.</summary>
    public NumberTally Tally { get; }

    /// <summary>Values of the sampled rows, in the file's unit; NaN where there is none.</summary>
    public double[] Values { get; }

    /// <summary>Texts of the column that mean "no value".</summary>
    public IReadOnlyList<string> Codes { get; }

    /// <summary>Number of values.</summary>
    public int Count => _sorted.Length;

    /// <summary>Number of different values, up to a bound.</summary>
    public int Distinct { get; }

    /// <summary>Whether nearly all filled cells are numbers or words for "no value".</summary>
    public bool IsNumeric => Tally.Filled > 0 && Tally.Numbers + Known(Tally) >= 0.9 * Tally.Filled && Tally.Numbers > 0;

    /// <summary>Whether there is a value and all are 0 or 1.</summary>
    public bool IsZeroOne => Count > 0 && _sorted[0] is 0 or 1 && _sorted[^1] is 0 or 1 && Distinct <= 2;

    /// <summary>Whether the column never changes.</summary>
    public bool IsConstant => Distinct <= 1;

    /// <summary>Smallest value; NaN without any.</summary>
    public double Min => At(0);

    /// <summary>Largest value.</summary>
    public double Max => At(1);

    /// <summary>Median.</summary>
    public double Median => At(0.5);

    /// <summary>The value that a share of all lies below.</summary>
    public double At(double share) => _sorted.Length == 0 ? double.NaN : _sorted[(int)Math.Round(share * (_sorted.Length - 1))];

    /// <summary>Share of the values that lie between two.</summary>
    public double ShareBetween(double low, double high) => Count == 0 ? 0 : _sorted.Count(v => v >= low && v <= high) / (double)Count;

    /// <summary>Whether all values are whole numbers.</summary>
    public bool IsWhole => Array.TrueForAll(_sorted, v => v == Math.Floor(v));

    private static int Known(NumberTally tally) => tally.Texts.Where(t => MissingWords.Contains(t.Key)).Sum(t => t.Value);
}
