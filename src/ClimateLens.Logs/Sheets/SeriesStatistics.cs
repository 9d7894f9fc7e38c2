using System.Collections.Immutable;
using ClimateLens.Logs.Readings;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Sheets;

/// <summary>Steps, gaps and values of one file of readings, taken in one pass over its rows in ascending time, one row a time.</summary>
/// <param name="names">Column names.</param>
internal sealed class SeriesStatistics(string[] names)
{
    private readonly StepCounts _steps = new();
    private readonly ColumnStatistics[] _columns = [.. names.Select(_ => ColumnStatistics.Empty)];
    private readonly RowSample _sample = new(names.Length);
    private readonly ClockTrack _clock = new(names);
    private int _rows;

    /// <summary>Rows half an hour apart, for a look at the whole file.</summary>
    public ThinRows Thin { get; } = new(names);

    /// <summary>Usual distance of two rows; null for fewer than two. [s]</summary>
    public int? StepSeconds => _steps.Common;

    /// <summary>Share of the distances that are a step long. [1]</summary>
    public double? StepShare(int stepSeconds) => _steps.Share(stepSeconds);

    /// <summary>Distances of more than one and a half steps.</summary>
    public FileGaps Gaps(int stepSeconds) => _steps.Gaps(stepSeconds);

    /// <summary>Takes tidied rows, those of earlier years first.</summary>
    public void Take(YearRows rows)
    {
        _rows += rows.Count;
        Thin.Add(rows, long.MinValue, long.MaxValue);
        for (int row = 0; row < rows.Count; row++)
        {
            _steps.Add(rows.Utc[row]);
        }

        for (int c = 0; c < _columns.Length; c++)
        {
            _columns[c].Add(rows.Columns[c].AsSpan(0, rows.Count));
        }

        _sample.Add(rows.Columns, rows.Count);
        _clock.Add(rows.Utc, rows.Columns, rows.Count);
    }

    /// <summary>Each column.</summary>
    public ImmutableArray<ChannelSummary> Channels() => [.. names.Select(Channel)];

    /// <summary>The clock against the sun.</summary>
    public ClockCheck Clock(NurserySettings nursery, ExportSettings export)
        => SourceClock.Check(nursery, export.Time.Zone, _clock.ToBatch(export.House, export.Name, export.StampSide, export.StepSeconds ?? StepSeconds ?? 1));

    private ChannelSummary Channel(string name, int c)
    {
        ColumnKey key = ColumnKey.Parse(name);
        ColumnStatistics column = _columns[c];
        double missing = _rows == 0 ? 0 : 1 - ((double)column.Count / _rows);
        return column.Count == 0
            ? new(key.Channel, key.Sensor, 0, missing, null, null, null)
            : new(key.Channel, key.Sensor, column.Count, missing, column.Min, _sample.Median(c), column.Max);
    }
}
