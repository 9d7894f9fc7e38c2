using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Cells;

/// <summary>What stands folded below a cell: method, source, what is assumed, error, and the data with the query that reads them from the store.</summary>
internal static class CellFold
{
    /// <summary>The fold; empty where there is nothing to say.</summary>
    /// <param name="basis">What the cell rests on.</param>
    /// <param name="method">What the cell itself says of its method, or empty.</param>
    /// <param name="context">All that the cell looked at.</param>
    public static Html Of(CellBasis basis, string method, CellContext context)
    {
        MethodNote[] methods = [.. basis.Methods.Select(key => context.Review.Provenance.Methods.FirstOrDefault(m => m.Key == key)).OfType<MethodNote>()];
        string[] files = [.. basis.Files.Where(f => context.Files.Contains(f))];
        if (methods.Length == 0 && files.Length == 0 && method.Length == 0)
        {
            return Html.Empty;
        }

        HtmlBuilder fold = new();
        fold.Line($"<details class=\"how screen\"><summary>{Summary}</summary><dl class=\"pairs\">");
        Texts(fold, Phrase.Of("Method"), [.. method.Length > 0 ? (string[])[method] : [], .. methods.Select(m => $"{Words.Capital(m.What)}: {m.How}")]);
        Texts(fold, Phrase.Of("Source"), [.. methods.Select(m => $"{Words.Capital(m.What)}: {m.Source}.")]);
        Texts(fold, Phrase.Of("Assumed"), basis.RestsOnLeaves && context.Review.LeafBasis is { } leaves ? [.. leaves.Assumed] : []);
        Texts(fold, Phrase.Of("Error and range"), [.. methods.Select(m => $"{Words.Capital(m.What)}: {m.Error}")]);
        Data(fold, basis, files, context);
        return fold.Line($"</dl></details>").ToHtml();
    }

    /// <summary>A cell's content with its method and data files folded below it, for pages that rest on reviews alone.</summary>
    public static CellContent Plain(CellContent content, string[] files)
    {
        if (content.IsNothing || (content.Method.Length == 0 && files.Length == 0))
        {
            return content;
        }

        HtmlBuilder fold = new();
        fold.Line($"<details class=\"how screen\"><summary>{Summary}</summary><dl class=\"pairs\">");
        Texts(fold, Phrase.Of("Method"), content.Method.Length > 0 ? [content.Method] : []);
        Files(fold, files);
        return content with { Fold = fold.Line($"</dl></details>").ToHtml() };
    }

    private static string Summary => Phrase.Of("Method and data");

    private static void Texts(HtmlBuilder fold, string name, string[] texts)
    {
        if (texts.Length == 0)
        {
            return;
        }

        fold.Add($"<div><dt>{name}</dt>");
        foreach (string text in texts)
        {
            fold.Add($"<dd>{text}</dd>");
        }

        fold.Line($"</div>");
    }

    private static void Data(HtmlBuilder fold, CellBasis basis, string[] files, CellContext context)
    {
        Files(fold, files);

        if (basis.Channels.Length > 0 && StoreQuery.Readings(context.Review, context.Store, basis.Channels) is { } readings)
        {
            Query(fold, Phrase.Of("The readings behind it, from the store"), readings);
        }

        foreach (RecordKind kind in basis.Records)
        {
            if (StoreQuery.Records(context.Review, context.Store, kind) is { } records)
            {
                Query(fold, Phrase.Of($"The records behind it ({PlainNames.Of(RecordKinds.WordOf(kind))}), from the store"), records);
            }
        }
    }

    private static void Files(HtmlBuilder fold, string[] files)
    {
        if (files.Length == 0)
        {
            return;
        }

        fold.Add($"<div><dt>Data (SI units)</dt><dd>");
        for (int i = 0; i < files.Length; i++)
        {
            fold.Add($"{(i == 0 ? "" : ", ")}<a href=\"{files[i]}\">{files[i]}</a>");
        }

        fold.Line($"</dd></div>");
    }

    private static void Query(HtmlBuilder fold, string name, StoreQuery query)
    {
        fold.Line($"<div><dt>{name}</dt><dd>DuckDB, in the nursery file's folder:<pre tabindex=\"0\"><code>{query.Sql}</code></pre></dd><dd>pandas:<pre tabindex=\"0\"><code>{query.Python}</code></pre></dd></div>");
    }
}
