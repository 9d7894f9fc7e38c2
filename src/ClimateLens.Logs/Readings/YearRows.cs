namespace ClimateLens.Logs.Readings;

/// <summary>
/// Readings of one source within one UTC year, columnar: a block of a file in the order of its rows, or rows in ascending
/// time. Arrays may be longer than <see cref="Count"/>.
/// </summary>
/// <param name="names">Column names in ordinal order.</param>
internal sealed class YearRows(string[] names)
{
    private const int FirstCapacity = 256;

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

    /// <summary>Memory that the arrays take. [bytes]</summary>
    public long Bytes => (long)Utc.Length * BytesOfRow(Columns.Length);

    /// <summary>Memory of one row. [bytes]</summary>
    public static int BytesOfRow(int columns) => sizeof(long) + (2 * sizeof(int)) + (columns * sizeof(double));

    /// <summary>Adds a row.</summary>
    public void Append(long utc, int file, int line, ReadOnlySpan<double> values)
    {
        int at = Next();
        Utc[at] = utc;
        File[at] = file;
        Line[at] = line;
        for (int c = 0; c < values.Length; c++)
        {
            Columns[c][at] = values[c];
        }
    }

    /// <summary>Adds a row of another block; columns that it lacks are missing.</summary>
    /// <param name="from">The block.</param>
    /// <param name="row">The row.</param>
    /// <param name="places">For each column of <paramref name="from"/> its place here.</param>
    public void Append(YearRows from, int row, ReadOnlySpan<int> places)
    {
        int at = Next();
        Utc[at] = from.Utc[row];
        File[at] = from.File[row];
        Line[at] = from.Line[row];
        if (places.Length < Columns.Length)
        {
            foreach (double[] column in Columns)
            {
                column[at] = double.NaN;
            }
        }

        for (int c = 0; c < places.Length; c++)
        {
            Columns[places[c]][at] = from.Columns[c][row];
        }
    }

    /// <summary>Adds a stretch of rows of another block of the same columns.</summary>
    /// <param name="from">The block.</param>
    /// <param name="start">First row.</param>
    /// <param name="count">Number of rows.</param>
    /// <param name="capacity">Rows that there will be in the end.</param>
    public void Append(YearRows from, int start, int count, int capacity)
    {
        if (Count + count > Utc.Length)
        {
            Grow(Math.Min(capacity, Math.Max(Count + count, Count * 4)));
        }

        Array.Copy(from.Utc, start, Utc, Count, count);
        Array.Copy(from.File, start, File, Count, count);
        Array.Copy(from.Line, start, Line, Count, count);
        for (int c = 0; c < Columns.Length; c++)
        {
            Array.Copy(from.Columns[c], start, Columns[c], Count, count);
        }

        Count += count;
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

    /// <summary>Copies a row of these columns onto another place.</summary>
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

    private int Next()
    {
        if (Count == Utc.Length)
        {
            Grow(Math.Max(FirstCapacity, Count * 2));
        }

        return Count++;
    }

    private static T[] Grown<T>(T[] old, int capacity)
    {
        Array.Resize(ref old, capacity);
        return old;
    }
}
