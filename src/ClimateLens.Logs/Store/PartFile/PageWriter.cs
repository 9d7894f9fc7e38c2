using ZstdSharp;

namespace ClimateLens.Logs.Store.PartFile;

/// <summary>Compresses pages of a Parquet file and writes each behind its header.</summary>
/// <param name="stream">The file, at its start.</param>
internal sealed class PageWriter(Stream stream) : IDisposable
{
    private const int Level = 1;
    private const int DataPage = 0;
    private const int DictionaryPage = 2;

    private readonly Compressor _zstd = new(Level);
    private byte[] _packed = [];

    /// <summary>Place in the file. [bytes]</summary>
    public long Position { get; private set; }

    /// <summary>Bytes of all pages with their headers, before they were compressed.</summary>
    public long PlainBytes { get; private set; }

    /// <summary>Writes a page of values.</summary>
    /// <param name="page">Its bytes.</param>
    /// <param name="values">Number of values, missing ones among them.</param>
    /// <param name="encoding">How they are written.</param>
    public void Data(ReadOnlySpan<byte> page, int values, PageEncoding encoding)
        => Write(DataPage, page, header => header.Begin(5).Int32(1, values).Int32(2, (int)encoding).Int32(3, (int)PageEncoding.Runs).Int32(4, (int)PageEncoding.Runs).End());

    /// <summary>Writes the different values of a column.</summary>
    public void Dictionary(ReadOnlySpan<byte> page, int values)
        => Write(DictionaryPage, page, header => header.Begin(7).Int32(1, values).Int32(2, (int)PageEncoding.Plain).End());

    /// <summary>Writes bytes that are no page.</summary>
    public void Raw(ReadOnlySpan<byte> bytes)
    {
        stream.Write(bytes);
        Position += bytes.Length;
    }

    private void Write(int type, ReadOnlySpan<byte> page, Action<ThriftWriter> rest)
    {
        int most = Compressor.GetCompressBound(page.Length);
        _packed = _packed.Length < most ? new byte[most] : _packed;
        int length = _zstd.Wrap(page, _packed);
        ThriftWriter header = new ThriftWriter().Begin().Int32(1, type).Int32(2, page.Length).Int32(3, length);
        rest(header);
        header.End();
        Raw(header.Written);
        Raw(_packed.AsSpan(0, length));
        PlainBytes += header.Written.Length + page.Length;
    }

    /// <summary>No more pages follow.</summary>
    public void Dispose()
    {
        _zstd.Dispose();
        _packed = [];
    }
}
