using System.Text;

namespace ClimateLens.Logs.Cells;

/// <summary>
/// Rewrites a number with '.' for the fraction, without group marks, the sign in front and the exponent after 'e'; or finds that the
/// text is none. What two readings are possible of, by the marks given, is refused.
/// </summary>
/// <param name="cell">The cell.</param>
/// <param name="format">Its marks.</param>
/// <param name="into">Receives the number.</param>
internal ref struct NumberScan(ReadOnlySpan<byte> cell, NumberFormat format, Span<byte> into)
{
    /// <summary>Longer ones are none. [bytes]</summary>
    public const int LongestNumber = 128;

    private const int MostMarks = 16;

    private readonly NumberFormat _format = format;
    private readonly Span<byte> _into = into;
    private ReadOnlySpan<byte> _rest = cell;
    private int _length;

    /// <summary>Length of what was written; 0 when the cell is no number.</summary>
    public int Run()
    {
        if (_rest.Length == 0 || _rest.Length >= LongestNumber)
        {
            return 0;
        }

        bool signed = Sign(blanksAfter: true);
        if (!Mantissa())
        {
            return 0;
        }

        bool raised = _rest.Length > 0 && _rest[0] is (byte)'e' or (byte)'E' or (byte)'d' or (byte)'D';
        if (raised && !Exponent())
        {
            return 0;
        }

        return _rest.Length == 0 || (!signed && !raised && SignAtEnd()) ? _length : 0;
    }

    /// <summary>Plus, minus, and what word processors make of a minus.</summary>
    private bool Sign(bool blanksAfter)
    {
        Rune.DecodeFromUtf8(_rest, out Rune rune, out int bytes);
        if (rune.Value is not ('-' or '+' or '\u2212' or '\u2013'))
        {
            return false;
        }

        Put(rune.Value == '+' ? (byte)'+' : (byte)'-');
        _rest = blanksAfter ? CellText.Trim(_rest[bytes..]) : _rest[bytes..];
        return true;
    }

    /// <summary>A minus behind the number, as accounting programs write it.</summary>
    private bool SignAtEnd()
    {
        _into[.._length].CopyTo(_into[1..]);
        int length = _length + 1;
        _length = 0;
        _rest = CellText.Trim(_rest);
        bool found = Sign(blanksAfter: false) && _rest.Length == 0;
        _length = length;
        return found;
    }

    private bool Exponent()
    {
        Put((byte)'e');
        _rest = _rest[1..];
        if (_rest.Length > 0)
        {
            Sign(blanksAfter: false);
        }

        int digits = 0;
        while (_rest.Length > 0 && char.IsAsciiDigit((char)_rest[0]))
        {
            Put(_rest[0]);
            _rest = _rest[1..];
            digits++;
        }

        return digits > 0;
    }

    /// <summary>Digits with marks between them: at most one before the fraction, the others between groups of three.</summary>
    private bool Mantissa()
    {
        Span<int> marks = stackalloc int[MostMarks];
        Span<int> runs = stackalloc int[MostMarks + 1];
        int count = 0, start = _length, digits = 0;
        runs.Clear();
        while (_rest.Length > 0)
        {
            Rune.DecodeFromUtf8(_rest, out Rune rune, out int bytes);
            if (rune.Value is >= '0' and <= '9')
            {
                Put((byte)rune.Value);
                runs[count]++;
                digits++;
            }
            else if (count < MostMarks && (_format.IsDecimal(rune) || _format.IsGroup(rune)))
            {
                marks[count++] = rune.Value;
            }
            else
            {
                break;
            }

            _rest = _rest[bytes..];
        }

        return digits > 0 && Place(marks[..count], runs[..(count + 1)], start);
    }

    /// <summary>Decides which mark is which, and puts the point where the fraction begins.</summary>
    private bool Place(scoped ReadOnlySpan<int> marks, scoped ReadOnlySpan<int> runs, int start)
    {
        bool fraction = marks.Length > 0 && _format.IsDecimal(new Rune(marks[^1])) && !marks[..^1].Contains(marks[^1]);
        int groups = fraction ? marks.Length - 1 : marks.Length;
        if (groups > 0 && _into[start] == (byte)'0')
        {
            return false; // nobody writes 0,770.5
        }

        for (int i = 0; i < groups; i++)
        {
            bool lengths = runs[i + 1] == 3 && (i > 0 || runs[0] is >= 1 and <= 3);
            if (!lengths || marks[i] != marks[0] || !_format.IsGroup(new Rune(marks[i])))
            {
                return false;
            }
        }

        if (fraction)
        {
            int at = start;
            foreach (int run in runs[..^1])
            {
                at += run;
            }

            _into[at.._length].CopyTo(_into[(at + 1)..]);
            _into[at] = (byte)'.';
            _length++;
        }

        return true;
    }

    private void Put(byte b) => _into[_length++] = b;
}
