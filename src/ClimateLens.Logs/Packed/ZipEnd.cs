using System.Buffers.Binary;

namespace ClimateLens.Logs.Packed;

/// <summary>Reads how many entries a zip archive says that it has, before its list is read into memory [APPNOTE].</summary>
internal static class ZipEnd
{
    private const int EndBytes = 22;
    private const int LongestComment = ushort.MaxValue;
    private static readonly byte[] Mark = [(byte)'P', (byte)'K', 5, 6];

    /// <summary>The number, 65535 for that many or more; null where the end of the archive is not found. Leaves the stream at its start.</summary>
    public static int? CountOf(Stream stream)
    {
        byte[] tail = new byte[Math.Min(stream.Length, EndBytes + LongestComment)];
        stream.Position = stream.Length - tail.Length;
        stream.ReadExactly(tail);
        stream.Position = 0;
        int end = tail.AsSpan().LastIndexOf(Mark);
        return end < 0 || end + EndBytes > tail.Length ? null : BinaryPrimitives.ReadUInt16LittleEndian(tail.AsSpan(end + 10));
    }
}
