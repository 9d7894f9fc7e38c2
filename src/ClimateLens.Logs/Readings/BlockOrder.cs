namespace ClimateLens.Logs.Readings;

/// <summary>Order of time within one block.</summary>
internal static class BlockOrder
{
    /// <summary>Whether each row is later than the one before it.</summary>
    public static bool IsAscending(YearRows block)
    {
        ReadOnlySpan<long> utc = block.Utc.AsSpan(0, block.Count);
        for (int i = 1; i < utc.Length; i++)
        {
            if (utc[i] <= utc[i - 1])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Sorts by time; rows of one time keep their order.</summary>
    public static void Sort(YearRows block)
    {
        int count = block.Count;
        var keys = new (long Utc, int Row)[count];
        for (int i = 0; i < count; i++)
        {
            keys[i] = (block.Utc[i], i);
        }

        Array.Sort(keys);
        block.Utc = Permuted(block.Utc, keys);
        block.File = Permuted(block.File, keys);
        block.Line = Permuted(block.Line, keys);
        for (int c = 0; c < block.Columns.Length; c++)
        {
            block.Columns[c] = Permuted(block.Columns[c], keys);
        }
    }

    private static T[] Permuted<T>(T[] old, (long Utc, int Row)[] keys)
    {
        var sorted = new T[keys.Length];
        for (int i = 0; i < sorted.Length; i++)
        {
            sorted[i] = old[keys[i].Row];
        }

        return sorted;
    }
}
