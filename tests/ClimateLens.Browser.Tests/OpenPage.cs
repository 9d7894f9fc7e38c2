using Microsoft.Playwright;

namespace ClimateLens.Browser.Tests;

/// <summary>An open page with what the browser said and asked for while it loaded.</summary>
public sealed class OpenPage : IAsyncDisposable
{
    private readonly List<string> _complaints = [];
    private readonly List<string> _requests = [];

    public OpenPage(IPage page)
    {
        Page = page;
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                _complaints.Add(message.Text);
            }
        };
        page.PageError += (_, error) => _complaints.Add(error);
        page.Request += (_, request) => _requests.Add(request.Url);
        page.RequestFailed += (_, request) => _complaints.Add($"{request.Url}: {request.Failure}");
    }

    public IPage Page { get; }

    public IReadOnlyList<string> Complaints => _complaints;

    public IEnumerable<string> RequestsElsewhere => _requests.Where(r => !r.StartsWith("file:", StringComparison.Ordinal) && !r.StartsWith("data:", StringComparison.Ordinal));

    public async Task Load(string address, bool script)
    {
        await Page.GotoAsync(address);
        if (script && await Page.Locator("[data-figure]").CountAsync() > 0)
        {
            await Page.WaitForSelectorAsync("html[data-charts]", new PageWaitForSelectorOptions { State = WaitForSelectorState.Attached, Timeout = 20_000 });
        }
    }

    /// <summary>Waits for an expression to hold; the page's own policy forbids the usual way, which evaluates text in the page.</summary>
    public async Task WaitUntil(string expression)
    {
        for (int attempt = 0; !await Page.EvaluateAsync<bool>(expression); attempt++)
        {
            Assert.True(attempt < 100, $"{expression} did not come true within 10 s");
            await Page.WaitForTimeoutAsync(100);
        }
    }

    public async ValueTask DisposeAsync() => await Page.Context.CloseAsync();
}
