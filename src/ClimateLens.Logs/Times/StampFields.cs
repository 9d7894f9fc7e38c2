namespace ClimateLens.Logs.Times;

/// <summary>Collects the fields of one stamp while a pattern is walked.</summary>
/// <param name="year">The year of stamps that name none.</param>
internal struct StampFields(int year)
{
    private int _year = year;
    private int _month = 1;
    private int _day = 1;
    private int _dayOfYear;
    private int _hour;
    private int _minute;
    private int _second;
    private int _micros;
    private bool _halves;
    private bool _afternoon;
    private int? _offset;

    /// <summary>Offset from UTC that the stamp names, or null. [s]</summary>
    public readonly int? OffsetSeconds => _offset;

    /// <summary>Reads a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="scan">The text.</param>
    public bool TryRead(in StampPart part, ref DigitScan scan) => part.Letter switch
    {
        '\0' => scan.Literal(part.Literal),
        ' ' => scan.Blanks(),
        StampPart.MaybeBlank => scan.Blanks() || true,
        'y' => TryYear(part.Width, ref scan),
        'M' => part.Width > 2 ? CalendarNames.TryMonth(ref scan, part.BeforePoint, out _month) : TryDigits(part, 2, ref scan, out _month),
        'd' => TryDigits(part, 2, ref scan, out _day),
        'D' => TryDigits(part, 3, ref scan, out _dayOfYear) && _dayOfYear > 0,
        'E' => CalendarNames.TryWeekday(ref scan, part.BeforePoint),
        'H' => TryDigits(part, 2, ref scan, out _hour),
        'h' => TryDigits(part, 2, ref scan, out _hour),
        'm' => TryDigits(part, 2, ref scan, out _minute),
        's' => TryDigits(part, 2, ref scan, out _second),
        'S' => scan.Fraction(out _micros),
        'a' => TryHalf(ref scan),
        StampPart.Packed or StampPart.PackedHalf => TryPacked(part.Width, ref scan),
        _ => StampOffset.TryRead(ref scan, out _offset),
    };

    /// <summary>Days since 1970-01-01; false for a date that does not exist. [d]</summary>
    public readonly bool TryDays(out int days)
        => _dayOfYear > 0 ? CivilDate.TryDayOfYear(_year, _dayOfYear, out days) : CivilDate.TryDays(_year, _month, _day, out days);

    /// <summary>Time of day; false for one that does not exist. [µs]</summary>
    public readonly bool TryTime(out long time)
    {
        int hour = _halves ? HalfOfDay.HourOf(_hour, _afternoon) : _hour;
        return CivilDate.TryTimeOfDay(hour, _minute, _second, _micros, out time) && hour >= 0;
    }

    private static bool TryDigits(in StampPart part, int most, ref DigitScan scan, out int value)
    {
        if (part.After > 0 && part.Width < most)
        {
            most = Math.Clamp(scan.DigitsAhead() - part.After, part.Width, most);
        }

        return scan.Between(Math.Min(part.Width, most), most, out value);
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

    private bool TryHalf(ref DigitScan scan)
    {
        _halves = true;
        return HalfOfDay.TryRead(ref scan, out _afternoon);
    }

    private bool TryPacked(int width, ref DigitScan scan)
    {
        bool read = scan.Between(1, width, out int number);
        if (width > 4)
        {
            _second = number % 100;
            number /= 100;
        }

        (_hour, _minute) = (number / 100, number % 100);
        return read;
    }
}
