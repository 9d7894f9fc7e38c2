using System.Buffers.Binary;
using System.Text.Json.Serialization;

namespace ClimateLens.Logs.Store;

/// <summary>
/// What can be told of a part without reading it: a hash of the rows of each half week, so that a week whose rows did not change is known from the
/// ledger alone, however long the part has become behind it.
/// </summary>
/// <param name="Halves">An entry for each half week that has rows, in ascending order: its number, its number of values (int32, little-endian), and eight bytes of the SHA-256 of its rows.</param>
internal sealed record PartTrace(byte[] Halves)
{
    /// <summary>The step of the part where it is beyond doubt, else null. [µs]</summary>
    public long? StepMicros { get; init; }

    /// <summary>Bytes of an entry.</summary>
    public const int EntryBytes = 16;

    /// <summary>Half a week, counted from a Monday 00:00 UTC: a local week of any zone holds one of them whole. [µs]</summary>
    public const long HalfMicros = 84L * 3600 * 1_000_000;

    private const long FirstMonday = -3L * 86400 * 1_000_000; // 1969-12-29

    /// <summary>Number of entries.</summary>
    [JsonIgnore]
    public int Count => Halves.Length / EntryBytes;

    /// <summary>The half week of a stamp.</summary>
    public static int HalfOf(long utc) => (int)Math.Floor((utc - FirstMonday) / (decimal)HalfMicros);

    /// <summary>First stamp of a half week. [µs since 1970-01-01T00:00Z]</summary>
    public static long StartOf(int half) => FirstMonday + (half * HalfMicros);

    /// <summary>The entries of the half weeks that a stretch of time touches.</summary>
    /// <param name="from">Its start. [µs since 1970-01-01T00:00Z]</param>
    /// <param name="to">Its end, not part of it. [µs since 1970-01-01T00:00Z]</param>
    public ReadOnlySpan<byte> Within(long from, long to)
    {
        int start = CountBefore(HalfOf(from));
        int end = to <= from ? start : CountBefore(HalfOf(to - 1) + 1);
        return Halves.AsSpan(start * EntryBytes, (end - start) * EntryBytes);
    }

    /// <summary>The half week of an entry.</summary>
    public static int HalfIn(ReadOnlySpan<byte> entry) => BinaryPrimitives.ReadInt32LittleEndian(entry);

    /// <summary>Number of values of an entry.</summary>
    public static int ValuesIn(ReadOnlySpan<byte> entry) => BinaryPrimitives.ReadInt32LittleEndian(entry[sizeof(int)..]);

    private int CountBefore(int half)
    {
        int low = 0;
        for (int high = Count; low < high;)
        {
            int middle = (low + high) / 2;
            if (HalfIn(Halves.AsSpan(middle * EntryBytes)) < half)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }
}
