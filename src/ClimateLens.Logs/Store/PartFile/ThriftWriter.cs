using System.Buffers;
using System.Buffers.Binary;
using System.Text;

namespace ClimateLens.Logs.Store.PartFile;

/// <summary>Writes structs in Thrift's compact protocol, in which Parquet describes pages and files [PARQUET].</summary>
internal sealed class ThriftWriter
{
    private const int MostInHead = 14;

    private readonly ArrayBufferWriter<byte> _bytes = new();
    private readonly Stack<int> _outer = [];
    private int _field;

    private enum Kind
    {
        True = 1,
        False = 2,
        Int32 = 5,
        Int64 = 6,
        Text = 8,
        List = 9,
        Struct = 12,
    }

    /// <summary>What was written.</summary>
    public ReadOnlySpan<byte> Written => _bytes.WrittenSpan;

    /// <summary>Begins a struct that is no field: the outermost, or an element of a list.</summary>
    public ThriftWriter Begin()
    {
        _outer.Push(_field);
        _field = 0;
        return this;
    }

    /// <summary>Begins a struct that is a field.</summary>
    public ThriftWriter Begin(int field) => Head(field, Kind.Struct).Begin();

    /// <summary>Ends the struct begun last.</summary>
    public ThriftWriter End()
    {
        _field = _outer.Pop();
        return Byte(0);
    }

    /// <summary>Writes a number.</summary>
    public ThriftWriter Int32(int field, int value) => Head(field, Kind.Int32).Signed(value);

    /// <summary>Writes a number.</summary>
    public ThriftWriter Int64(int field, long value) => Head(field, Kind.Int64).Signed(value);

    /// <summary>Writes a truth value.</summary>
    public ThriftWriter Bool(int field, bool value) => Head(field, value ? Kind.True : Kind.False);

    /// <summary>Writes a text.</summary>
    public ThriftWriter Text(int field, string value) => Head(field, Kind.Text).Bytes(Encoding.UTF8.GetBytes(value));

    /// <summary>Writes a number as its eight bytes, lowest first.</summary>
    public ThriftWriter Eight(int field, long value)
    {
        Span<byte> bytes = stackalloc byte[sizeof(long)];
        BinaryPrimitives.WriteInt64LittleEndian(bytes, value);
        return Head(field, Kind.Text).Bytes(bytes);
    }

    /// <summary>Writes a list of structs.</summary>
    public ThriftWriter Structs<T>(int field, IReadOnlyCollection<T> items, Action<ThriftWriter, T> write)
        => List(field, Kind.Struct, items, item =>
        {
            write(Begin(), item);
            End();
        });

    /// <summary>Writes a list of numbers.</summary>
    public ThriftWriter Numbers(int field, IReadOnlyCollection<int> items) => List(field, Kind.Int32, items, item => Signed(item));

    /// <summary>Writes a list of texts.</summary>
    public ThriftWriter Texts(int field, IReadOnlyCollection<string> items) => List(field, Kind.Text, items, item => Bytes(Encoding.UTF8.GetBytes(item)));

    private ThriftWriter List<T>(int field, Kind kind, IReadOnlyCollection<T> items, Action<T> write)
    {
        Head(field, Kind.List).Byte((Math.Min(items.Count, MostInHead + 1) << 4) | (int)kind);
        if (items.Count > MostInHead)
        {
            Unsigned((ulong)items.Count);
        }

        foreach (T item in items)
        {
            write(item);
        }

        return this;
    }

    /// <summary>The head of a field. Parquet's structs number their fields in steps of fewer than sixteen, upwards.</summary>
    private ThriftWriter Head(int field, Kind kind)
    {
        Byte(((field - _field) << 4) | (int)kind);
        _field = field;
        return this;
    }

    private ThriftWriter Bytes(ReadOnlySpan<byte> bytes)
    {
        Unsigned((ulong)bytes.Length);
        _bytes.Write(bytes);
        return this;
    }

    private ThriftWriter Signed(long value) => Unsigned((ulong)((value << 1) ^ (value >> 63)));

    private ThriftWriter Unsigned(ulong value)
    {
        for (; value > 0x7F; value >>= 7)
        {
            Byte((int)(value & 0x7F) | 0x80);
        }

        return Byte((int)value);
    }

    private ThriftWriter Byte(int value)
    {
        _bytes.GetSpan(1)[0] = (byte)value;
        _bytes.Advance(1);
        return this;
    }
}
