using ClimateLens.Logs.Cells;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Logs.Times;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Readings;

/// <summary>Reads one file of readings in a single pass.</summary>
/// <param name="export">Its settings.</param>
/// <param name="fileIndex">Its place in the source's list of files.</param>
/// <param name="aside">Where goes what can't be read.</param>
/// <param name="counts">What became of its rows.</param>
internal sealed class ReadingFile(ExportSettings export, int fileIndex, SetAsideLog aside, RowCounts counts)
{
    private readonly StampSequence _sequence = new(new ZoneClock(export.Time.Zone), export.StepSeconds * CivilDate.SecondMicros);
    private readonly OddCells _odd = new(aside);
    private readonly StepSample _stamps = new();

    /// <summary>Reads the rows; false when nothing of the file can be taken, which is reported.</summary>
    /// <param name="opened">The file.</param>
    /// <param name="rows">Takes the rows.</param>
    /// <param name="blockRows">Rows of a block.</param>
    public bool Read(OpenedExport opened, FileRows rows, int blockRows)
    {
        StampPlan? plan = StampPlan.Of(export, opened, linesInQuotes: false, aside, counts);
        using ExportTable? table = ExportTable.Open(opened, export, linesInQuotes: false, aside, counts);
        if (table is null)
        {
            return false;
        }

        if (TimeColumns.Bind(export.Time, table.Columns, aside, plan) is not TimeColumns time)
        {
            return false;
        }

        if (!RowChoice.Check(export, table.Columns, aside))
        {
            return false;
        }

        ReadingColumn[] columns = ReadingColumns.Bind(export, table.Columns, aside.Problems);
        counts.Facts.Columns(table.Columns.Names, table.FieldCount, [.. time.Fields, .. columns.Select(c => c.Field), .. RowChoice.FieldsOf(export, table.Columns)]);
        using var pump = new BlockPump(rows.Take);
        var blocks = new RowBlocks(rows, pump, blockRows);
        var hours = new RepeatedHourRows(_sequence, rows, counts, aside);
        ReadRows(table, time, plan, columns, blocks, hours, () => rows.MustSort);
        RowChoice.Report(counts, aside);
        _odd.Report();
        hours.SettleAll(blocks.Waiting);
        blocks.Flush();
        hours.PassOn();
        NoteStep();
        return true;
    }

    private void ReadRows(ExportTable table, TimeColumns time, StampPlan? plan, ReadingColumn[] columns, RowBlocks blocks, RepeatedHourRows hours, Func<bool> stop)
    {
        double[] values = new double[columns.Length];
        var numbers = new PlainNumbers(table.Delimiter, columns);
        var whole = WholeRow.Of(columns);
        RowChoice? choice = RowChoice.Of(export, table.Columns, columns);
        int headers = 0;
        int timed = 0;
        while (table.Next() && !stop())
        {
            if (headers != table.HeadersTaken)
            {
                headers = table.HeadersTaken;
                time = TimeColumns.Bind(export.Time, table.Columns, aside, plan)!; // a new header is taken only where the time is in it
                columns = ReadingColumns.Bind(export, table.Columns, aside.Problems);
                choice = RowChoice.Of(export, table.Columns, columns);
                numbers = new PlainNumbers(table.Delimiter, columns);
                whole = WholeRow.Of(columns);
            }

            if (choice is not null && !choice.Fits(table))
            {
                counts.LeaveToOthers();
                continue;
            }

            if (!time.TryRead(table, out LocalStamp stamp))
            {
                table.SetTimeAside(time.Fault, time.Column, time.Found(table), time.Expected);
                continue;
            }

            timed++;
            LocalMeaning meaning = _sequence.Add(stamp, time.Pattern.IsDateOnly, out long utc);
            if (meaning == LocalMeaning.Skipped)
            {
                table.SetAside(ProblemCodes.TimeSkipped, time.Column, time.Found(table), $"a time that {export.Time.Zone.Id} has");
                continue;
            }

            _stamps.Add(utc);
            numbers.Read(table);
            if (whole?.Read(numbers, values) != true)
            {
                ReadCells(table, columns, numbers, utc, values, choice, whole);
            }

            YearRows block = blocks.Append(utc, fileIndex, table.Line, values);
            if (meaning == LocalMeaning.Twice)
            {
                blocks.Waiting.Add(block, table.Raw);
            }
            else if (blocks.Waiting.IsDue())
            {
                hours.Settle(blocks.Waiting);
            }
        }

        if (export.Time.MoreFormats.IsEmpty)
        {
            counts.Facts.TimeFormats([(export.Time.Format, timed)]);
        }
    }

    private void ReadCells(ExportTable table, ReadingColumn[] columns, PlainNumbers numbers, long utc, double[] values, RowChoice? choice, WholeRow? whole)
    {
        for (int c = 0; c < columns.Length; c++)
        {
            ref readonly ReadingColumn column = ref columns[c];
            if (whole?.IsValue(c) == true)
            {
                continue;
            }

            if (column.Field < 0 || choice?.Takes(c) == false)
            {
                values[c] = double.NaN;
                continue;
            }

            ValueReader reader = column.Later.IsEmpty ? column.Reader : column.ReaderAt(utc);
            double number = numbers[column.Field];
            CellKind kind = double.IsNaN(number) ? reader.Read(table.Field(column.Field), out values[c]) : reader.Read(number, out values[c]);
            if (kind > CellKind.Missing && _odd.Add(kind, column.Field + 1, column.Name, table.Field(column.Field), table.Line, reader))
            {
                counts.CellsNotRead++;
            }
        }
    }

    /// <summary>Finds the file's step and says so where the stamps stray around it.</summary>
    private void NoteStep()
    {
        counts.Step = _stamps.Find();
        if (counts.Step is { Strays: true } step && export.StepSeconds is null)
        {
            aside.Problems.Add(ProblemCodes.TimeStep.In(aside.File, null, null, step.ToString(), ""));
        }
    }
}
