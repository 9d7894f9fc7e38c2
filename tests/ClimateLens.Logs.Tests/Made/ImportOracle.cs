using ClimateLens.Nursery;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Tests.Made;

/// <summary>
/// Holds what the store has of a made export to what was written: each cell has its value at its instant, or its line was set aside with
/// a reason; nothing else is there.
/// </summary>
internal sealed class ImportOracle
{
    /// <summary>Reasons for which a sound row may go aside, whole or in part: it could as well be unsound.</summary>
    private static readonly string[] Doubts = ["import.cutShort", "import.timeTwice", "import.timeOrder"];

    private readonly MadeExport _made;
    private readonly ILookup<int, string> _aside;
    private readonly (MadeColumn Made, string Key)[] _columns;
    private readonly Dictionary<long, int> _index;
    private readonly ReadingBatch? _batch;
    private readonly List<string> _faults = [];

    private ImportOracle(MadeExport made, IEnumerable<(MadeColumn Made, string Key)> columns, HouseInput input, IEnumerable<(int Line, string Code)> aside)
    {
        _made = made;
        _columns = [.. columns];
        _aside = aside.ToLookup(a => a.Line, a => a.Code);
        _batch = input.Batches.Length == 0 ? null : Assert.Single(input.Batches);
        _index = (_batch?.UtcMicros.Select((t, i) => (t, i)) ?? []).ToDictionary(p => p.t, p => p.i);
    }

    /// <summary>Compares; says what is wrong.</summary>
    /// <param name="made">What was written.</param>
    /// <param name="columns">Columns that were to be read, with their names in the store.</param>
    /// <param name="input">What the store has.</param>
    /// <param name="aside">Lines of what was set aside, with the reasons.</param>
    public static IReadOnlyList<string> Faults(MadeExport made, IEnumerable<(MadeColumn Made, string Key)> columns, HouseInput input, IEnumerable<(int Line, string Code)> aside)
    {
        var oracle = new ImportOracle(made, columns, input, aside);
        oracle.Compare();
        return oracle._faults;
    }

    private void Compare()
    {
        HashSet<long> known = [.. _made.Rows.Select(r => r.Micros)];
        foreach (long stray in _index.Keys.Where(t => !known.Contains(t) && HasValues(_index[t])))
        {
            _faults.Add($"a row at {At(stray)} that nobody wrote");
        }

        for (int row = 0; row < _made.Rows.Length; row++)
        {
            Compare(row);
        }
    }

    private void Compare(int row)
    {
        bool lost = false;
        foreach ((MadeColumn column, string key) in _columns)
        {
            double read = ValueOf(row, key);
            double written = column.Values[row];
            if (!double.IsNaN(read) && !(Math.Abs(read - written) <= 1e-9 * Math.Max(1, Math.Abs(written))))
            {
                _faults.Add($"line {Lines(row)} at {At(_made.Rows[row].Micros)}: {column.Header} is {read}, was {written}{(_made.Rows[row].IsTorn ? " (torn)" : "")}");
            }

            lost |= double.IsNaN(read) && !double.IsNaN(written);
        }

        MadeRow made = _made.Rows[row];
        if (lost && !made.IsTorn && !_aside[made.Lines[0]].Any(Doubts.Contains) && _aside.Contains(made.Lines[0]))
        {
            _faults.Add($"line {Lines(row)} at {At(made.Micros)} is sound and was set aside for {string.Join(", ", _aside[made.Lines[0]])}");
        }

        if (lost && !made.Lines.All(_aside.Contains))
        {
            _faults.Add($"line {Lines(row)} at {At(made.Micros)} is lost in whole or in part and was not set aside{(made.IsTorn ? " (torn)" : "")}");
        }
    }

    private double ValueOf(int row, string key)
        => _index.TryGetValue(_made.Rows[row].Micros, out int place) && _batch!.Columns.TryGetValue(key, out double[]? values) ? values[place] : double.NaN;

    private bool HasValues(int place) => _batch!.Columns.Any(c => !double.IsNaN(c.Value[place]));

    private string Lines(int row) => string.Join('+', _made.Rows[row].Lines);

    private static string At(long micros) => DateTime.UnixEpoch.AddTicks(micros * 10).ToString("s", System.Globalization.CultureInfo.InvariantCulture);
}
