namespace ClimateLens.Logs.Times;

/// <summary>Collects the fields of one stamp while a pattern is walked.</summary>
internal struct StampFields
{
    private int _year = 1970;
    private int _month = 1;
    private int _day = 1;
    private int _hour;
    private int _minute;
    private int _second;
    private int _micros;
    private bool _twelveHours;
    private bool _afternoon;
    private int? _offset;

    /// <summary>An empty stamp: midnight of 1970-01-01.</summary>
    public StampFields()
    {
    }

    /// <summary>Whether a run of this letter has a meaning.</summary>
    public static bool Knows(char letter, int width) => letter switch
    {
        ' ' => true,
        'y' => width is 1 or 2 or 4,
        'M' or 'd' or 'H' or 'h' or 'm' or 's' => width <= 2,
        'S' => width <= 9,
        'a' => width <= 3,
        'X' or 'x' => width <= 3,
        _ => false,
    };

    /// <summary>Reads the field of a letter.</summary>
    public bool TryRead(char letter, int width, ref DigitScan scan) => letter switch
    {
        ' ' => scan.Blanks(),
        'y' => TryYear(width, ref scan),
        'M' => scan.Between(width, 2, out _month),
        'd' => scan.Between(width, 2, out _day),
        'H' => scan.Between(width, 2, out _hour),
        'h' => TwelveHours(scan.Between(width, 2, out _hour)),
        'm' => scan.Between(width, 2, out _minute),
        's' => scan.Between(width, 2, out _second),
        'S' => scan.Fraction(out _micros),
        'a' => TryHalfOfDay(ref scan),
        _ => IsoStamp.TryOffset(ref scan, out _offset),
    };

    /// <summary>The stamp, unless a field is out of range.</summary>
    public readonly bool TryStamp(out LocalStamp stamp)
    {
        stamp = default;
        int hour = _hour;
        if (_twelveHours)
        {
            if (_hour is < 1 or > 12)
            {
                return false;
            }

            hour = (_hour % 12) + (_afternoon ? 12 : 0);
        }

        if (!CivilDate.TryDays(_year, _month, _day, out int days) || !CivilDate.TryTimeOfDay(hour, _minute, _second, _micros, out long time))
        {
            return false;
        }

        stamp = new LocalStamp((days * CivilDate.DayMicros) + time, _offset);
        return true;
    }

    private bool TwelveHours(bool read)
    {
        _twelveHours = true;
        return read;
    }

    private bool TryYear(int width, ref DigitScan scan)
    {
        if (width != 2)
        {
            return scan.Between(4, 4, out _year);
        }

        // Two digits: 70 to 99 are of the last century, as in POSIX (strptime takes 69 to 99; no export is of 1969).
        bool read = scan.Fixed(2, out int year);
        _year = year + (year < 70 ? 2000 : 1900);
        return read;
    }

    private bool TryHalfOfDay(ref DigitScan scan)
    {
        _afternoon = scan.Mark((byte)'P') || scan.Mark((byte)'p');
        if (!_afternoon && !scan.Mark((byte)'A') && !scan.Mark((byte)'a'))
        {
            return false;
        }

        _ = scan.Mark((byte)'.');
        bool read = scan.Mark((byte)'M') || scan.Mark((byte)'m');
        _ = scan.Mark((byte)'.');
        return read;
    }
}
