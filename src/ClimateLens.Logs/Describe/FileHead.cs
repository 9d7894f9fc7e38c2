using ClimateLens.Logs.Describe.Cutting;
using ClimateLens.Logs.Describe.Meaning;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Reading;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe;

/// <summary>What is known of a file before all its rows are walked over.</summary>
/// <param name="File">The file.</param>
/// <param name="Encoding">Its encoding.</param>
/// <param name="Layout">Where names and data stand.</param>
/// <param name="Lines">Lines spread over it.</param>
internal sealed record FileHead(SourceText File, EncodingGuess Encoding, Layout Layout, LineSample Lines)
{
    private const int FewFields = 3;

    /// <summary>Files with the same key are of one kind.</summary>
    public string Kind
    {
        get
        {
            HeaderText title = HeaderText.Of(string.Join(" ", Layout.Titles.Append(Path.GetFileNameWithoutExtension(File.ShortName))));
            string about = Layout.Fields <= FewFields ? string.Join(',', title.Ideas.Order()) : "";
            return string.Join('\u001f', Dialect, File.Sheet, Layout.NamesLine, Layout.DataLine, string.Join('\u001e', Layout.Names), HouseTags.Of(title), about);
        }
    }

    /// <summary>Files with the same key are cut and encoded alike. ASCII is any encoding.</summary>
    public string Dialect => File.IsWorkbook ? "a workbook" : string.Join('\u001f', Encoding.IsAscii ? "" : Encoding.Name, Layout.Cut.Delimiter, string.Join(',', Layout.Cut.Widths), Layout.Cut.Quote);

    /// <summary>Looks at a file; null and what is wrong when it is no table.</summary>
    public static FileHead? Of(SourceText file, out string? fault)
    {
        EncodingGuess encoding = EncodingScan.Of(file);
        fault = encoding.NoText is { } what ? $"{what}, no text" : null;
        if (fault is not null)
        {
            return null;
        }

        var lines = LineSample.Of(file.Lines(encoding));
        if (lines.All.Count == 0)
        {
            fault = "nothing but blanks";
            return null;
        }

        CutGuess? cut = DelimiterVote.Of(lines);
        Layout? layout = cut is null ? null : HeaderFinder.Of(lines, cut);
        fault = layout is null ? NoTable(lines, cut) : CommaTwice(lines, layout);
        return layout is null || fault is not null ? null : new FileHead(file, encoding, layout, lines);
    }

    /// <summary>More cells than names, parted by commas, and not one decimal point: the comma is a decimal mark as well, and nothing tells them apart.</summary>
    private static string? CommaTwice(LineSample lines, Layout layout)
    {
        bool doubted = layout.Cut.Delimiter == ',' && layout.StrayNames > 0 && layout.StrayNames < layout.Fields;
        IEnumerable<string> cells = lines.All.Where(line => line.Number >= layout.DataLine).SelectMany(line => layout.Cut.Cutter.Cut(line.Text));
        return doubted && cells.All(c => NumberShapes.Of(c) is NumberShape.None or NumberShape.Whole)
            ? $"commas between the cells and as decimal marks: line {layout.DataLine} has {layout.Fields} cells for {layout.StrayNames} names. Export it with another mark between the cells, or with numbers in quotes"
            : null;
    }

    private static string NoTable(LineSample lines, CutGuess? cut)
        => lines.All[0].Text.AsSpan().TrimStart() is ['<', ..] ? "a web page (HTML or XML) and no table of text, whatever its name says; a spreadsheet can open it and save it as CSV"
        : lines.All[0].Text.AsSpan().TrimStart() is ['{' or '[', '"' or '{' or ' ' or '\t', ..] or ['{' or '['] ? "JSON and no table of text"
        : cut is not null && lines.All.Count <= 3 ? "a header and no row of data" : "no table: no rows of a time and numbers, parted by ; , | tab, blanks or fixed widths";
}
