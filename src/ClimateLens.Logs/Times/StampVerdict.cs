namespace ClimateLens.Logs.Times;

/// <summary>Which format each row of a file takes.</summary>
/// <param name="choices">By row: the place of its format, or one of the two words below.</param>
/// <param name="formats">Number of formats.</param>
/// <param name="newestFirst">Whether the file runs backwards.</param>
/// <param name="stepMicros">Usual step. [µs]</param>
internal sealed class StampVerdict(byte[] choices, int formats, bool newestFirst, long stepMicros)
{
    /// <summary>The row has two meanings and the order of the rows does not tell which.</summary>
    public const byte Undecided = 255;

    /// <summary>No format reads the row.</summary>
    public const byte Unreadable = 254;

    /// <summary>By row: the place of its format.</summary>
    public ReadOnlySpan<byte> Choices => choices;

    /// <summary>How many rows each format took.</summary>
    public IReadOnlyList<int> RowsByFormat { get; } = [.. Enumerable.Range(0, formats).Select(f => choices.AsSpan().Count((byte)f))];

    /// <summary>How many rows stay undecided.</summary>
    public int UndecidedRows { get; } = choices.AsSpan().Count(Undecided);

    /// <summary>How many rows no format reads.</summary>
    public int UnreadableRows { get; } = choices.AsSpan().Count(Unreadable);

    /// <summary>Whether the file runs backwards.</summary>
    public bool NewestFirst => newestFirst;

    /// <summary>Usual step. [µs]</summary>
    public long StepMicros => stepMicros;
}
