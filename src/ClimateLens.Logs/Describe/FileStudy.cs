using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Cutting;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Reading;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe;

/// <summary>Walks over a file: once for its encoding, once for its layout, once for what all its rows say.</summary>
internal static class FileStudy
{
    private const int OddShown = 3;

    /// <summary>Studies a file; null and what is wrong when it is no table.</summary>
    public static Study? Of(SourceText file, out string? fault)
    {
        EncodingGuess encoding = EncodingScan.Of(file);
        fault = encoding.NoText is { } what ? $"{what}, no text: save it as text (CSV) first" : null;
        if (fault is not null)
        {
            return null;
        }

        var sample = LineSample.Of(file.Lines(encoding));
        if (sample.All.Count == 0)
        {
            fault = "the file holds nothing: export it again";
            return null;
        }

        CutGuess? cut = DelimiterVote.Of(sample);
        Layout? layout = cut is null ? null : HeaderFinder.Of(sample, cut);
        if (layout is null)
        {
            fault = NoTable(sample, cut);
            return null;
        }

        return Walk(file, encoding, layout, sample);
    }

    private static string NoTable(LineSample sample, CutGuess? cut)
        => cut is not null && sample.All.Count <= 3
            ? "the file has a header and no row of data: export a period that has readings"
            : "no table with a time and numbers was found in it: climatelens reads rows of a date and values, parted by ; , | tab, blanks or fixed widths";

    private static Study Walk(SourceText file, EncodingGuess encoding, Layout layout, LineSample lines)
    {
        ImmutableArray<HeaderText> headers = [.. Enumerable.Range(0, layout.Fields).Select(i => HeaderText.Of(layout.Names[i], layout.Units[i]))];
        var model = new RowModel(layout.Fields, layout.Sorts);
        List<string[]> known = [.. lines.All.Where(line => line.Number >= layout.DataLine).Select(line => layout.Cut.Cutter.Cut(line.Text)).Where(model.Fits)];
        List<TimePlan> plans = new TimePlans(headers, layout.Sorts, known).All();
        ImmutableArray<StampTally> stamps = [.. plans.SelectMany(plan => plan.Formats.Select(format => StampTally.TryCreate(plan.Source, format))).OfType<StampTally>()];
        ImmutableArray<MixedTally> mixed = [.. plans.Select(plan => Pair(plan, known)).OfType<MixedTally>()];
        ImmutableArray<NumberTally> numbers = [.. Enumerable.Range(0, layout.Fields).Select(_ => new NumberTally())];
        var rows = new RowSample(layout.Fields);
        var odd = new List<TextLine>();
        (int count, int oddCount, int last) = (0, 0, 0);
        foreach (TextLine line in file.Lines(encoding))
        {
            if (line.Number < layout.DataLine || line.IsBlank || (layout.Comment is char mark && line.Text.StartsWith(mark)))
            {
                continue;
            }

            string[] cells = layout.Cut.Cutter.Cut(line.Text);
            if (!model.Fits(cells))
            {
                oddCount++;
                odd.AddRange(odd.Count < OddShown ? [line] : []);
                continue;
            }

            count++;
            last = line.Number;
            Tally(cells, stamps, mixed, numbers);
            rows.Add(line.Number, cells);
        }

        return new Study(file, encoding, layout, headers, count, last, numbers, stamps, mixed, rows.Rows, [.. odd], oddCount);
    }

    private static void Tally(string[] cells, ImmutableArray<StampTally> stamps, ImmutableArray<MixedTally> mixed, ImmutableArray<NumberTally> numbers)
    {
        TimeSource source = default;
        string text = "";
        for (int i = 0; i < stamps.Length; i++)
        {
            if (i == 0 || stamps[i].Source != source)
            {
                source = stamps[i].Source;
                text = source.Text(cells);
            }

            if (text.Length > 0)
            {
                stamps[i].Add(text);
            }
        }

        foreach (MixedTally pair in mixed)
        {
            pair.Add(pair.Source.Text(cells));
        }

        for (int i = 0; i < numbers.Length; i++)
        {
            numbers[i].Add(i < cells.Length ? cells[i] : "");
        }
    }

    /// <summary>Day first and month first are what files mix.</summary>
    private static MixedTally? Pair(TimePlan plan, List<string[]> rows)
    {
        StampFormat[] pair = [.. ((string[])["dMy", "Mdy"]).Select(order => plan.Formats.FirstOrDefault(f => f.Order == order)).Where(f => f.Text is not null)];
        if (pair.Length < 2 || StampTally.TryCreate(plan.Source, pair[0]) is not { } first)
        {
            return null;
        }

        foreach (string[] row in rows)
        {
            first.Add(plan.Source.Text(row));
        }

        return new MixedTally(plan.Source, pair, first.Order.NewestFirst);
    }
}
