using System.Collections.Immutable;
using System.Text;
using ClimateLens.Logs.Cells;
using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Logs.Times;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Records;

/// <summary>Reads one file of records.</summary>
/// <param name="export">Its settings.</param>
/// <param name="kind">What it records.</param>
/// <param name="nursery">The nursery.</param>
/// <param name="fileIndex">Its place in the source's list of files.</param>
/// <param name="aside">Where goes what can't be read.</param>
/// <param name="counts">What became of its rows.</param>
internal sealed class RecordFile(ExportSettings export, RecordKind kind, NurserySettings nursery, int fileIndex, SetAsideLog aside, RowCounts counts)
{
    private readonly List<StoredRecord?> _records = [];
    private readonly List<(int Record, int Line, byte[] Raw)> _waiting = [];
    private readonly StampSequence _sequence = new(new ZoneClock(export.Time.Zone), 0);
    private readonly OddCells _odd = new(aside);

    /// <summary>The records in file order; null when nothing of the file can be taken.</summary>
    /// <param name="opened">The file.</param>
    /// <param name="linesInQuotes">Whether notes may run over several lines.</param>
    public List<StoredRecord>? Read(OpenedExport opened, bool linesInQuotes)
    {
        StampPlan? plan = StampPlan.Of(export, opened, linesInQuotes, aside, counts);
        using ExportTable? table = ExportTable.Open(opened, export, linesInQuotes, aside, counts);
        if (table is null || TimeColumns.Bind(export.Time, table.Columns, aside, plan) is not TimeColumns time)
        {
            return null;
        }

        RecordColumn[] columns = Bind(table.Columns);
        counts.Facts.Columns(table.Columns.Names, table.FieldCount, [.. time.Fields, .. columns.Select(c => c.Index)]);
        ReadRows(table, time, plan, columns);
        _odd.Report();
        ResolveWaiting();
        return [.. _records.OfType<StoredRecord>()];
    }

    private RecordColumn[] Bind(ColumnFinder finder)
    {
        var columns = new List<RecordColumn>();
        foreach (ColumnSettings settings in export.Columns)
        {
            if (!RecordFields.TryGet(kind, settings.Channel, out RecordField? field))
            {
                continue; // the nursery file was read without this field of a later version
            }

            int index = finder.Find(settings.Field, ProblemCodes.Column, field.Name, out Problem? problem);
            if (problem is not null)
            {
                aside.Problems.Add(problem);
            }

            string code = settings.Unit.Length > 0 ? settings.Unit : field.DefaultUnit ?? "";
            Unit? unit = field.Quantity is Quantity quantity && UnitCatalogue.TryGet(quantity, code, out Unit? known) ? known : null;
            var format = new NumberFormat(settings.Marks ?? export.Dialect.Marks);
            columns.Add(new RecordColumn(field, index, unit, format, new MissingCodes(export.Dialect.MissingValues.Concat(settings.MissingValues), format)));
        }

        return [.. columns];
    }

    private void ReadRows(ExportTable table, TimeColumns time, StampPlan? plan, RecordColumn[] columns)
    {
        var times = new RecordTimes(export.Time, time);
        int headers = 0;
        int timed = 0;
        while (table.Next())
        {
            if (headers != table.HeadersTaken)
            {
                headers = table.HeadersTaken;
                time = TimeColumns.Bind(export.Time, table.Columns, aside, plan)!; // a new header is taken only where the time is in it
                times = new RecordTimes(export.Time, time);
                columns = Bind(table.Columns);
            }

            if (!time.TryRead(table, out LocalStamp stamp))
            {
                table.SetTimeAside(time.Fault, time.Column, time.Found(table), time.Expected);
                continue;
            }

            timed++;
            if (HouseOf(table, columns) is not string house)
            {
                continue;
            }

            LocalMeaning meaning = _sequence.Add(stamp, time.IsBareDate(table, stamp), out long utc);
            if (meaning == LocalMeaning.Skipped)
            {
                table.SetAside(ProblemCodes.TimeSkipped, time.Column, time.Found(table), $"a time that {export.Time.Zone.Id} has");
                continue;
            }

            if (meaning == LocalMeaning.Twice)
            {
                _waiting.Add((_records.Count, table.Line, table.Raw.ToArray()));
            }

            _records.Add(Record(table, house, utc, columns, times)); // nothing for a row that was set aside: its time still tells how the clock ran
        }

        if (export.Time.MoreFormats.IsEmpty)
        {
            counts.Facts.TimeFormats([(export.Time.Format, timed)]);
        }
    }

    private string? HouseOf(ExportTable table, RecordColumn[] columns)
    {
        RecordColumn? column = Array.Find(columns, c => c.Name == RecordFields.House && c.Index >= 0);
        string house = column is null ? "" : Encoding.UTF8.GetString(CellText.Trim(table.Field(column.Index)));
        if (house.Length == 0)
        {
            return export.House;
        }

        if (nursery.Houses.Any(h => h.Id == house) || house == ReadingBatch.WholeNursery)
        {
            return house;
        }

        table.SetAside(ProblemCodes.House, column!.Index + 1, Encoding.UTF8.GetBytes(house), "one of " + string.Join(", ", nursery.Houses.Select(h => SafeText.Quote(h.Id))));
        return null;
    }

    private StoredRecord? Record(ExportTable table, string house, long utc, RecordColumn[] columns, RecordTimes times)
    {
        if (Fields(table, columns, times, utc) is not { } fields)
        {
            return null;
        }

        HouseSettings? settings = nursery.Houses.FirstOrDefault(h => h.Id == house);
        if (kind == RecordKind.PotChecks && PotCheckRules.Of(settings, nursery.Zone, utc, fields) is { } fault)
        {
            int column = Array.Find(columns, c => c.Name == fault.Field)?.Index ?? -1;
            table.SetAside(fault.Code, column < 0 ? null : column + 1, fault.Found, fault.Expected);
            return null;
        }

        return new StoredRecord(house, utc, fileIndex, table.Line, fields);
    }

    /// <summary>The fields of a row; null where one of them set the whole row aside.</summary>
    private ImmutableSortedDictionary<string, string>? Fields(ExportTable table, RecordColumn[] columns, RecordTimes times, long utc)
    {
        var fields = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (RecordColumn column in columns)
        {
            if (column.Index < 0 || column.Name == RecordFields.House)
            {
                continue;
            }

            CellKind cell = column.Read(table.Field(column.Index), times, utc, out string value);
            if (value.Length > 0)
            {
                fields[column.Name] = value;
            }

            if (cell == CellKind.Word)
            {
                _odd.Count(cell, column.Index + 1, column.Name, table.Field(column.Index), table.Line);
            }
            else if (cell > CellKind.Impossible && column.SetsRowAside)
            {
                table.SetAside(column.Fault, column.Index + 1, table.Field(column.Index), column.Expected(export.Time));
                return null;
            }
            else if (cell > CellKind.Impossible)
            {
                counts.CellsNotRead++;
                aside.Add(OddCells.CodeOf(cell, column.Fault), table.Line, column.Index + 1, table.Field(column.Index), column.Expected(export.Time));
            }
        }

        return fields.ToImmutable();
    }

    private void ResolveWaiting()
    {
        long?[] resolved = _sequence.Resolve();
        for (int i = 0; i < resolved.Length; i++)
        {
            (int record, int line, byte[] raw) = _waiting[i];
            if (_records[record] is not StoredRecord old)
            {
                continue; // set aside already
            }

            if (resolved[i] is long utc)
            {
                _records[record] = new StoredRecord(old.House, utc, old.File, old.Line, old.Fields);
                continue;
            }

            _records[record] = null;
            counts.SetAside++;
            aside.Add(ProblemCodes.TimeTwice, line, null, raw, "rows whose order shows the clock put back once");
        }
    }
}
