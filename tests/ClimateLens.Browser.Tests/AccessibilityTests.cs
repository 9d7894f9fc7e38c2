using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace ClimateLens.Browser.Tests;

/// <summary>The rules of axe-core (WCAG 2.2 A and AA and best practice) on one page of each kind, everything unfolded, on light and dark screens.</summary>
[Collection(SiteCollection.Name)]
public class AccessibilityTests(SampleSite site)
{
    [Theory]
    [InlineData("rich", 360, false)]
    [InlineData("rich", 1280, true)]
    [InlineData("empty", 1280, false)]
    [InlineData("index", 1280, false)]
    [InlineData("index", 360, true)]
    [InlineData("compare", 1280, false)]
    [InlineData("compare", 360, true)]
    [InlineData("season", 1280, false)]
    [InlineData("season", 360, true)]
    [InlineData("sensors", 1280, true)]
    [InlineData("validation", 360, false)]
    [InlineData("wall", 1280, false)]
    [InlineData("es", 1280, false)]
    [InlineData("nl", 360, true)]
    [InlineData("single", 1280, false)]
    [InlineData("failing", 360, true)]
    public async Task Page_OfEachKind_HasNoViolation(string kind, int width, bool dark)
    {
        await using OpenPage open = await site.Open(Pages.AddressOf(site, kind), width, dark: dark);
        await open.Page.EvaluateAsync("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        AxeResult result = await open.Page.RunAxe();
        Assert.True(result.Passes.Length > 10);
        Assert.True(
            result.Violations.Length == 0,
            string.Join('\n', result.Violations.Select(v => $"{v.Id}: {v.Help} ({string.Join("; ", v.Nodes.Take(3).Select(n => n.Html))})")));
    }

    [Theory]
    [InlineData("rich", 1280)]
    [InlineData("rich", 360)]
    [InlineData("index", 360)]
    [InlineData("compare", 360)]
    [InlineData("season", 1280)]
    public async Task Tab_ThroughThePage_ReachesEverythingInItsOrderAndShowsWhereItIs(string kind, int width)
    {
        await using OpenPage open = await site.Open(Pages.AddressOf(site, kind), width);
        int expected = await open.Page.EvaluateAsync<int>(Focusable);
        List<string> walked = [];
        double last = double.NegativeInfinity;
        for (int step = 0; step < expected; step++)
        {
            await open.Page.Keyboard.PressAsync("Tab");
            string what = await open.Page.EvaluateAsync<string>("(document.activeElement.innerText || document.activeElement.getAttribute('aria-label') || document.activeElement.tagName).slice(0, 40)");
            walked.Add(what);
            double order = await open.Page.EvaluateAsync<double>("[...document.querySelectorAll('*')].indexOf(document.activeElement)");
            Assert.True(order > last, $"{what} comes before the element that had the focus");
            last = order;
            Assert.True(await open.Page.EvaluateAsync<bool>("(() => { const s = getComputedStyle(document.activeElement); return s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2; })()"), $"no outline at {what}");
        }

        Assert.Equal("To the content", walked[0]);
        Assert.Equal(walked.Count, expected);
    }

    private const string Focusable =
        """
        (() => [...document.querySelectorAll('a[href], summary, [tabindex="0"]')]
          .filter(e => e.checkVisibility({ contentVisibilityAuto: true, visibilityProperty: true }) && getComputedStyle(e).pointerEvents !== 'none').length)()
        """;
}
