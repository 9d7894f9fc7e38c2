using ClimateLens.Nursery;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Tests.Made;

/// <summary>
/// Holds what the store has of a made export to what was written: each cell has its value at its instant, or its line was set aside with
/// a reason; nothing else is there.
/// </summary>
internal sealed class ImportOracle
{
    private readonly MadeExport _made;
    private readonly HashSet<int> _aside;
    private readonly Dictionary<long, int> _index;
    private readonly ReadingBatch? _batch;
    private readonly List<string> _faults = [];

    private ImportOracle(MadeExport made, HouseInput input, IEnumerable<int> aside)
    {
        _made = made;
        _aside = [.. aside];
        _batch = input.Batches.Length == 0 ? null : Assert.Single(input.Batches);
        _index = (_batch?.UtcMicros.Select((t, i) => (t, i)) ?? []).ToDictionary(p => p.t, p => p.i);
    }

    /// <summary>Sound rows whose values were set aside, whole or in part.</summary>
    public int SoundRowsAside { get; private set; }

    /// <summary>Compares.</summary>
    /// <param name="made">What was written.</param>
    /// <param name="input">What the store has.</param>
    /// <param name="aside">Lines of what was set aside.</param>
    /// <param name="soundRowsAside">Sound rows whose values were set aside, whole or in part.</param>
    public static IReadOnlyList<string> Faults(MadeExport made, HouseInput input, IEnumerable<int> aside, out int soundRowsAside)
    {
        var oracle = new ImportOracle(made, input, aside);
        oracle.Compare();
        soundRowsAside = oracle.SoundRowsAside;
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
        foreach (MadeColumn column in _made.Columns.Where(c => c.Known != "other"))
        {
            double read = ValueOf(row, column);
            double written = column.Values[row];
            if (!double.IsNaN(read) && !(Math.Abs(read - written) <= 1e-9 * Math.Max(1, Math.Abs(written))))
            {
                _faults.Add($"line {Lines(row)} at {At(_made.Rows[row].Micros)}: {column.Header} is {read}, was {written}{(_made.Rows[row].IsTorn ? " (torn)" : "")}");
            }

            lost |= double.IsNaN(read) && !double.IsNaN(written);
        }

        MadeRow made = _made.Rows[row];
        if (lost && !made.Lines.All(_aside.Contains))
        {
            _faults.Add($"line {Lines(row)} at {At(made.Micros)} is lost in whole or in part and was not set aside{(made.IsTorn ? " (torn)" : "")}");
        }

        SoundRowsAside += lost && !made.IsTorn ? 1 : 0;
    }

    private double ValueOf(int row, MadeColumn column)
        => _index.TryGetValue(_made.Rows[row].Micros, out int place) && _batch!.Columns.TryGetValue(new ColumnKey(column.Known, column.Sensor).ToString(), out var values) ? values[place] : double.NaN;

    private bool HasValues(int place) => _batch!.Columns.Any(c => !double.IsNaN(c.Value[place]));

    private string Lines(int row) => string.Join('+', _made.Rows[row].Lines);

    private static string At(long micros) => DateTime.UnixEpoch.AddTicks(micros * 10).ToString("s", System.Globalization.CultureInfo.InvariantCulture);
}
