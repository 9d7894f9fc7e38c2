using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace ClimateLens.Browser.Tests;

/// <summary>The rules of axe-core (WCAG 2.2 A and AA and best practice) on one page of each kind, everything unfolded.</summary>
[Collection(SiteCollection.Name)]
public class AccessibilityTests(SampleSite site)
{
    [Theory]
    [InlineData("rich")]
    [InlineData("empty")]
    [InlineData("index")]
    public async Task Page_OfEachKind_HasNoViolation(string kind)
    {
        string address = kind switch { "rich" => site.Rich, "empty" => site.Empty, _ => site.Index };
        await using OpenPage open = await site.Open(address, kind == "rich" ? 360 : 1280);
        await open.Page.EvaluateAsync("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        AxeResult result = await open.Page.RunAxe();
        Assert.True(result.Passes.Length > 10);
        Assert.True(
            result.Violations.Length == 0,
            string.Join('\n', result.Violations.Select(v => $"{v.Id}: {v.Help} ({string.Join("; ", v.Nodes.Take(3).Select(n => n.Html))})")));
    }
}
