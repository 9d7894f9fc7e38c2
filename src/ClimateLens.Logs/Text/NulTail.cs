namespace ClimateLens.Logs.Text;

/// <summary>Finds where a text ends and the NUL bytes begin that some loggers write behind it.</summary>
internal static class NulTail
{
    private const int Chunk = 1 << 20;

    /// <summary>Number of NUL bytes at the end. Leaves the stream at its start. [bytes]</summary>
    public static long LengthOf(Stream stream)
    {
        long end = stream.Length;
        byte[]? buffer = null;
        while (end > 0)
        {
            int piece = (int)Math.Min(end, buffer is null ? 1 : Chunk);
            buffer = buffer is null ? new byte[1] : buffer.Length < piece ? new byte[Chunk] : buffer;
            stream.Position = end - piece;
            stream.ReadExactly(buffer, 0, piece);
            int last = buffer.AsSpan(0, piece).LastIndexOfAnyExcept((byte)0);
            end -= piece - last - 1;
            if (last >= 0)
            {
                break;
            }
        }

        stream.Position = 0;
        return stream.Length - end;
    }
}
