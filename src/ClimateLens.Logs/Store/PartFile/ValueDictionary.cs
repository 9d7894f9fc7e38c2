using System.Numerics;

namespace ClimateLens.Logs.Store.PartFile;

/// <summary>
/// The different values of a column in the order of their first appearance, and for each row the place of its value among them. Sensors
/// have few digits: a year of minutes holds some thousand different values, which pack far better and faster than as doubles.
/// </summary>
internal sealed class ValueDictionary
{
    private const int Slots = 1 << 16;

    /// <summary>Most values that are told apart, so that a free slot is always near.</summary>
    private const int Most = Slots / 2;

    private readonly Slot[] _slots = new Slot[Slots];
    private readonly double[] _values = new double[Most];
    private int _round;

    /// <summary>The values.</summary>
    public ReadOnlySpan<double> Values => _values.AsSpan(0, Count);

    /// <summary>Number of values.</summary>
    public int Count { get; private set; }

    /// <summary>Bits that hold a place.</summary>
    public int PlaceBits => Math.Max(1, BitOperations.Log2((uint)Math.Max(1, Count - 1)) + 1);

    /// <summary>Takes a column; false when its values differ too much for this to be worth it.</summary>
    /// <param name="column">The column, without missing values.</param>
    /// <param name="places">Receives the places.</param>
    public bool Take(ReadOnlySpan<double> column, Span<int> places)
    {
        int most = Math.Min(Most, column.Length / 2);
        int round = ++_round; // instead of clearing the slots
        int count = 0;
        Slot[] slots = _slots;
        for (int row = 0; row < column.Length; row++)
        {
            long bits = BitConverter.DoubleToInt64Bits(column[row]); // by bits: minus zero stays what it is
            int at = (int)(((ulong)bits * 0x9E37_79B9_7F4A_7C15) >> 48); // Fibonacci hashing
            while (slots[at].Round == round && slots[at].Bits != bits)
            {
                at = (at + 1) & (Slots - 1);
            }

            if (slots[at].Round != round)
            {
                if (count == most)
                {
                    return false;
                }

                slots[at] = new Slot(bits, count, round);
                _values[count++] = column[row];
            }

            places[row] = slots[at].Place;
        }

        Count = count;
        return count > 0;
    }

    private readonly record struct Slot(long Bits, int Place, int Round);
}
