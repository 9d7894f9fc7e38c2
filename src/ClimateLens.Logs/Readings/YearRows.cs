namespace ClimateLens.Logs.Readings;

/// <summary>
/// The readings of one source in one UTC year, columnar. While a file is read it grows in file order; once tidied it
/// is in ascending time without repeats. Arrays may be longer than <see cref="Count"/>.
/// </summary>
/// <param name="names">Column names in ordinal order.</param>
internal sealed class YearRows(string[] names)
{
    private const int FirstCapacity = 1024;

    /// <summary>Column names in ordinal order.</summary>
    public string[] Names { get; } = names;

    /// <summary>Number of rows.</summary>
    public int Count { get; set; }

    /// <summary>Stamps. [µs since 1970-01-01T00:00Z]</summary>
    public long[] Utc { get; set; } = [];

    /// <summary>File that each row came from, as an index into the source's list of files.</summary>
    public int[] File { get; set; } = [];

    /// <summary>1-based line in that file; 0 for rows out of the store, where lines are not kept.</summary>
    public int[] Line { get; set; } = [];

    /// <summary>Values by column, NaN for missing.</summary>
    public double[][] Columns { get; set; } = [.. names.Select(_ => Array.Empty<double>())];

    /// <summary>Adds a row.</summary>
    public void Append(long utc, int file, int line, ReadOnlySpan<double> values)
    {
        if (Count == Utc.Length)
        {
            Grow(Math.Max(FirstCapacity, Count + (Count / 2)));
        }

        Utc[Count] = utc;
        File[Count] = file;
        Line[Count] = line;
        for (int c = 0; c < values.Length; c++)
        {
            Columns[c][Count] = values[c];
        }

        Count++;
    }

    /// <summary>Makes room for so many rows.</summary>
    public void Grow(int capacity)
    {
        Utc = Grown(Utc, capacity);
        File = Grown(File, capacity);
        Line = Grown(Line, capacity);
        for (int c = 0; c < Columns.Length; c++)
        {
            Columns[c] = Grown(Columns[c], capacity);
        }
    }

    /// <summary>Copies a row of these columns onto another place; the other columns of that place stay.</summary>
    public void Move(int from, int to)
    {
        Utc[to] = Utc[from];
        File[to] = File[from];
        Line[to] = Line[from];
        foreach (double[] column in Columns)
        {
            column[to] = column[from];
        }
    }

    private static T[] Grown<T>(T[] old, int capacity)
    {
        Array.Resize(ref old, capacity);
        return old;
    }
}
