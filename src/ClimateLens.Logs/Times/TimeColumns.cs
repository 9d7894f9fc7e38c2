using ClimateLens.Logs.Cells;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Times;

/// <summary>Reads the time of each row of a table.</summary>
internal sealed class TimeColumns
{
    private const int LongestStamp = 64;

    private readonly TimeSettings _settings;
    private readonly StampParser _pattern;
    private readonly int _date;
    private readonly int _timeOfDay;
    private readonly byte[] _joined = new byte[(2 * LongestStamp) + 1];

    private TimeColumns(TimeSettings settings, StampParser pattern, int date, int timeOfDay)
    {
        _settings = settings;
        _pattern = pattern;
        _date = date;
        _timeOfDay = timeOfDay;
    }

    /// <summary>The pattern.</summary>
    public StampParser Pattern => _pattern;

    /// <summary>1-based field of the date, for messages.</summary>
    public int Column => _date + 1;

    /// <summary>What a time looks like, for messages.</summary>
    public string Expected => _settings.Format == StampWords.Iso ? "an ISO 8601 time like 2025-10-13T14:05" : $"a time like {_settings.Format}";

    /// <summary>Finds the columns; null when there is no such column or the pattern can't be read, which is reported.</summary>
    public static TimeColumns? Bind(TimeSettings settings, ColumnFinder finder, SetAsideLog aside)
    {
        var pattern = StampParser.TryCompile(settings.Format);
        if (pattern is null)
        {
            aside.Problems.Add(ProblemCodes.TimeFormat.In(aside.File, null, null, $"time format {SafeText.Quote(settings.Format)}", "iso or a pattern such as dd-MM-yyyy HH:mm"));
            return null;
        }

        int date = finder.Find(settings.Field, ProblemCodes.TimeColumn, "the time", out Problem? problem);
        int timeOfDay = -1;
        if (problem is null && settings.TimeOfDayField is FieldRef field)
        {
            timeOfDay = finder.Find(field, ProblemCodes.TimeColumn, "the time of day", out problem);
        }

        if (problem is not null)
        {
            aside.Problems.Add(problem);
            return null;
        }

        return new TimeColumns(settings, pattern, date, timeOfDay);
    }

    /// <summary>Reads the stamp of the current row.</summary>
    public bool TryRead(ExportTable table, out LocalStamp stamp)
    {
        ReadOnlySpan<byte> date = CellText.Trim(table.Field(_date));
        if (_timeOfDay < 0)
        {
            return _pattern.TryRead(date, out stamp);
        }

        ReadOnlySpan<byte> time = CellText.Trim(table.Field(_timeOfDay));
        stamp = default;
        if (date.Length > LongestStamp || time.Length > LongestStamp)
        {
            return false;
        }

        date.CopyTo(_joined);
        _joined[date.Length] = (byte)' ';
        time.CopyTo(_joined.AsSpan(date.Length + 1));
        return _pattern.TryRead(_joined.AsSpan(0, date.Length + 1 + time.Length), out stamp);
    }

    /// <summary>What stands in the time cells of the current row, for messages.</summary>
    public byte[] Found(ExportTable table)
        => _timeOfDay < 0 ? table.Field(_date).ToArray() : [.. table.Field(_date), (byte)' ', .. table.Field(_timeOfDay)];
}
