using System.Buffers.Text;
using System.Text;

namespace ClimateLens.Logs.SetAside;

/// <summary>
/// Writes set-aside rows as CSV (RFC 4180, UTF-8): file, line, column, code, text. The text comes back whole: a
/// backslash is <c>\\</c>, a byte that is no text and a control character are <c>\xNN</c>, and a text that a
/// spreadsheet would take for a formula has an apostrophe before it (as has one that starts with an apostrophe).
/// </summary>
/// <param name="stream">Where it goes; closed with this.</param>
/// <param name="file">The export's name.</param>
internal sealed class SetAsideCsv(Stream stream, string file) : IDisposable
{
    private readonly BufferedStream _out = new(stream, 64 << 10);
    private readonly byte[] _file = Quoted(file);
    private bool _started;

    /// <summary>Undoes what is written into the text column.</summary>
    public static byte[] Restore(string text)
    {
        ReadOnlySpan<byte> written = Encoding.UTF8.GetBytes(text);
        written = written.Length > 0 && written[0] == (byte)'\'' ? written[1..] : written;
        var bytes = new List<byte>(written.Length);
        for (int i = 0; i < written.Length; i++)
        {
            if (written[i] != (byte)'\\')
            {
                bytes.Add(written[i]);
            }
            else if (written[i + 1] == (byte)'\\')
            {
                bytes.Add((byte)'\\');
                i++;
            }
            else
            {
                bytes.Add(Convert.FromHexString(Encoding.ASCII.GetString(written.Slice(i + 2, 2)))[0]);
                i += 3;
            }
        }

        return [.. bytes];
    }

    /// <summary>Writes one row; line 0 stays empty.</summary>
    public void Write(int line, int? column, string code, ReadOnlySpan<byte> text)
    {
        if (!_started)
        {
            _out.Write("file,line,column,code,text\r\n"u8);
            _started = true;
        }

        _out.Write(_file);
        WriteNumber(line > 0 ? line : null);
        WriteNumber(column);
        _out.WriteByte((byte)',');
        _out.Write(Encoding.ASCII.GetBytes(code));
        _out.Write(",\""u8);
        WriteText(text);
        _out.Write("\"\r\n"u8);
    }

    /// <inheritdoc/>
    public void Dispose() => _out.Dispose();

    private static byte[] Quoted(string text) => Encoding.UTF8.GetBytes($"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"");

    private void WriteNumber(int? number)
    {
        Span<byte> digits = stackalloc byte[12];
        digits[0] = (byte)',';
        int written = 0;
        if (number is int value)
        {
            _ = Utf8Formatter.TryFormat(value, digits[1..], out written);
        }

        _out.Write(digits[..(written + 1)]);
    }

    private void WriteText(ReadOnlySpan<byte> text)
    {
        if (text.Length > 0 && "=+-@'\t"u8.Contains(text[0]))
        {
            _out.WriteByte((byte)'\'');
        }

        while (text.Length > 0)
        {
            int taken = 1;
            if (text[0] >= 128 && Rune.DecodeFromUtf8(text, out _, out int length) == System.Buffers.OperationStatus.Done)
            {
                taken = length;
                _out.Write(text[..taken]);
            }
            else
            {
                WriteByte(text[0]);
            }

            text = text[taken..];
        }
    }

    private void WriteByte(byte b)
    {
        switch (b)
        {
            case (byte)'"':
                _out.Write("\"\""u8);
                break;
            case (byte)'\\':
                _out.Write("\\\\"u8);
                break;
            case < 32 or >= 127:
                _out.Write("\\x"u8);
                _out.WriteByte((byte)"0123456789ABCDEF"[b >> 4]);
                _out.WriteByte((byte)"0123456789ABCDEF"[b & 15]);
                break;
            default:
                _out.WriteByte(b);
                break;
        }
    }
}
