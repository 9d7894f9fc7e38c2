namespace ClimateLens.Logs.Describe.Reading;

/// <summary>A row of data of a sample.</summary>
/// <param name="Line">Its line.</param>
/// <param name="Cells">Its cells.</param>
internal readonly record struct SampleRow(int Line, string[] Cells);

/// <summary>Every k-th row of data, so that there are never more cells than memory should hold.</summary>
/// <param name="fields">Cells of a row.</param>
internal sealed class RowSample(int fields)
{
    private const int MostCells = 400_000;
    private const int MostRows = 6_000;

    private readonly int _most = Math.Clamp(MostCells / Math.Max(1, fields), 40, MostRows);
    private readonly List<SampleRow> _rows = [];
    private long _stride = 1;
    private long _seen;

    /// <summary>The rows, in the order of the file.</summary>
    public IReadOnlyList<SampleRow> Rows => _rows;

    /// <summary>Whether a row is left out between two.</summary>
    public bool IsThinned => _stride > 1;

    /// <summary>Adds the next row.</summary>
    public void Add(int line, string[] cells)
    {
        if (_seen++ % _stride != 0)
        {
            return;
        }

        _rows.Add(new SampleRow(line, cells));
        if (_rows.Count < 2 * _most)
        {
            return;
        }

        int kept = 0;
        for (int i = 0; i < _rows.Count; i += 2)
        {
            _rows[kept++] = _rows[i];
        }

        _rows.RemoveRange(kept, _rows.Count - kept);
        _stride *= 2;
    }
}
