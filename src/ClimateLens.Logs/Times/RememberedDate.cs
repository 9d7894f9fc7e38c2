namespace ClimateLens.Logs.Times;

/// <summary>
/// The date of the stamp before and the bytes that it stood in, as far as nothing behind them can change their meaning: neighbours in a file
/// share the date, and reading it again is most of the work.
/// </summary>
/// <param name="parts">How many parts of the pattern the bytes take up; 0 where a pattern does not begin with the whole date.</param>
internal struct RememberedDate(int parts)
{
    private const int MostBytes = 40;

    private readonly byte[] _bytes = new byte[MostBytes];

    /// <summary>How many parts of the pattern the bytes take up.</summary>
    public readonly int Parts => parts;

    /// <summary>Number of bytes; 0 when nothing is remembered.</summary>
    public int Length { get; private set; }

    /// <summary>The date in days since 1970-01-01. [d]</summary>
    public int Days { get; private set; }

    /// <summary>How many parts of a pattern make the date and the mark behind it.</summary>
    public static int PartsOf(StampPart[] parts)
    {
        int last = Array.FindLastIndex(parts, part => part.IsDate);
        int time = Array.FindIndex(parts, part => part.IsHour || part.Letter == 'a');
        if (last < 0 || time < last || last + 1 >= parts.Length)
        {
            return 0;
        }

        // A date whose last digits run into the hour's has an end of its own only where each part has a fixed width.
        bool marked = parts[last + 1].Letter is '\0' or ' ';
        return marked ? last + 2 : Array.TrueForAll(parts[..(last + 1)], part => part.IsFixed) ? last + 1 : 0;
    }

    /// <summary>Whether a text begins with the remembered date.</summary>
    public readonly bool Begins(ReadOnlySpan<byte> text) => Length > 0 && text.StartsWith(_bytes.AsSpan(0, Length));

    /// <summary>Remembers a date.</summary>
    public void Keep(ReadOnlySpan<byte> bytes, int days)
    {
        Length = 0;
        if (bytes.Length <= MostBytes)
        {
            bytes.CopyTo(_bytes);
            (Length, Days) = (bytes.Length, days);
        }
    }

    /// <summary>Forgets it.</summary>
    public void Forget() => Length = 0;
}
