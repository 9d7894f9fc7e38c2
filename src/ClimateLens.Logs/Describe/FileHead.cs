using ClimateLens.Logs.Describe.Cutting;
using ClimateLens.Logs.Describe.Meaning;
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
        fault = layout is null ? NoTable(lines, cut) : null;
        return layout is null ? null : new FileHead(file, encoding, layout, lines);
    }

    private static string NoTable(LineSample lines, CutGuess? cut)
        => cut is not null && lines.All.Count <= 3 ? "a header and no row of data" : "no table: no rows of a time and numbers, parted by ; , | tab, blanks or fixed widths";
}
