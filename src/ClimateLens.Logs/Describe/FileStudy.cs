using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Cutting;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Reading;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe;

/// <summary>Walks over all rows of files of one kind, as if they were one file.</summary>
internal sealed class FileStudy
{
    private const int OddShown = 3;

    private readonly IReadOnlyList<FileHead> _heads;
    private readonly Layout _layout;
    private readonly RowModel _model;
    private readonly ImmutableArray<HeaderText> _headers;
    private readonly ImmutableArray<StampTally> _stamps;
    private readonly ImmutableArray<MixedTally> _mixed;
    private readonly ImmutableArray<NumberTally> _numbers;
    private readonly RowSample _rows;
    private readonly bool[] _unitCells;
    private readonly List<TextLine> _odd = [];
    private int _count;
    private int _oddCount;
    private int _last;

    private FileStudy(IReadOnlyList<FileHead> heads)
    {
        _heads = heads;
        Layout layout = heads[0].Layout;
        _model = new RowModel(layout.Fields, layout.Sorts);
        List<string[]> known = [.. heads.SelectMany(h => h.Lines.All.Where(line => line.Number >= h.Layout.DataLine)).Select(line => layout.Cut.Cutter.Cut(line.Text)).Where(_model.Fits)];
        UnitMeaning?[] units = [.. layout.Sorts.Select((sort, i) => sort == CellSort.Text ? UnitCells.Of(known.Where(row => i < row.Length).Select(row => row[i])) : null)];
        _unitCells = [.. units.Select(unit => unit is not null)];
        _layout = layout with { Sorts = [.. layout.Sorts.Select((sort, i) => _unitCells[i] ? CellSort.Number : sort)] };
        HeaderText[] named = [.. Enumerable.Range(0, layout.Fields).Select(i => HeaderText.Of(layout.Names[i], layout.Units[i], layout.GroupOf(i)))];
        _headers = [.. named.Select((header, i) => header.Unit is null && units[i] is { } unit ? header with { Unit = unit } : header)];
        List<TimePlan> plans = new TimePlans(_headers, _layout.Sorts, known).All();
        _stamps = [.. plans.SelectMany(plan => plan.Formats.Select(format => StampTally.TryCreate(plan.Source, format))).OfType<StampTally>()];
        _mixed = [.. plans.SelectMany(plan => Pairs(plan, known))];
        _numbers = [.. Enumerable.Range(0, _layout.Fields).Select(_ => new NumberTally())];
        _rows = new RowSample(_layout.Fields);
    }

    /// <summary>Studies files of one kind.</summary>
    public static Study Of(IReadOnlyList<FileHead> heads)
    {
        var study = new FileStudy(heads);
        foreach (FileHead head in heads)
        {
            study.Walk(head);
        }

        return study.Result();
    }

    private Study Result()
    {
        FileHead named = _heads.FirstOrDefault(h => !h.Encoding.IsAscii) ?? _heads[0];
        return new Study([.. _heads.Select(h => h.File)], named.Encoding, _layout, _headers, _count, _last, _numbers, _stamps, _mixed, _rows.Rows, [.. _odd], _oddCount)
        {
            IsCut = _heads.Any(h => h.Encoding.Bytes >= SourceText.MostBytes),
        };
    }

    private void Walk(FileHead head)
    {
        foreach (TextLine line in head.File.Lines(head.Encoding))
        {
            if (line.Number < head.Layout.DataLine || line.IsBlank || (_layout.Comment is char mark && line.Text.StartsWith(mark)))
            {
                continue;
            }

            string[] cells = _layout.Cut.Cutter.Cut(line.Text);
            if (!_model.Fits(cells))
            {
                _oddCount++;
                _odd.AddRange(_odd.Count < OddShown ? [line] : []);
                continue;
            }

            _count++;
            _last = line.Number;
            for (int i = 0; i < Math.Min(cells.Length, _unitCells.Length); i++)
            {
                cells[i] = _unitCells[i] ? UnitCells.Number(cells[i]) : cells[i];
            }

            Tally(cells);
            _rows.Add(line.Number, cells);
        }
    }

    private void Tally(string[] cells)
    {
        TimeSource? source = null;
        string text = "";
        for (int i = 0; i < _stamps.Length; i++)
        {
            if (!ReferenceEquals(_stamps[i].Source, source))
            {
                source = _stamps[i].Source;
                text = source.Text(cells);
            }

            if (text.Length > 0)
            {
                _stamps[i].Add(text);
            }
        }

        foreach (MixedTally pair in _mixed)
        {
            pair.Add(pair.Source.Text(cells));
        }

        for (int i = 0; i < _numbers.Length; i++)
        {
            _numbers[i].Add(i < cells.Length ? cells[i] : "");
        }
    }

    /// <summary>Day first and month first are what files mix; the first row may be either, so both are tried.</summary>
    private static IEnumerable<MixedTally> Pairs(TimePlan plan, List<string[]> rows)
    {
        StampFormat[] pair = [.. ((string[])["dMy", "Mdy"]).Select(order => plan.Formats.FirstOrDefault(f => f.Order == order)).Where(f => f.Text is not null)];
        if (pair.Length < 2 || StampTally.TryCreate(plan.Source, pair[0]) is not { } first)
        {
            return [];
        }

        foreach (string[] row in rows)
        {
            first.Add(plan.Source.Text(row));
        }

        bool down = first.Order.NewestFirst;
        return [new MixedTally(plan.Source, pair, down), new MixedTally(plan.Source, [pair[1], pair[0]], down)];
    }
}
