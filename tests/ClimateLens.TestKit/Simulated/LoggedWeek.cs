using ClimateLens.Nursery;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.TestKit.Simulated;

/// <summary>What the computer of a simulated house logged in run-in and period, row by row, for faults to be planted in.</summary>
public sealed class LoggedWeek
{
    private readonly HouseInput _input;
    private readonly ReadingBatch _station;

    /// <summary>The logs of a simulated house week.</summary>
    public LoggedWeek(HouseInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        _input = input;
        Batch = input.Batches.Single(b => b.House == input.House.Id);
        _station = input.Batches.Single(b => b.House == ReadingBatch.WholeNursery);
    }

    /// <summary>The house's own batch.</summary>
    public ReadingBatch Batch { get; }

    /// <summary>Whether it logs all of these.</summary>
    public bool Has(IEnumerable<string> columns) => columns.All(Batch.Columns.ContainsKey);

    /// <summary>A logged value. [SI unit of the channel]</summary>
    public double Value(string column, int row) => Batch.Columns[column][row];

    /// <summary>Time of a row since the start of the period. [d]</summary>
    public double Day(int row) => (Instant.FromUnixTimeTicks(Batch.UtcMicros[row] * 10) - _input.Period.Start).TotalDays;

    /// <summary>First row at or after a time since the start of the period. [d]</summary>
    public int RowAt(double day) => Enumerable.Range(0, Batch.UtcMicros.Length).First(row => Day(row) >= day - 1e-9);

    /// <summary>Sun outside at a row. [W/m²]</summary>
    public double RadiationWm2(int row)
    {
        int at = Array.BinarySearch(_station.UtcMicros, Batch.UtcMicros[row]);
        return _station.Columns["globalRadiation"][Math.Min(at < 0 ? ~at : at, _station.UtcMicros.Length - 1)];
    }

    /// <summary>The input with other columns in the house's own batch.</summary>
    public HouseInput With(IReadOnlyDictionary<string, double[]> columns)
        => _input with { Batches = [.. _input.Batches.Select(b => ReferenceEquals(b, Batch) ? b with { Columns = Batch.Columns.SetItems(columns) } : b)] };
}
