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

    /// <summary>Reads one blank or more if they stand here.</summary>
    public bool Blanks()
    {
        int read = 0;
        while (read < _rest.Length && _rest[read] is (byte)' ' or (byte)'\t')
        {
            read++;
        }

        _rest = _rest[read..];
        return read > 0;
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
