using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace ClimateLens.Logs.Store.PartFile;

/// <summary>Writes the columns of a row group of a Parquet file, one file at a time. The same values make the same bytes.</summary>
internal sealed class ColumnWriter
{
    private readonly ValueDictionary _dictionary = new();
    private double[] _known = [];
    private int[] _numbers = [];
    private byte[] _page = [];

    /// <summary>Writes stamps in ascending order. [µs since 1970-01-01T00:00Z]</summary>
    public static ColumnChunk Stamps(PageWriter pages, PartColumn column, ReadOnlySpan<long> stamps)
        => Whole(pages, column, MemoryMarshal.AsBytes(stamps), stamps.Length) with { Range = (stamps[0], stamps[^1]) };

    /// <summary>Writes indexes.</summary>
    public static ColumnChunk Indexes(PageWriter pages, PartColumn column, ReadOnlySpan<int> indexes) => Whole(pages, column, MemoryMarshal.AsBytes(indexes), indexes.Length);

    /// <summary>Writes numbers, as places in a dictionary where that pays; NaN is missing.</summary>
    public ColumnChunk Numbers(PageWriter pages, PartColumn column, ReadOnlySpan<double> rows)
    {
        MakeRoom(rows.Length);
        int known = Known(rows);
        int at = sizeof(int) + RunPacking.Pack(_numbers.AsSpan(0, rows.Length), 1, _page.AsSpan(sizeof(int)));
        BinaryPrimitives.WriteInt32LittleEndian(_page, at - sizeof(int));
        ReadOnlySpan<double> values = _known.AsSpan(0, known);
        (long Position, long PlainBytes) start = (pages.Position, pages.PlainBytes);
        bool packs = _dictionary.Take(values, _numbers);
        if (packs)
        {
            pages.Dictionary(MemoryMarshal.AsBytes(_dictionary.Values), _dictionary.Count);
            _page[at++] = (byte)_dictionary.PlaceBits;
            at += RunPacking.Pack(_numbers.AsSpan(0, known), _dictionary.PlaceBits, _page.AsSpan(at));
        }
        else
        {
            MemoryMarshal.AsBytes(values).CopyTo(_page.AsSpan(at));
            at += known * sizeof(double);
        }

        long data = pages.Position;
        pages.Data(_page.AsSpan(0, at), rows.Length, packs ? PageEncoding.Dictionary : PageEncoding.Plain);
        return new ColumnChunk(column, rows.Length, rows.Length - known, start.Position, data, pages.PlainBytes - start.PlainBytes, pages.Position - start.Position);
    }

    private static ColumnChunk Whole(PageWriter pages, PartColumn column, ReadOnlySpan<byte> values, int rows)
    {
        (long position, long plainBytes) = (pages.Position, pages.PlainBytes);
        pages.Data(values, rows, PageEncoding.Plain);
        return new ColumnChunk(column, rows, 0, position, position, pages.PlainBytes - plainBytes, pages.Position - position);
    }

    private void MakeRoom(int rows)
    {
        if (_numbers.Length < rows)
        {
            _known = new double[rows];
            _numbers = new int[rows];
            _page = new byte[sizeof(int) + RunPacking.MostBytes(rows, 1) + RunPacking.MostBytes(rows, 8 * sizeof(double))];
        }
    }

    /// <summary>Gathers what is not missing, and notes for each row whether it is there.</summary>
    private int Known(ReadOnlySpan<double> rows)
    {
        int known = 0;
        for (int row = 0; row < rows.Length; row++)
        {
            int isKnown = double.IsNaN(rows[row]) ? 0 : 1;
            _known[known] = rows[row];
            _numbers[row] = isKnown;
            known += isKnown;
        }

        return known;
    }
}
