using NodaTime;

namespace ClimateLens.HouseSimulator.Output;

/// <summary>A column of an export.</summary>
/// <param name="Header">Text above it.</param>
/// <param name="Channel">Channel that it means, with the sensor after an at sign.</param>
/// <param name="Decimals">Decimals written, 0 or 1.</param>
/// <param name="Values">One a row.</param>
public sealed record LogColumn(string Header, string Channel, int Decimals, double[] Values);

/// <summary>Readings as a maker of exports would hold them before writing.</summary>
public sealed class LogTable(string stampHeader, Instant[] at, IReadOnlyList<LogColumn> columns)
{
    public string StampHeader { get; } = stampHeader;

    /// <summary>Stamps in time order.</summary>
    public Instant[] At { get; } = at;

    public IReadOnlyList<LogColumn> Columns { get; } = columns;

    /// <summary>Rows that never reached a file.</summary>
    public bool[] Removed { get; } = new bool[at.Length];

    /// <summary>Column of a channel.</summary>
    public LogColumn Column(string channel) => Columns.Single(c => c.Channel == channel);
}
