using System.Text;
using System.Text.RegularExpressions;
using ClimateLens.Analysis;
using ClimateLens.Logs;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.Reports;
using ClimateLens.TestKit;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>All that a page says goes through the language files: in a language that marks every message, nothing stays without marks.</summary>
public sealed partial class LanguageTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Fact]
    public void Pages_InALanguageThatMarksItsMessages_HaveNoTextWithout()
    {
        Assert.True(Language.TryGet("nl", out Language? dutch));
        Language marked = new("nl", '.', ",", dutch.Words.Keys.Select(m => KeyValuePair.Create(m, Marked(m))));
        string file = Path.Combine(_folder.CopyFolder(Repository.PathOf("sample-logs"), "sample-logs"), "nursery.toml");
        NurserySettings nursery = NurseryFileReader.Read(file);
        using ReadingStore store = ReadingStore.Open(nursery, Path.GetDirectoryName(file)!);
        store.Import(_ => { });
        SitePublisher site = new(_folder.PathOf("site"), new PageOptions(UnitSystem.Metric) { Language = marked });
        foreach ((string house, string week) in ((string, string)[])[("1", "2025-W42"), ("1", "2025-W38"), ("2", "2025-W40"), ("2", "2025-W44")])
        {
            Assert.True(IsoWeek.TryParse(week, out IsoWeek iso));
            HouseInput input = store.Load(nursery.Houses.Single(h => h.Id == house), iso.In(nursery.Zone), ReviewPipeline.RunIn, ReviewPipeline.History);
            using Language.Scope scope = marked.Use();
            site.Publish(ReviewPipeline.Run(input));
        }

        site.Complete("x");
        string[] pages = [.. Directory.EnumerateFiles(_folder.PathOf("site"), "*.html", SearchOption.AllDirectories)];
        Assert.True(pages.Length > 15);
        Assert.Equal("", string.Join(' ', pages.SelectMany(p => Unmarked(File.ReadAllText(p))).Distinct().Order(StringComparer.Ordinal)));
    }

    public void Dispose() => _folder.Dispose();

    private static string Marked(string message)
    {
        string text = message.Trim(' ', '\n');
        int lead = message.IndexOf(text, StringComparison.Ordinal);
        return $"{message[..lead]}\u27E6{text}\u27E7{message[(lead + text.Length)..]}";
    }

    private static IEnumerable<string> Unmarked(string html)
    {
        string visible = Hidden().Replace(html, " ");
        StringBuilder read = new();
        foreach (Match attribute in ReadAttributes().Matches(visible))
        {
            read.Append('\n').Append(attribute.Groups[1].Value);
        }

        foreach (string text in (string[])[Tags().Replace(visible, " "), read.ToString()])
        {
            StringBuilder outside = new();
            int depth = 0;
            foreach (char c in text)
            {
                depth += c == '\u27E6' ? 1 : c == '\u27E7' ? -1 : 0;
                outside.Append(depth == 0 && c != '\u27E7' ? c : ' ');
            }

            foreach (Match word in Words().Matches(System.Net.WebUtility.HtmlDecode(outside.ToString())))
            {
                if (!Kept.Contains(word.Value))
                {
                    yield return word.Value;
                }
            }
        }
    }

    // Names of the sample nursery, of files, units and codes, and what its people wrote down.
    private static readonly HashSet<string> Kept = new(StringComparer.Ordinal)
    {
        "House", "Gannet", "Row", "cyclamen", "poinsettia", "ClimateLens", "mm", "kPa", "pH", "ppm", "MJ", "min", "carbamates", "BM", "RH",
        "drench", "root", "rot", "spray", "grey", "mould", "propamocarb", "fenhexamid", "Trichoderma", "asperellum", "cyprodinil", "fludioxonil", "per",
    };

    // Code, names of users, scripts, data files and English kept as such.
    [GeneratedRegex("<(script|style|pre|code|bdi)[^>]*>.*?</\\1>|<span lang=\"en\">.*?</span>|<a [^>]*>[a-z-]+\\.(?:csv|json|html)</a>|<head>.*?</head>|[0-9a-f]{12,}", RegexOptions.Singleline)]
    private static partial Regex Hidden();

    [GeneratedRegex("(?:aria-label|title|alt)=\"([^\"]*)\"")]
    private static partial Regex ReadAttributes();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();

    [GeneratedRegex("[A-Za-z]{2,}")]
    private static partial Regex Words();
}
