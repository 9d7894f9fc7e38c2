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
    private readonly TornRows _torn = new();

    /// <summary>Reads the rows; false when nothing of the file can be taken, which is reported.</summary>
    /// <param name="opened">The file.</param>
    /// <param name="rows">Takes the rows.</param>
    /// <param name="blockRows">Rows of a block.</param>
    public bool Read(OpenedExport opened, FileRows rows, int blockRows)
    {
        StampPlan? plan = StampPlan.Of(export, opened, linesInQuotes: false, aside, counts);
        using ExportTable? table = ExportTable.Open(opened, export, linesInQuotes: false, aside, counts);
        if (table is null || RowBinding.TryBind(export, table, plan, aside) is not { } binding)
        {
            return false;
        }

        counts.Facts.Columns(table.Columns.Names, table.FieldCount, [.. binding.Time.Fields, .. binding.Columns.Select(c => c.Field), .. RowChoice.FieldsOf(export, table.Columns)]);
        using var pump = new BlockPump(rows.Take);
        var blocks = new RowBlocks(rows, pump, blockRows);
        var hours = new RepeatedHourRows(_sequence, rows, counts, aside);
        ReadRows(opened, table, binding, plan, row => Keep(row, blocks, hours), () => rows.MustSort);
        RowChoice.Report(counts, aside);
        _odd.Report();
        hours.SettleAll(blocks.Waiting);
        blocks.Flush();
        hours.PassOn();
        NoteStep();
        return true;
    }

    private void ReadRows(OpenedExport opened, ExportTable table, RowBinding binding, StampPlan? plan, Action<HeldRow> keep, Func<bool> stop)
    {
        var window = new RowWindow(binding.Columns.Length);
        var last = new LastCell(counts, aside);
        int timed = 0;
        bool more;
        while ((more = table.Next()) && !stop())
        {
            last.LookBehind(window, table, binding.Columns);
            binding = binding.IsFor(table) ? binding : RowBinding.TryBind(export, table, plan, aside)!; // a new header is taken only where the time is in it
            if (TryStamp(table, binding, ref timed, out long utc, out LocalMeaning meaning))
            {
                Fill(window.Next, table, binding, utc, meaning);
                window.Push();
                last.Note(window.Newest!);
                Release(window, keep, atEnd: false);
            }
        }

        last.LookBehind(window, table, binding.Columns);
        if (!more && opened.EndsOpen())
        {
            last.LookAtEnd(window, table, binding.Columns);
        }

        Release(window, keep, atEnd: true);
        if (export.Time.MoreFormats.IsEmpty)
        {
            counts.Facts.TimeFormats([(export.Time.Format, timed)]);
        }
    }

    /// <summary>The instant of the current row; false where the row goes no further, which is noted.</summary>
    private bool TryStamp(ExportTable table, RowBinding binding, ref int timed, out long utc, out LocalMeaning meaning)
    {
        (utc, meaning) = (0, LocalMeaning.Once);
        if (binding.Choice is not null && !binding.Choice.Fits(table))
        {
            counts.LeaveToOthers();
            return false;
        }

        TimeColumns time = binding.Time;
        if (!time.TryRead(table, out LocalStamp stamp) || !binding.Midnights.Fit(table, time, stamp))
        {
            table.SetTimeAside(time.Fault, time.Column, time.Found(table), time.Expected);
            return false;
        }

        timed++;
        meaning = _sequence.Add(stamp, time.IsBareDate(table, stamp), out utc);
        if (meaning == LocalMeaning.Skipped)
        {
            table.SetAside(ProblemCodes.TimeSkipped, time.Column, time.Found(table), $"a time that {export.Time.Zone.Id} has");
        }

        return meaning != LocalMeaning.Skipped;
    }

    private void Fill(HeldRow row, ExportTable table, RowBinding binding, long utc, LocalMeaning meaning)
    {
        row.Take(table, utc, meaning);
        binding.Numbers.Read(table);
        if (binding.Whole?.Read(binding.Numbers, row.Values) != true)
        {
            ReadCells(table, binding, utc, row.Values);
        }

        row.OddField = table.HasIsoTimes ? -1 : binding.Forms.OddField(table, row.Values); // rows of a workbook are never torn
        row.EndIsWhole = binding.Forms.IsWhole(table.FieldCount - 1);
    }

    private void ReadCells(ExportTable table, RowBinding binding, long utc, double[] values)
    {
        ReadingColumn[] columns = binding.Columns;
        for (int c = 0; c < columns.Length; c++)
        {
            ref readonly ReadingColumn column = ref columns[c];
            if (binding.Whole?.IsValue(c) == true)
            {
                continue;
            }

            if (column.Field < 0 || binding.Choice?.Takes(c) == false)
            {
                values[c] = double.NaN;
                continue;
            }

            ValueReader reader = column.Later.IsEmpty ? column.Reader : column.ReaderAt(utc);
            double number = binding.Numbers[column.Field];
            CellKind kind = double.IsNaN(number) ? reader.Read(table.Field(column.Field), out values[c]) : reader.Read(number, out values[c]);
            if (kind > CellKind.Missing && _odd.Add(kind, column.Field + 1, column.Name, table.Field(column.Field), table.Line, reader))
            {
                counts.CellsNotRead++;
            }
        }
    }

    /// <summary>Passes on the rows that can be judged, and sets aside those that are torn.</summary>
    private void Release(RowWindow window, Action<HeldRow> keep, bool atEnd)
    {
        while (window.Take(atEnd) is { } row)
        {
            if (_torn.FaultOf(window, row) is { } fault)
            {
                counts.SetAside++;
                aside.AddRow(fault, row.Line, null, row.Raw, "a row like those above and below", row.Raw);
            }
            else
            {
                keep(row);
            }
        }
    }

    private void Keep(HeldRow row, RowBlocks blocks, RepeatedHourRows hours)
    {
        _stamps.Add(row.Utc);
        YearRows block = blocks.Append(row.Utc, fileIndex, row.Line, row.Values);
        if (row.Meaning == LocalMeaning.Twice)
        {
            blocks.Waiting.Add(block, row.Raw);
        }
        else if (blocks.Waiting.IsDue())
        {
            hours.Settle(blocks.Waiting);
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
