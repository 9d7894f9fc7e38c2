using CsCheck;

namespace ClimateLens.Logs.Tests.Fuzzing;

/// <summary>One change to the bytes of a file: what fuzzing a reader is made of. Places are shares of the length, so that edits shrink well.</summary>
/// <param name="Kind">What is done.</param>
/// <param name="At">Where, as a share of the length in 1/10000.</param>
/// <param name="Length">How many bytes it concerns.</param>
/// <param name="Value">Which of <see cref="Nasty"/>, or which byte.</param>
internal sealed record ByteEdit(ByteEditKind Kind, int At, int Length, int Value)
{
    /// <summary>Any list of one to eight edits.</summary>
    public static Gen<ByteEdit[]> Some { get; } = Gen.Select(
        Gen.Enum<ByteEditKind>(),
        Gen.Int[0, 10_000],
        Gen.OneOf(Gen.Int[1, 4], Gen.Int[1, 200], Gen.Int[60_000, 70_000]),
        Gen.Int[0, 255]).Select((kind, at, length, value) => new ByteEdit(kind, at, length, value)).Array[1, 8];

    private static readonly byte[][] Nasty =
    [
        "\""u8.ToArray(), "\"\""u8.ToArray(), "\n"u8.ToArray(), "\r"u8.ToArray(), "\r\n"u8.ToArray(), ","u8.ToArray(), ";"u8.ToArray(), "\t"u8.ToArray(),
        [0], [0xFF], [0xFE, 0xFF], [0xFF, 0xFE], [0xEF, 0xBB, 0xBF], [0xC3], [0x80], [0xED, 0xA0, 0x80], [0xF4, 0x90, 0x80, 0x80],
        "1e308"u8.ToArray(), "-1e-400"u8.ToArray(), "99999999999999999999"u8.ToArray(), "NaN"u8.ToArray(), "#N/A"u8.ToArray(), "-999"u8.ToArray(),
        "0000-00-00T00:00"u8.ToArray(), "2025-02-29T24:00"u8.ToArray(), "9999-12-31T23:59"u8.ToArray(), "2400"u8.ToArray(), "+14:00"u8.ToArray(),
        "=1+1"u8.ToArray(), "\u202E"u8.ToArray(), "\u2028"u8.ToArray(), "#"u8.ToArray(),
    ];

    /// <summary>Applies the edits one after the other.</summary>
    public static byte[] Apply(byte[] bytes, IEnumerable<ByteEdit> edits) => edits.Aggregate(bytes, (held, edit) => edit.On(held));

    private byte[] On(byte[] bytes)
    {
        int at = (int)((long)At * bytes.Length / 10_000);
        int end = Math.Min(bytes.Length, at + Length);
        return Kind switch
        {
            ByteEditKind.Flip when at < bytes.Length => [.. bytes[..at], (byte)(bytes[at] ^ (1 << (Value % 8))), .. bytes[(at + 1)..]],
            ByteEditKind.Put => [.. bytes[..at], .. Nasty[Value % Nasty.Length], .. bytes[at..]],
            ByteEditKind.Replace => [.. bytes[..at], .. Nasty[Value % Nasty.Length], .. bytes[Math.Min(bytes.Length, at + Nasty[Value % Nasty.Length].Length)..]],
            ByteEditKind.Cut => [.. bytes[..at], .. bytes[end..]],
            ByteEditKind.Double => [.. bytes[..end], .. bytes[at..end], .. bytes[end..]],
            ByteEditKind.Run => [.. bytes[..at], .. Enumerable.Repeat((byte)Value, Length), .. bytes[at..]],
            ByteEditKind.End => bytes[..at],
            _ => bytes,
        };
    }
}

/// <summary>Ways to spoil a file.</summary>
internal enum ByteEditKind
{
    /// <summary>One bit.</summary>
    Flip,

    /// <summary>A nasty text put in.</summary>
    Put,

    /// <summary>A nasty text written over what is there.</summary>
    Replace,

    /// <summary>A piece taken out.</summary>
    Cut,

    /// <summary>A piece said twice.</summary>
    Double,

    /// <summary>One byte over and over.</summary>
    Run,

    /// <summary>The file ends here.</summary>
    End,
}
