using System.Globalization;
using System.Text;
using ClimateLens.Logs.Cells;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Records;

/// <summary>One field of the records in a file.</summary>
/// <param name="kept">What it is.</param>
/// <param name="index">0-based field of the file, or -1 when the file lacks it.</param>
/// <param name="unit">Unit of the file; null for a plain number and for text.</param>
/// <param name="format">Marks of the file's numbers.</param>
/// <param name="missing">Codes for "no value".</param>
internal sealed class RecordColumn(RecordField kept, int index, Unit? unit, NumberFormat format, MissingCodes missing)
{
    private readonly ValueReader? _measured = unit is Unit known ? new ValueReader(known, format, missing) : null;

    /// <summary>Name of the field.</summary>
    public string Name => kept.Name;

    /// <summary>0-based field of the file, or -1.</summary>
    public int Index => index;

    /// <summary>Whether a cell that is not read sets the whole row aside: a pot check with an impossible level says nothing that can be trusted.</summary>
    public bool SetsRowAside => kept.Type == RecordFieldType.Level;

    /// <summary>What is wrong with a cell that is not read.</summary>
    public ProblemCode Fault => kept.Type switch
    {
        RecordFieldType.Method => ProblemCodes.Method,
        RecordFieldType.Level => ProblemCodes.Level,
        RecordFieldType.Time => ProblemCodes.TimeCell,
        _ => ProblemCodes.Number,
    };

    /// <summary>What a value looks like, for messages.</summary>
    public string Expected(TimeSettings time) => kept.Type switch
    {
        RecordFieldType.Method => string.Join(", ", WateringMethods.Words),
        RecordFieldType.Level => "1 to 5, halves allowed",
        RecordFieldType.Time => Times.StampExample.Of(time),
        _ => format.Example,
    };

    /// <summary>Reads a cell into the text that is kept.</summary>
    public CellKind Read(ReadOnlySpan<byte> cell, RecordTimes times, long startUtc, out string value)
    {
        value = "";
        cell = CellText.Trim(cell);
        if (missing.Contains(cell))
        {
            return CellKind.Missing;
        }

        if (kept.Type is RecordFieldType.Number or RecordFieldType.Level)
        {
            return Number(cell, out value);
        }

        string? read = kept.Type switch
        {
            RecordFieldType.Method => Method(Encoding.UTF8.GetString(cell)),
            RecordFieldType.Time => times.TryRead(cell, startUtc, out long utc) ? Store.Micros.ToIso(utc) : null,
            _ => Encoding.UTF8.GetString(cell),
        };
        // A word for a method that we do not know is kept as it stands, so that a review can name it.
        value = read ?? (kept.Type == RecordFieldType.Method ? Encoding.UTF8.GetString(cell) : "");
        return read is null ? CellKind.NotRead : CellKind.Value;
    }

    private CellKind Number(ReadOnlySpan<byte> cell, out string text)
    {
        text = "";
        CellKind kind = _measured is not null ? _measured.Read(cell, out double number) : Plain(cell, out number);
        if (kind == CellKind.Value && kept.Type == RecordFieldType.Level && (number is not (>= 1 and <= 5) || double.Ceiling(2 * number) != 2 * number))
        {
            return CellKind.NotRead;
        }

        text = kind == CellKind.Value ? number.ToString("R", CultureInfo.InvariantCulture) : "";
        return kind;
    }

    private CellKind Plain(ReadOnlySpan<byte> cell, out double number)
        => NumberCell.TryRead(cell, format, out number)
            ? missing.Contains(number) ? CellKind.Missing : CellKind.Value
            : MissingWords.Contains(cell) ? CellKind.Word : CellKind.NotRead;

    private static string? Method(string text)
        => WateringMethods.TryParse(text, out WateringMethod method) ? WateringMethods.WordOf(method) : null;
}
