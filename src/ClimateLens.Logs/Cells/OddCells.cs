using System.Globalization;
using System.Text;
using ClimateLens.Logs.SetAside;

namespace ClimateLens.Logs.Cells;

/// <summary>
/// What a file's columns hold beside plain values: cells that were not read go aside one by one; texts that say "no value" and numbers
/// that cannot be values are counted by text, and reported once for each column at the end of the file. Nothing is passed over in silence.
/// </summary>
/// <param name="aside">Where cells that were not read go.</param>
internal sealed class OddCells(SetAsideLog aside)
{
    // So many distinct texts of a column are named; further ones count together.
    private const int MostTexts = 24;

    private readonly Dictionary<(int Column, CellKind Kind, string Text), Tally> _tallies = [];

    /// <summary>Takes a cell of readings in. True when it counts as not read.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="column">1-based field.</param>
    /// <param name="name">Column in the store.</param>
    /// <param name="cell">What stands there.</param>
    /// <param name="line">1-based line.</param>
    /// <param name="reader">How the column reads.</param>
    public bool Add(CellKind kind, int column, string name, ReadOnlySpan<byte> cell, int line, ValueReader reader)
    {
        if (kind is CellKind.Word or CellKind.Impossible)
        {
            Count(kind, column, name, cell, line);
            return false;
        }

        string expected = kind == CellKind.OtherUnit ? $"a number in {reader.Unit.Code}" : reader.Expected;
        aside.Add(CodeOf(kind, reader.IsSwitch ? ProblemCodes.Switch : ProblemCodes.Number), line, column, cell, expected);
        return true;
    }

    /// <summary>Counts a cell that says "no value", or a value that cannot be.</summary>
    public void Count(CellKind kind, int column, string name, ReadOnlySpan<byte> cell, int line)
    {
        string text = Encoding.UTF8.GetString(CellText.Unwrap(CellText.Trim(cell)));
        if (!_tallies.TryGetValue((column, kind, text), out Tally? tally))
        {
            text = _tallies.Count(t => t.Key.Column == column && t.Key.Kind == kind) < MostTexts ? text : "";
            if (!_tallies.TryGetValue((column, kind, text), out tally))
            {
                _tallies.Add((column, kind, text), tally = new Tally(name, line));
            }
        }

        tally.Count++;
    }

    /// <summary>What is wrong with a cell that is kept aside.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="notRead">The code where it is nothing in particular.</param>
    public static ProblemCode CodeOf(CellKind kind, ProblemCode notRead) => kind switch
    {
        CellKind.OtherDecimal => ProblemCodes.Decimal,
        CellKind.OtherUnit => ProblemCodes.Unit,
        _ => notRead,
    };

    /// <summary>Reports what was counted.</summary>
    public void Report()
    {
        foreach (((int column, CellKind kind, string text), Tally tally) in _tallies.OrderBy(t => t.Key.Column).ThenBy(t => t.Key.Kind).ThenByDescending(t => t.Value.Count).ThenBy(t => t.Key.Text, StringComparer.Ordinal))
        {
            string times = string.Create(CultureInfo.InvariantCulture, $"{(text.Length > 0 ? SafeText.Quote(text) : "other texts")} {tally.Count} times in {tally.Name}");
            if (kind == CellKind.Word)
            {
                aside.Problems.Add(ProblemCodes.NoValue.In(aside.File, tally.Line, column, times, "") with { Count = tally.Count });
            }
            else if (NumericCodes.IsLikely(text, tally.Count))
            {
                string mend = $"If it is one, add missingValues = [{SafeText.Quote(text)}] to the column and import again.";
                aside.Problems.Add(ProblemCodes.MissingCode.In(aside.File, tally.Line, column, times, "", mend) with { Count = tally.Count });
            }
        }
    }

    private sealed class Tally(string name, int line)
    {
        public string Name { get; } = name;

        public int Line { get; } = line;

        public int Count { get; set; }
    }
}
