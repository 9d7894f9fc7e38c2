using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Tests.Languages;

/// <summary>What the builder takes for text that people read, and where translations go.</summary>
public sealed class MarkupTextsTests
{
    private static readonly Language Test = new("xx", ',', ".", new Dictionary<string, string>
    {
        ["Rows of {0}"] = "[{0}: rows]",
        ["{0} of {1}"] = "[{1} out of {0}]",
        ["Read me"] = "[read me]",
        ["plain"] = "[plain]",
        ["{0} hour"] = "[{0} h1]",
        ["{0} hours"] = "[{0} hn]",
    });

    [Fact]
    public void Builder_InALanguage_TranslatesTextAndReadAttributesOnly()
    {
        using Language.Scope scope = Test.Use();
        string name = "A&B", css = "Read me";
        string html = HtmlBuilder.Of($"<p class=\"{css}\" title=\"Read me\" data-x=\"Read me\"> Rows of {name} </p><b>{1} of {2}</b><i>Read me</i>{3}<u>unknown words</u>").ToString();
        Assert.Equal("<p class=\"Read me\" title=\"[read me]\" data-x=\"Read me\"> [A&amp;B: rows] </p><b>[2 out of 1]</b><i>[read me]</i>3<u>unknown words</u>", html);
    }

    [Fact]
    public void Builder_InEnglish_KeepsEveryLetter()
    {
        string html = HtmlBuilder.Of($"<p title=\"Read me\">Rows of {"<x>"}</p>").ToString();
        Assert.Equal("<p title=\"Read me\">Rows of &lt;x&gt;</p>", html);
    }

    [Fact]
    public void Phrase_InALanguage_FillsItsHolesAndCounts()
    {
        using (Test.Use())
        {
            Assert.Equal("[plain]", Phrase.Of("plain"));
            Assert.Equal("[two out of 1,5]", Phrase.Of($"{1.5} of {"two"}"));
            Assert.Equal("[1 h1]", Phrase.Count(1, "hour", "hours"));
            Assert.Equal("[3 hn]", Phrase.Count(3, "hour", "hours"));
        }

        Assert.Equal("plain", Phrase.Of("plain"));
        Assert.Equal("1.5 of two", Phrase.Of($"{1.5} of {"two"}"));
    }

    [Fact]
    public async Task Use_FlowsToWorkStartedInIt_AndEndsWithIt()
    {
        Task<string> within;
        using (Test.Use())
        {
            within = Task.Run(() => Phrase.Of("plain"));
        }

        Assert.Equal("[plain]", await within);
        Assert.Equal("plain", await Task.Run(() => Phrase.Of("plain")));
    }
}
