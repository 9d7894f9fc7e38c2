namespace ClimateLens.Logs.Times;

/// <summary>Walks over the digits and marks of a stamp.</summary>
/// <param name="text">UTF-8 text.</param>
internal ref struct DigitScan(ReadOnlySpan<byte> text)
{
    private ReadOnlySpan<byte> _rest = text;

    /// <summary>Whether all is read.</summary>
    public readonly bool AtEnd => _rest.Length == 0;

    /// <summary>What is left.</summary>
    public readonly ReadOnlySpan<byte> Rest => _rest;

    /// <summary>How many digits stand here.</summary>
    public readonly int DigitsAhead()
    {
        int digits = 0;
        while (digits < _rest.Length && (uint)(_rest[digits] - '0') <= 9)
        {
            digits++;
        }

        return digits;
    }

    /// <summary>Passes over bytes.</summary>
    public void Skip(int bytes) => _rest = _rest[bytes..];

    /// <summary>Reads a number of exactly so many digits.</summary>
    public bool Fixed(int digits, out int value) => Between(digits, digits, out value);

    /// <summary>Reads a number with as many digits as stand there, up to a limit.</summary>
    public bool Between(int least, int most, out int value)
    {
        value = 0;
        int read = 0;
        while (read < most && read < _rest.Length && (uint)(_rest[read] - '0') <= 9)
        {
            value = (value * 10) + (_rest[read++] - '0');
        }

        _rest = _rest[read..];
        return read >= least;
    }

    /// <summary>Reads one mark if it stands here.</summary>
    public bool Mark(byte mark)
    {
        if (_rest.Length == 0 || _rest[0] != mark)
        {
            return false;
        }

        _rest = _rest[1..];
        return true;
    }

    /// <summary>Reads one blank or more if they stand here; no-break and thin spaces are blanks.</summary>
    public bool Blanks()
    {
        int before = _rest.Length;
        while (_rest.Length > 0)
        {
            if (_rest[0] is (byte)' ' or (byte)'\t')
            {
                _rest = _rest[1..];
            }
            else if (!Literal("\u00A0"u8) && !Literal("\u202F"u8) && !Literal("\u2009"u8))
            {
                break;
            }
        }

        return _rest.Length < before;
    }

    /// <summary>Reads a literal text if it stands here.</summary>
    public bool Literal(ReadOnlySpan<byte> literal)
    {
        if (!_rest.StartsWith(literal))
        {
            return false;
        }

        _rest = _rest[literal.Length..];
        return true;
    }

    /// <summary>Reads a fraction of a second of one to nine digits, cut to microseconds. [µs]</summary>
    public bool Fraction(out int micros)
    {
        micros = 0;
        int read = 0;
        for (; read < 9 && read < _rest.Length && (uint)(_rest[read] - '0') <= 9; read++)
        {
            micros = read < 6 ? (micros * 10) + (_rest[read] - '0') : micros;
        }

        for (int i = read; i < 6; i++)
        {
            micros *= 10;
        }

        _rest = _rest[read..];
        return read > 0;
    }
}
