namespace ClimateLens.Logs.Store.PartFile;

/// <summary>A column of a part.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Type">What its values are.</param>
internal sealed record PartColumn(string Name, PartColumnType Type)
{
    /// <summary>Whether values may be missing.</summary>
    public bool IsOptional => Type == PartColumnType.Number;
}

/// <summary>What the values of a column are, by Parquet's numbers of physical types [PARQUET].</summary>
internal enum PartColumnType
{
    /// <summary>An index: 32 bits.</summary>
    Index = 1,

    /// <summary>A stamp: 64 bits, in microseconds since 1970-01-01T00:00Z.</summary>
    Stamp = 2,

    /// <summary>A double, which may be missing.</summary>
    Number = 5,
}
