using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Logs.Times;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Readings;

/// <summary>Where time and columns stand in the rows of a table, from one header to the next.</summary>
internal sealed class RowBinding
{
    private readonly int _header;

    private RowBinding(ExportSettings export, ExportTable table, TimeColumns time, SetAsideLog aside)
    {
        _header = table.HeadersTaken;
        Time = time;
        Columns = ReadingColumns.Bind(export, table.Columns, aside.Problems);
        Choice = RowChoice.Of(export, table.Columns, Columns);
        Numbers = new PlainNumbers(table.Delimiter, Columns);
        Whole = WholeRow.Of(Columns, Numbers);
        Forms = new CellForms(Numbers, Columns);
    }

    /// <summary>The time.</summary>
    public TimeColumns Time { get; }

    /// <summary>The columns.</summary>
    public ReadingColumn[] Columns { get; }

    /// <summary>Which columns a row feeds; null where every row feeds all.</summary>
    public RowChoice? Choice { get; }

    /// <summary>The numbers of the current row.</summary>
    public PlainNumbers Numbers { get; }

    /// <summary>The values of a row at once; null where each row asks which columns it feeds, or how.</summary>
    public WholeRow? Whole { get; }

    /// <summary>What the cells look like.</summary>
    public CellForms Forms { get; }

    /// <summary>How midnight is written.</summary>
    public Midnights Midnights { get; } = new();

    /// <summary>Finds time and columns; null where the time or what a condition asks for is not there, which is reported.</summary>
    public static RowBinding? TryBind(ExportSettings export, ExportTable table, StampPlan? plan, SetAsideLog aside)
        => TimeColumns.Bind(export.Time, table.Columns, aside, plan) is { } time && RowChoice.Check(export, table.Columns, aside) ? new RowBinding(export, table, time, aside) : null;

    /// <summary>Whether it is for the rows below the table's last header.</summary>
    public bool IsFor(ExportTable table) => _header == table.HeadersTaken;
}
