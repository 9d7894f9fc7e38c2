using System.Buffers.Binary;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace ClimateLens.Logs.Cells;

/// <summary>
/// Reads plain numbers of at most eight bytes, all digits at once: nearly all that sensors write. Anything else is left to
/// <see cref="NumberCell"/>, which finds the same.
/// </summary>
internal static class ShortNumber
{
    private const int Window = sizeof(ulong);
    private const ulong Zeros = 0x3030_3030_3030_3030;
    private const ulong AboveNine = 0x7676_7676_7676_7676;
    private const ulong HighBits = 0x8080_8080_8080_8080;

    private static ReadOnlySpan<double> Powers => [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7];

    /// <summary>Reads what stands between two places of a row; false where it is no such number.</summary>
    /// <param name="row">The row.</param>
    /// <param name="start">Where it begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="mark">Decimal mark, of less than 128; 0 for none.</param>
    /// <param name="other">The other decimal mark where there are two, else the same.</param>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Digits behind its decimal mark.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool TryRead(ReadOnlySpan<byte> row, int start, int end, byte mark, byte other, out double value, out int decimals)
    {
        (value, decimals) = (0, 0);
        int length = end - start;
        if (length is < 1 or > Window || row.Length < Window)
        {
            return false;
        }

        // The last byte goes to the top; what stands before the number and its sign becomes leading zeros.
        ulong text = end >= Window ? BinaryPrimitives.ReadUInt64LittleEndian(row[(end - Window)..]) : BinaryPrimitives.ReadUInt64LittleEndian(row) << (8 * (Window - end));
        int sign = row[start] == (byte)'-' ? 1 : 0;
        int count = length - sign;
        ulong digits = count == 0 ? 0 : (text ^ Zeros) & (ulong.MaxValue << (8 * (Window - count)));
        ulong others = (digits | (digits + AboveNine)) & HighBits;
        if (others != 0)
        {
            int place = BitOperations.TrailingZeroCount(others) / 8;
            byte found = (byte)(text >> (8 * place));
            if ((others & (others - 1)) != 0 || (found != mark && found != other))
            {
                return false;
            }

            ulong before = (1UL << (8 * place)) - 1;
            digits = ((digits & before) << 8) | (digits & ~((before << 8) | 0xFF));
            decimals = Window - 1 - place;
            count--;
        }

        double number = NumberOf(digits) / Powers[decimals];
        value = sign == 0 ? number : -number;
        return count > 0;
    }

    /// <summary>The number of eight digits, the first in the lowest byte: neighbours are joined to pairs, those to fours, and these.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static uint NumberOf(ulong digits)
    {
        digits = ((digits * ((10 << 8) | 1)) >> 8) & 0x00FF_00FF_00FF_00FF;
        digits = ((digits * ((100 << 16) | 1)) >> 16) & 0x0000_FFFF_0000_FFFF;
        return (uint)((digits * ((10_000UL << 32) | 1)) >> 32);
    }
}
