using System.Text;
using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>A format that may read the times of a file.</summary>
/// <param name="Text">The format as in the nursery file.</param>
/// <param name="Order">Order of the date's parts; formats of one order mean the same.</param>
/// <param name="Holds">What it holds.</param>
internal readonly record struct StampFormat(string Text, string Order, StampHolds Holds);

/// <summary>Tries a format on every row of a file.</summary>
internal sealed class StampTally
{
    // Stamps without a year are put into a leap year, so that 29 February is a day.
    private const int AnyLeapYear = 2024;

    private readonly StampParser _parser;
    private readonly byte[] _bytes = new byte[512];

    private StampTally(TimeSource source, StampFormat format, StampParser parser)
    {
        Source = source;
        Format = format;
        _parser = parser;
    }

    /// <summary>Where the stamps stand.</summary>
    public TimeSource Source { get; }

    /// <summary>The format.</summary>
    public StampFormat Format { get; }

    /// <summary>Rows with a stamp.</summary>
    public int Rows { get; private set; }

    /// <summary>Rows that the format reads.</summary>
    public int Read => Order.Count;

    /// <summary>Rows at midnight.</summary>
    public int Midnights { get; private set; }

    /// <summary>Rows whose stamp names an offset from UTC.</summary>
    public int WithOffset { get; private set; }

    /// <summary>How the times follow each other.</summary>
    public OrderTally Order { get; } = new();

    /// <summary>The first stamp that it does not read.</summary>
    public string? FirstFailure { get; private set; }

    /// <summary>Rows read, less what looks odd.</summary>
    public int Score => Read - Order.Oddities();

    /// <summary>A tally; null when the format can't be used.</summary>
    public static StampTally? TryCreate(TimeSource source, StampFormat format)
    {
        bool yearless = format.Holds.HasFlag(StampHolds.Yearless);
        return StampParser.TryCompile(format.Text, decimalComma: true, yearless ? AnyLeapYear : null) is { } parser ? new StampTally(source, format, parser) : null;
    }

    /// <summary>Tries a row's stamp.</summary>
    public void Add(string stamp)
    {
        Rows++;
        if (TryRead(stamp, out long micros))
        {
            Order.Add(micros);
            Midnights += micros % CivilDate.DayMicros == 0 ? 1 : 0;
        }
        else
        {
            FirstFailure ??= stamp;
        }
    }

    /// <summary>Reads a stamp: an instant where it names an offset, else its clock time as if it were UTC. [µs]</summary>
    public bool TryRead(string stamp, out long micros)
    {
        micros = 0;
        if (stamp.Length * 3 > _bytes.Length)
        {
            return false;
        }

        int length = Encoding.UTF8.GetBytes(stamp, _bytes);
        if (!_parser.TryRead(_bytes.AsSpan(0, length), out LocalStamp read))
        {
            return false;
        }

        WithOffset += read.OffsetSeconds is null ? 0 : 1;
        micros = read.LocalMicros - ((read.OffsetSeconds ?? 0) * CivilDate.SecondMicros);
        return true;
    }
}
