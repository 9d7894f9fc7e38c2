using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Formats;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Pages;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Publishing;

/// <summary>The pages that a house's week has, their marks, and the files that each stands in.</summary>
/// <param name="options">How pages are to read.</param>
/// <param name="cells">The parts of a page, in order; null for the notebooks of the options.</param>
internal sealed class PageSet(PageOptions options, IReadOnlyList<IReportCell>? cells)
{
    /// <summary>Ending of a page as a Jupyter notebook.</summary>
    public const string IpynbEnding = ".ipynb";

    private const string SingleFileEnding = ".single.html";

    /// <summary>Whether there is one page, of cells named by the caller.</summary>
    public bool IsOfCells => cells is not null;

    /// <summary>Each page of a house's week, with the mark that it bears when it is as it would be made now.</summary>
    public IEnumerable<(string File, string Mark)> Marks(string inputHash)
    {
        if (cells is not null)
        {
            return [("index.html", PageMark.Of(inputHash, options.Units))];
        }

        ImmutableArray<Notebook> notebooks = options.Notebooks.For(NotebookKind.HouseWeek);
        return notebooks.Select(n => (n.PageName, PageMark.Of(inputHash, options.Units, n, notebooks)));
    }

    /// <summary>The pages of a house and week: one a notebook.</summary>
    public ImmutableArray<(string File, RenderedPage Page)> Render(Review review, ImmutableSortedDictionary<string, byte[]> data, HashSet<string> standing)
    {
        DisplayUnits units = new(options.Units);
        if (cells is not null)
        {
            return standing.Contains("index.html") ? [] : [("index.html", HouseWeekPage.Render(review, units, data.Keys, cells))];
        }

        ImmutableArray<Notebook> notebooks = options.Notebooks.For(NotebookKind.HouseWeek);
        Lazy<JsonDocument> values = new(() => JsonDocument.Parse(data[DataFiles.Review]));
        return [.. notebooks.Where(n => !standing.Contains(n.PageName)).Select(n => (n.PageName, HouseWeekPage.Render(review, units, data.Keys, n, notebooks, values, options.Store)))];
    }

    /// <summary>Pages as files, in the formats asked for, the folder's own last.</summary>
    public IEnumerable<(string Place, ReadOnlyMemory<byte> Content)> Written(string folder, ImmutableArray<(string File, RenderedPage Page)> pages, IReadOnlyDictionary<string, byte[]> data)
    {
        foreach ((string file, RenderedPage page) in pages.OrderBy(p => p.File == "index.html"))
        {
            string stem = $"{folder}/{Path.GetFileNameWithoutExtension(file)}";
            if (options.Ipynb)
            {
                yield return ($"{stem}{IpynbEnding}", Ipynb.Write(page.Head.Title, page.Head.Under, page.Parts));
            }

            if (options.SingleFile)
            {
                yield return ($"{stem}{SingleFileEnding}", Encoding.UTF8.GetBytes(SingleFile.Of(page.Html, data)));
            }

            yield return ($"{folder}/{file}", Encoding.UTF8.GetBytes(page.Html));
        }
    }

    /// <summary>Names of the files of a page.</summary>
    public IEnumerable<string> FilesOf(string page)
    {
        string stem = Path.GetFileNameWithoutExtension(page);
        return [page, .. options.Ipynb ? (string[])[stem + IpynbEnding] : [], .. options.SingleFile ? (string[])[stem + SingleFileEnding] : []];
    }
}
