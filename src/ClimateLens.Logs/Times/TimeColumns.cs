using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Times;

/// <summary>Reads the time of each row of a table.</summary>
internal sealed class TimeColumns
{
    private const int DateBytes = 10; // 2025-10-13

    private static readonly StampParser DateCells = StampParser.TryCompile(StampWords.Iso)!;

    private readonly TimeSettings _settings;
    private readonly StampParser[] _formats;
    private readonly JoinedFields _fields;
    private readonly IntervalEnd? _end;
    private readonly StampPlan? _plan;

    private TimeColumns(TimeSettings settings, StampParser[] formats, JoinedFields fields, IntervalEnd? end, StampPlan? plan)
    {
        _settings = settings;
        _formats = formats;
        _fields = fields;
        _end = end;
        _plan = plan;
        Pattern = formats[0];
    }

    /// <summary>All formats.</summary>
    public IReadOnlyList<StampParser> Formats => _formats;

    /// <summary>The format of the current row.</summary>
    public StampParser Pattern { get; private set; }

    /// <summary>1-based field of the date, for messages.</summary>
    public int Column => _fields.First + 1;

    /// <summary>0-based fields that hold the time; -1 where there is none apart.</summary>
    public int[] Fields => [.. _fields.Places, .. _end is null ? [] : _end.Fields.Places];

    /// <summary>What a time looks like, for messages.</summary>
    public string Expected => Fault == ProblemCodes.TimeEnd ? $"an end that is not before the start, {StampExample.Of(_settings)}"
        : Fault == ProblemCodes.TimeOrder ? "rows before and behind it that leave one meaning"
        : StampExample.Of(_settings);

    /// <summary>What is wrong with the current row's time, when it was not read.</summary>
    public ProblemCode Fault { get; private set; } = ProblemCodes.Time;

    /// <summary>Finds the columns; null when there is no such column or a format can't be used, which is reported.</summary>
    /// <param name="settings">The settings.</param>
    /// <param name="finder">Finds columns.</param>
    /// <param name="aside">Where problems go.</param>
    /// <param name="plan">What all rows together say, where one row does not say all.</param>
    public static TimeColumns? Bind(TimeSettings settings, ColumnFinder finder, SetAsideLog aside, StampPlan? plan = null)
    {
        var formats = new List<StampParser>();
        foreach (string format in settings.Formats)
        {
            if (StampParser.TryCompile(format, settings.DecimalComma, settings.Year) is not StampParser parser)
            {
                aside.Problems.Add(ProblemCodes.TimeFormat.In(aside.File, null, null, $"time format {SafeText.Quote(format)}", "iso or a pattern such as dd-MM-yyyy HH:mm"));
                return null;
            }

            formats.Add(parser);
        }

        JoinedFields? fields = JoinedFields.Bind(settings.Fields, "the time", finder, out Problem? problem);
        JoinedFields? ends = fields is null || settings.EndFields.IsEmpty ? null : JoinedFields.Bind(settings.EndFields, "the end of the interval", finder, out problem);
        if (fields is null || problem is not null)
        {
            aside.Problems.Add(problem!);
            return null;
        }

        return new TimeColumns(settings, [.. formats], fields, ends is null ? null : new IntervalEnd(ends, new ZoneClock(settings.Zone)), plan);
    }

    /// <summary>Reads the stamp of the current row.</summary>
    public bool TryRead(ExportTable table, out LocalStamp stamp)
    {
        stamp = default;
        Fault = ProblemCodes.Time;
        bool isDateCell = table.HasIsoTimes && _fields.TryText(table, out ReadOnlySpan<byte> cell) && IsDateCell(cell) && DateCells.TryRead(cell, out stamp);
        if (!isDateCell && !TryReadText(table, out stamp))
        {
            return false;
        }

        if (_end is not null && !_end.Follows(table, Pattern, stamp))
        {
            Fault = ProblemCodes.TimeEnd;
            return false;
        }

        return true;
    }

    private bool TryReadText(ExportTable table, out LocalStamp stamp)
    {
        stamp = default;
        return (_plan is null || TryPlan(_plan, table.Line)) && _fields.TryText(table, out ReadOnlySpan<byte> text) && Pattern.TryRead(text, out stamp);
    }

    /// <summary>Whether the current row's time, which was read, is a date alone.</summary>
    public bool IsBareDate(ExportTable table, LocalStamp stamp) => Pattern.IsDateOnly || (stamp.LocalMicros % CivilDate.DayMicros == 0 && Pattern.Text == StampWords.Iso && _fields.TryText(table, out ReadOnlySpan<byte> text) && text.IndexOfAny("T: "u8) < 0 && text.Length <= DateBytes);

    /// <summary>The text of the current row's time; false when it is too long to be one.</summary>
    public bool TryText(ExportTable table, out ReadOnlySpan<byte> text) => _fields.TryText(table, out text);

    /// <summary>What stands in the time cells of the current row, for messages.</summary>
    public byte[] Found(ExportTable table) => Fault == ProblemCodes.TimeEnd ? _end!.Fields.Found(table) : _fields.Found(table);

    /// <summary>Dates of workbooks are written with marks; numbers such as 20251013 and 1405 are left to the format.</summary>
    private static bool IsDateCell(ReadOnlySpan<byte> cell) => cell.Length >= DateBytes && cell[4] == (byte)'-' && cell[7] == (byte)'-';

    private bool TryPlan(StampPlan plan, int line)
    {
        (byte format, int? year) = plan.At(line);
        if (format >= _formats.Length)
        {
            Fault = format == StampVerdict.Undecided ? ProblemCodes.TimeOrder : ProblemCodes.Time;
            return false;
        }

        Pattern = _formats[format];
        Pattern.Year = year ?? Pattern.Year;
        return true;
    }
}
