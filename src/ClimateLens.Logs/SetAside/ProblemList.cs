using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.SetAside;

/// <summary>Collects problems; those of rows and cells that share code, file and column become one with a count.</summary>
internal sealed class ProblemList
{
    private const int LinesNamed = 4;

    private readonly List<Entry> _entries = [];
    private readonly Dictionary<(string Code, string? File, int? Column), Entry> _grouped = [];

    /// <summary>What was collected, in order of first appearance.</summary>
    public ImmutableArray<Problem> ToImmutable() => [.. _entries.Select(entry => entry.Whole())];

    /// <summary>Adds a problem that stands alone.</summary>
    public void Add(Problem problem) => _entries.Add(new Entry(problem, isGrouped: false));

    /// <summary>Adds all of another list, which is used no more.</summary>
    public void Add(ProblemList other)
    {
        foreach (Entry entry in other._entries)
        {
            if (entry.IsGrouped && _grouped.TryGetValue(entry.Key, out Entry? held))
            {
                held.Again(entry);
                continue;
            }

            _entries.Add(entry);
            if (entry.IsGrouped)
            {
                _grouped.Add(entry.Key, entry);
            }
        }
    }

    /// <summary>Adds a problem of a row or cell.</summary>
    /// <param name="code">Its kind.</param>
    /// <param name="file">File.</param>
    /// <param name="line">1-based line, or 0 where none is known.</param>
    /// <param name="column">1-based field, or null.</param>
    /// <param name="text">What stands there.</param>
    /// <param name="expected">What would have been right.</param>
    public void AddRow(ProblemCode code, string file, int line, int? column, ReadOnlySpan<byte> text, string expected)
    {
        if (_grouped.TryGetValue((code.Code, file, column), out Entry? entry))
        {
            entry.Again(line);
            return;
        }

        entry = new Entry(code.In(file, line > 0 ? line : null, column, SafeText.Quote(text), expected), isGrouped: true);
        _grouped.Add(entry.Key, entry);
        _entries.Add(entry);
    }

    private sealed class Entry(Problem first, bool isGrouped)
    {
        private readonly List<int> _lines = [];
        private int _count = first.Count;

        public bool IsGrouped => isGrouped;

        public (string Code, string? File, int? Column) Key => (first.Code, first.File, first.Column);

        public void Again(int line)
        {
            _count++;
            if (_lines.Count < LinesNamed && line > 0)
            {
                _lines.Add(line);
            }
        }

        public void Again(Entry other)
        {
            _count += other._count;
            IEnumerable<int> lines = other.First is int line ? other._lines.Prepend(line) : other._lines;
            _lines.AddRange(lines.Take(LinesNamed - _lines.Count));
        }

        private int? First => first.Line;

        public Problem Whole()
        {
            if (_lines.Count == 0)
            {
                return first with { Count = _count };
            }

            string lines = string.Join(", ", _lines.Select(line => line.ToString(CultureInfo.InvariantCulture)));
            string more = _count - 1 > _lines.Count ? " and more" : "";
            return first with { Found = $"{first.Found}, also line {lines}{more}", Count = _count };
        }
    }
}
