using System.Text;

namespace ClimateLens.Logs.Describe.Reading;

/// <summary>Reads lines that end in LF, CR or CRLF and never keeps more of a line than a bound.</summary>
/// <param name="reader">The text.</param>
internal sealed class LineReader(TextReader reader)
{
    /// <summary>What is kept of a line. [characters]</summary>
    public const int LongestLine = 1 << 20;

    private readonly char[] _buffer = new char[32 << 10];
    private readonly StringBuilder _line = new();
    private int _at;
    private int _end;
    private int _number;
    private bool _afterReturn;

    /// <summary>The next line, or null at the end.</summary>
    public TextLine? Next()
    {
        _line.Clear();
        bool any = false;
        while (Fill())
        {
            ReadOnlySpan<char> rest = _buffer.AsSpan(_at, _end - _at);
            if (_afterReturn && rest[0] == '\n')
            {
                _at++;
                _afterReturn = false;
                continue;
            }

            _afterReturn = false;
            any = true;
            int stop = rest.IndexOfAny('\r', '\n');
            Keep(stop < 0 ? rest : rest[..stop]);
            if (stop >= 0)
            {
                _afterReturn = rest[stop] == '\r';
                _at += stop + 1;
                return Line();
            }

            _at = _end;
        }

        return any ? Line() : null;
    }

    private TextLine Line() => new(++_number, _line.ToString());

    private void Keep(ReadOnlySpan<char> part)
    {
        int room = LongestLine - _line.Length;
        _line.Append(part.Length > room ? part[..room] : part);
    }

    private bool Fill()
    {
        if (_at < _end)
        {
            return true;
        }

        _at = 0;
        _end = reader.Read(_buffer, 0, _buffer.Length);
        return _end > 0;
    }
}
