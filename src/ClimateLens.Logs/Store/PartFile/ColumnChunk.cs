namespace ClimateLens.Logs.Store.PartFile;

/// <summary>What the end of a Parquet file says of one column of a row group.</summary>
/// <param name="Column">The column.</param>
/// <param name="Rows">Rows of the group.</param>
/// <param name="Missing">Values that are missing.</param>
/// <param name="Start">Where its pages begin in the file. [bytes]</param>
/// <param name="Data">Where its values begin: behind its dictionary, where it has one. [bytes]</param>
/// <param name="PlainBytes">Length of its pages before they were compressed.</param>
/// <param name="Bytes">Their length in the file.</param>
internal sealed record ColumnChunk(PartColumn Column, int Rows, int Missing, long Start, long Data, long PlainBytes, long Bytes)
{
    /// <summary>First and last of ascending values.</summary>
    public (long First, long Last)? Range { get; init; }

    /// <summary>Whether its values are places in a dictionary.</summary>
    public bool HasDictionary => Data > Start;

    /// <summary>Encodings of its pages.</summary>
    public int[] Encodings => HasDictionary
        ? [(int)PageEncoding.Plain, (int)PageEncoding.Runs, (int)PageEncoding.Dictionary]
        : [(int)PageEncoding.Plain, (int)PageEncoding.Runs];
}
