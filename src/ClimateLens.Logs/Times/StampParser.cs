using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Times;

/// <summary>
/// Reads stamps by a pattern in the letters of UTS 35 (<see cref="StampPattern"/> says which are allowed) or by one of <see cref="StampWords"/>.
/// One letter takes one or two digits, two letters take exactly two; a blank takes any number of blanks. It remembers the date of the
/// stamp before, since neighbours share it, and so serves one thread at a time.
/// </summary>
internal sealed class StampParser
{
    // Any year will do for a time of day that stands alone.
    private const int AnyYear = 1970;

    private readonly StampPart[] _parts;
    private readonly StampWord _word;
    private readonly int _timeStart;
    private readonly bool _comma;
    private readonly PlainClock _clock;
    private RememberedDate _date;
    private int _year = AnyYear;

    private StampParser(string text, StampPart[] parts, int timeStart, bool comma)
    {
        Text = text;
        _parts = parts;
        _word = (StampWord)(StampWords.All.IndexOf(text) + 1);
        _timeStart = timeStart;
        _comma = comma;
        _date = new RememberedDate(RememberedDate.PartsOf(parts));
        IsDateOnly = _word == StampWord.None && !Array.Exists(parts, part => part.IsHour);
        _clock = _word == StampWord.Iso ? PlainClock.Iso : PlainClock.Of(parts.AsSpan(_date.Parts));
    }

    /// <summary>Places in <see cref="StampWords.All"/>, counted from 1.</summary>
    private enum StampWord
    {
        None,
        Iso,
        Excel1900,
        Excel1904,
        UnixSeconds,
        UnixMilliseconds,
        UnixMicroseconds,
    }

    /// <summary>The format as written.</summary>
    public string Text { get; }

    /// <summary>Whether the format holds no time of day.</summary>
    public bool IsDateOnly { get; }

    /// <summary>Whether the stamps name no year.</summary>
    public bool LacksYear => _word == StampWord.None && !Array.Exists(_parts, part => part.Letter == 'y');

    /// <summary>The year of stamps that name none.</summary>
    public int Year
    {
        get => _year;
        set
        {
            if (value != _year)
            {
                _year = value;
                _date.Forget();
            }
        }
    }

    /// <summary>Compiles a format; null when it can't be used.</summary>
    /// <param name="format">A pattern or a word.</param>
    /// <param name="decimalComma">Whether a comma is a decimal mark of the file as well as the point, in numbers of days or seconds.</param>
    /// <param name="year">The year of stamps that name none; null when the format has to name it.</param>
    public static StampParser? TryCompile(string format, bool decimalComma = false, int? year = null)
    {
        if (StampWords.Contains(format))
        {
            return new StampParser(format, [], -1, decimalComma);
        }

        if (StampPattern.FaultOf(format, timeNeeded: false, yearNeeded: year is null) is not null)
        {
            return null;
        }

        List<StampField> fields = StampField.Split(format)!;
        StampPart[] parts = StampPart.Of(fields);
        int timeStart = StampPattern.TimeOfDayStart(fields) < 0 ? -1 : Array.FindIndex(parts, part => part.IsHour || part.Letter == 'a');
        return new StampParser(format, parts, timeStart, decimalComma) { _year = year ?? AnyYear };
    }

    /// <summary>Reads the whole text.</summary>
    public bool TryRead(ReadOnlySpan<byte> text, out LocalStamp stamp)
    {
        if (!_date.Begins(text))
        {
            return TryWhole(text, out stamp);
        }

        ReadOnlySpan<byte> rest = text[_date.Length..];
        int? offset = null;
        if (_clock.TryRead(rest, out long time) || (_word == StampWord.Iso ? TryIsoTime(rest, out time, out offset) : TryRest(rest, out time, out offset)))
        {
            stamp = new LocalStamp((_date.Days * CivilDate.DayMicros) + time, offset);
            return true;
        }

        return TryWhole(text, out stamp); // 1/1 begins 1/12 as well
    }

    /// <summary>Reads a time of day that stands alone, written as in this format. [µs]</summary>
    public bool TryReadTimeOfDay(ReadOnlySpan<byte> text, out long time)
    {
        time = 0;
        var scan = new DigitScan(text);
        if (_word == StampWord.Iso)
        {
            return IsoStamp.TryTime(ref scan, out time) && scan.AtEnd;
        }

        var fields = new StampFields(AnyYear);
        return _timeStart >= 0 && TryParts(_timeStart, _parts.Length, ref scan, ref fields, out _) && scan.AtEnd && fields.TryTime(out time);
    }

    private bool TryWhole(ReadOnlySpan<byte> text, out LocalStamp stamp) => _word switch
    {
        StampWord.None => TryPattern(text, out stamp),
        StampWord.Iso => TryIso(text, out stamp),
        StampWord.Excel1900 => SerialStamp.TryRead(text, SerialStamp.Origin1900, _comma, out stamp),
        StampWord.Excel1904 => SerialStamp.TryRead(text, SerialStamp.Origin1904, _comma, out stamp),
        StampWord.UnixSeconds => UnixStamp.TryRead(text, 1, _comma, out stamp),
        StampWord.UnixMilliseconds => UnixStamp.TryRead(text, 1_000, _comma, out stamp),
        _ => UnixStamp.TryRead(text, 1_000_000, _comma, out stamp),
    };

    private bool TryIso(ReadOnlySpan<byte> text, out LocalStamp stamp)
    {
        stamp = default;
        var scan = new DigitScan(text);
        if (!IsoStamp.TryDate(ref scan, out int days))
        {
            return false;
        }

        long time = 0;
        int? offset = null;
        if (!scan.AtEnd)
        {
            if (!IsoStamp.TrySeparator(ref scan))
            {
                return false;
            }

            _date.Keep(text[..(text.Length - scan.Rest.Length)], days);
            if (!TryIsoTime(scan.Rest, out time, out offset))
            {
                return false;
            }
        }

        stamp = new LocalStamp((days * CivilDate.DayMicros) + time, offset);
        return true;
    }

    private static bool TryIsoTime(ReadOnlySpan<byte> text, out long time, out int? offset)
    {
        var scan = new DigitScan(text);
        offset = null;
        return IsoStamp.TryTime(ref scan, out time) && StampOffset.TryRead(ref scan, out offset) && scan.AtEnd;
    }

    private bool TryPattern(ReadOnlySpan<byte> text, out LocalStamp stamp)
    {
        stamp = default;
        var scan = new DigitScan(text);
        var fields = new StampFields(_year);
        if (!TryParts(0, _parts.Length, ref scan, ref fields, out int dateBytes) || !scan.AtEnd || !fields.TryDays(out int days) || !fields.TryTime(out long time))
        {
            return false;
        }

        if (_date.Parts > 0)
        {
            _date.Keep(text[..dateBytes], days);
        }

        stamp = new LocalStamp((days * CivilDate.DayMicros) + time, fields.OffsetSeconds);
        return true;
    }

    /// <summary>Reads what stands behind the date of a pattern.</summary>
    private bool TryRest(ReadOnlySpan<byte> text, out long time, out int? offset)
    {
        time = 0;
        var scan = new DigitScan(text);
        var fields = new StampFields(_year);
        bool read = TryParts(_date.Parts, _parts.Length, ref scan, ref fields, out _) && scan.AtEnd && fields.TryTime(out time);
        offset = fields.OffsetSeconds;
        return read;
    }

    /// <summary>Reads the parts of a pattern from one on.</summary>
    private bool TryParts(int first, int end, ref DigitScan scan, ref StampFields fields, out int dateBytes)
    {
        int length = scan.Rest.Length;
        dateBytes = 0;
        for (int i = first; i < end; i++)
        {
            if (!fields.TryRead(_parts[i], ref scan))
            {
                return false;
            }

            dateBytes = i + 1 == _date.Parts ? length - scan.Rest.Length : dateBytes;
        }

        return true;
    }
}
