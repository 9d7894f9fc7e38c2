using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Reading;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Cutting;

/// <summary>Finds the first row of data and, above it, names, units, groups and titles.</summary>
internal static class HeaderFinder
{
    private const int MostHeaderLines = 5;
    private const int LookAhead = 6;
    private const int FewestAbove = 3;

    /// <summary>
    /// The layout; null when no line looks like data. Where a file changes in its middle, the columns of its first rows count: the import
    /// follows a new header, but never reads what stands above the first.
    /// </summary>
    public static Layout? Of(LineSample sample, CutGuess cut)
    {
        Layout? layout = Find(sample, cut);
        return layout is not null && FieldsAbove(sample, layout) is int fields ? Find(sample, cut with { Fields = fields }) is { } first && first.DataLine < layout.DataLine ? first : layout : layout;
    }

    /// <summary>Number of cells of rows that look like data and stand above the names; null where there are none.</summary>
    private static int? FieldsAbove(LineSample sample, Layout layout)
    {
        string[][] above = [.. sample.Head.Where(line => !line.IsBlank && line.Number < layout.NamesLine).Select(line => layout.Cut.Cutter.Cut(line.Text))];
        string[][] data = [.. above.Where(cells => Array.Exists(cells, c => CellSorts.Of(c) == CellSort.Stamp) && Array.Exists(cells, c => CellSorts.Of(c) == CellSort.Number))];
        return data.Length < FewestAbove ? null : data.GroupBy(cells => cells.Length).MaxBy(g => g.Count())!.Key;
    }

    private static Layout? Find(LineSample sample, CutGuess cut)
    {
        var model = RowModel.Of(sample.All.Select(line => cut.Cutter.Cut(line.Text)), cut.Fields);
        List<HeadLine> head = [.. sample.Head.Where(line => !line.IsBlank).Select(line => new HeadLine(line.Number, line.Text, cut.Cutter.Cut(line.Text)))];
        int first = FirstData(head, model);
        if (first < 0 || !model.Sorts.Any(s => s is CellSort.Number or CellSort.Stamp))
        {
            return null;
        }

        List<HeadLine> above = Joined(head[..first], cut);
        List<HeadLine> header = Header(above, cut.Fields);
        HeadLine? units = header.FindLast(line => UnitRows.IsUnits(line.Cells));
        HeadLine? names = header.Where(line => line != units && !UnitRows.IsKinds(line.Cells)).MaxBy(line => UnitRows.NameScore(line.Cells));
        HeadLine? groups = names is null ? null : header.FindLast(line => line.Number < names.Number && line != units && IsGroups(line.Cells));
        int firstUsed = names is null ? above.Count : above.IndexOf(groups ?? names);
        int shift = names is not null && names.Cells.Length == cut.Fields - 1 && IsIndex(sample, cut) ? 1 : 0;
        bool fits = names is not null && shift == 0 && Fit(names.Cells, cut, sample);
        int named = names is null ? 0 : Array.FindLastIndex(names.Cells, c => c.Length > 0) + 1;
        return new Layout(
            cut, names?.Number ?? 0, units?.Number ?? 0, head[first].Number,
            Spread(names?.Cells, cut.Fields, shift), Spread(units?.Cells, cut.Fields, shift), Spread(groups?.Cells, cut.Fields, 0),
            [.. above.Take(firstUsed).Select(line => line.Text.Trim().TrimEnd(cut.Delimiter ?? ' '))])
        {
            GroupsLine = groups?.Number ?? 0,
            NamesFit = fits,
            StrayNames = names is null || fits || shift > 0 || named == cut.Fields ? 0 : named,
            Comment = Comments.Of(sample, model, cut),
            Sorts = model.Sorts,
        };
    }

    private static int FirstData(List<HeadLine> head, RowModel model)
    {
        bool[] fits = [.. head.Select(line => model.Fits(line.Cells))];
        for (int i = 0; i < fits.Length; i++)
        {
            int ahead = Math.Min(LookAhead, fits.Length - i);
            if (fits[i] && fits.AsSpan(i, ahead).Count(true) * 5 >= ahead * 3)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>The lines above the data, those joined that a quoted name stands over.</summary>
    private static List<HeadLine> Joined(List<HeadLine> lines, CutGuess cut)
    {
        var joined = new List<HeadLine>();
        bool open = false;
        foreach (HeadLine line in lines)
        {
            if (open)
            {
                string text = $"{joined[^1].Text} {line.Text}";
                joined[^1] = new HeadLine(joined[^1].Number, text, cut.Cutter.Cut(text));
            }
            else
            {
                joined.Add(line);
            }

            open = cut.Delimiter is not (null or ' ') && joined[^1].Text.Count(c => c == cut.Quote) % 2 == 1;
        }

        return open ? lines : joined;
    }

    /// <summary>Lines of words above the data that have about as many cells, top first.</summary>
    private static List<HeadLine> Header(List<HeadLine> above, int fields)
    {
        var header = new List<HeadLine>();
        for (int i = above.Count - 1; i >= 0 && header.Count < MostHeaderLines; i--)
        {
            string[] cells = above[i].Cells;
            int filled = cells.Count(c => c.Length > 0);
            int words = cells.Count(c => CellSorts.Of(c) is CellSort.Text or CellSort.Missing || UnitWords.Of(c) is not null);
            bool named = cells.Length >= Math.Max(2, (fields + 1) / 2) && filled > 0 && words * 2 >= filled;
            if (!named)
            {
                break;
            }

            header.Insert(0, above[i]);
        }

        return header;
    }

    /// <summary>Names over groups of columns reach into the second half of the table; titles stand at its start.</summary>
    private static bool IsGroups(string[] cells)
        => cells.Count(c => c.Length > 0) > 1 && Array.FindLastIndex(cells, c => c.Length > 0) * 2 >= cells.Length && !cells.Any(c => CellSorts.Of(c) is CellSort.Stamp or CellSort.Number);

    private static bool IsIndex(LineSample sample, CutGuess cut)
    {
        string[][] rows = [.. sample.All.Select(line => cut.Cutter.Cut(line.Text)).Where(row => row.Length == cut.Fields)];
        bool endsInMark = rows.All(row => row[^1].Length == 0); // then it is not the first column that has no name
        return rows.Length > 2 && !endsInMark && rows.Count(row => row[0].Length > 0 && row[0].All(char.IsAsciiDigit)) > 0.9 * rows.Length;
    }

    /// <summary>A row may have empty cells behind those that the header names, and no fewer.</summary>
    private static bool Fit(string[] names, CutGuess cut, LineSample sample)
    {
        if (names.Length >= cut.Fields)
        {
            return names.Length == cut.Fields;
        }

        string[][] rows = [.. sample.All.Select(line => cut.Cutter.Cut(line.Text)).Where(row => row.Length == cut.Fields)];
        return rows.Count(row => row.Skip(names.Length).All(c => c.Length == 0)) > 0.95 * rows.Length;
    }

    private static ImmutableArray<string> Spread(string[]? cells, int fields, int shift)
        => [.. Enumerable.Range(0, fields).Select(i => cells is not null && i - shift >= 0 && i - shift < cells.Length ? cells[i - shift] : "")];

    /// <summary>A line near the top, cut.</summary>
    private sealed record HeadLine(int Number, string Text, string[] Cells);
}
