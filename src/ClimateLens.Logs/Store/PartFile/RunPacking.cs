using System.Buffers.Binary;

namespace ClimateLens.Logs.Store.PartFile;

/// <summary>Parquet's hybrid of runs and packed bits [PARQUET]: all numbers as one run of packed bits.</summary>
internal static class RunPacking
{
    /// <summary>Most bytes that numbers take.</summary>
    public static int MostBytes(int numbers, int bits) => (((numbers / 8) + 1) * bits) + 8;

    /// <summary>Writes numbers of so many bits, lowest bit first; answers with the bytes written.</summary>
    public static int Pack(ReadOnlySpan<int> numbers, int bits, Span<byte> into)
    {
        int eights = (numbers.Length + 7) / 8;
        int at = Head(((uint)eights << 1) | 1, into);
        int end = at + (eights * bits);
        ulong held = 0;
        int heldBits = 0;
        foreach (int number in numbers)
        {
            held |= (ulong)(uint)number << heldBits;
            heldBits += bits;
            if (heldBits >= 32)
            {
                BinaryPrimitives.WriteUInt32LittleEndian(into[at..], (uint)held);
                (at, held, heldBits) = (at + 4, held >> 32, heldBits - 32);
            }
        }

        for (; at < end; at++)
        {
            (into[at], held) = ((byte)held, held >> 8);
        }

        return end;
    }

    private static int Head(uint value, Span<byte> into)
    {
        int at = 0;
        for (; value > 0x7F; value >>= 7)
        {
            into[at++] = (byte)(value | 0x80);
        }

        into[at] = (byte)value;
        return at + 1;
    }
}
