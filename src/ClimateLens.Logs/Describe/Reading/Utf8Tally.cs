using System.Buffers;
using System.Text;

namespace ClimateLens.Logs.Describe.Reading;

/// <summary>Counts, over a stream of bytes, what is sound UTF-8 beyond ASCII and what is not UTF-8 at all.</summary>
internal sealed class Utf8Tally
{
    private readonly byte[] _carry = new byte[4];
    private int _carried;

    /// <summary>Characters beyond ASCII that are sound.</summary>
    public long Sound { get; private set; }

    /// <summary>Bytes that belong to no character.</summary>
    public long Broken { get; private set; }

    /// <summary>Adds a stretch.</summary>
    public void Add(ReadOnlySpan<byte> bytes)
    {
        if (_carried > 0)
        {
            int take = Math.Min(_carry.Length - _carried, bytes.Length);
            bytes[..take].CopyTo(_carry.AsSpan(_carried));
            OperationStatus status = Rune.DecodeFromUtf8(_carry.AsSpan(0, _carried + take), out _, out int used);
            if (status == OperationStatus.NeedMoreData)
            {
                _carried += take;
                return;
            }

            Count(status == OperationStatus.Done);
            int usedHere = Math.Max(0, used - _carried);
            _carried = 0;
            bytes = bytes[usedHere..];
        }

        Walk(bytes);
    }

    /// <summary>Ends the count: a character that was cut off is broken.</summary>
    public void End() => Broken += _carried;

    private void Walk(ReadOnlySpan<byte> bytes)
    {
        while (bytes.Length > 0)
        {
            int ascii = bytes.IndexOfAnyInRange((byte)0x80, (byte)0xFF);
            if (ascii < 0)
            {
                return;
            }

            bytes = bytes[ascii..];
            OperationStatus status = Rune.DecodeFromUtf8(bytes, out _, out int used);
            if (status == OperationStatus.NeedMoreData)
            {
                bytes.CopyTo(_carry);
                _carried = bytes.Length;
                return;
            }

            Count(status == OperationStatus.Done);
            bytes = bytes[used..];
        }
    }

    private void Count(bool sound)
    {
        Sound += sound ? 1 : 0;
        Broken += sound ? 0 : 1;
    }
}
