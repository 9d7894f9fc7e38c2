using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// Gives the rows of repeated hours their instant, as soon as the order of the rows tells it, or sets them aside. Rows that
/// cannot be told soon are taken out of their blocks and decided at the end of the file.
/// </summary>
/// <param name="sequence">The stamps of the file.</param>
/// <param name="rows">Takes the late ones.</param>
/// <param name="counts">What became of the rows.</param>
/// <param name="aside">Where rows go that stay undecided.</param>
internal sealed class RepeatedHourRows(StampSequence sequence, FileRows rows, RowCounts counts, SetAsideLog aside)
{
    private readonly List<WaitingRow> _late = [];

    /// <summary>Decides what can be decided soon; the rest waits for the end.</summary>
    public void Settle(WaitingRows waiting)
    {
        long?[] resolved = sequence.Resolve();
        List<WaitingRow> taken = waiting.TakeAll();
        foreach (WaitingRow row in taken)
        {
            if (!Place(row, resolved[row.Ticket]))
            {
                var alone = new YearRows(row.Block.Names);
                alone.Append(row.Block, row.Row, [.. Enumerable.Range(0, alone.Names.Length)]);
                _late.Add(row with { Block = alone, Row = 0 });
                row.Block.Utc[row.Row] = Dropped;
            }
        }

        Compact(taken);
    }

    /// <summary>At the end of the file, before its last blocks are passed on.</summary>
    public void SettleAll(WaitingRows waiting)
    {
        long?[] resolved = sequence.Resolve();
        List<WaitingRow> taken = waiting.TakeAll();
        foreach (WaitingRow row in (IEnumerable<WaitingRow>)[.. _late, .. taken])
        {
            if (!Place(row, resolved[row.Ticket]))
            {
                counts.SetAside++;
                aside.Add(ProblemCodes.TimeTwice, row.Block.Line[row.Row], null, row.Raw, "rows whose order shows the clock put back once");
                row.Block.Utc[row.Row] = Dropped;
            }
        }

        Compact(taken);
        Compact(_late);
    }

    /// <summary>Passes on the rows that were decided late, behind all others.</summary>
    public void PassOn()
    {
        foreach (IGrouping<int, WaitingRow> year in _late.Where(row => row.Block.Count > 0).GroupBy(row => CivilDate.YearOf(row.Block.Utc[0])))
        {
            var block = new YearRows(year.First().Block.Names);
            int[] places = [.. Enumerable.Range(0, block.Names.Length)];
            foreach (WaitingRow row in year)
            {
                block.Append(row.Block, 0, places);
            }

            rows.Take(year.Key, block);
        }
    }

    private const long Dropped = long.MinValue;

    /// <summary>No clock is put back over the turn of a UTC year in a way that moves a row into another block; if one were, its row is set aside.</summary>
    private static bool Place(WaitingRow row, long? resolved)
    {
        if (resolved is not long utc || CivilDate.YearOf(utc) != CivilDate.YearOf(row.Block.Utc[row.Row]))
        {
            return false;
        }

        row.Block.Utc[row.Row] = utc;
        return true;
    }

    private static void Compact(List<WaitingRow> taken)
    {
        foreach (YearRows block in taken.Select(row => row.Block).Distinct())
        {
            int kept = 0;
            for (int i = 0; i < block.Count; i++)
            {
                if (block.Utc[i] != Dropped)
                {
                    block.Move(i, kept++);
                }
            }

            block.Count = kept;
        }
    }
}
