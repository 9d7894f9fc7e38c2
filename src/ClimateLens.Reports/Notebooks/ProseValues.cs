using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Fluid;

namespace ClimateLens.Reports.Notebooks;

/// <summary>
/// Values of the review in prose: <c>{{ riskHours.value | round }}</c>, a name of review.json with filters of the open Liquid language. No statements, no code, no files: an expression can only look at the review. What is not known reads "not known".
/// </summary>
internal static partial class ProseValues
{
    private const int MostSteps = 10_000;
    private const char Open = '\uE000', Close = '\uE001';

    private static readonly Lazy<FluidParser> Parser = new(() => new FluidParser()); // makes some hundred parsers

    /// <summary>What is wrong with the expressions of a text: line from its start, what was found, and the mend.</summary>
    public static IEnumerable<(int Line, string Found, string Mend)> Check(string markdown)
    {
        foreach (Match match in Expressions().Matches(markdown))
        {
            if (!PlainName().IsMatch(match.Value) && !Parser.Value.TryParse(match.Value, out _, out string error))
            {
                yield return (LineOf(markdown, match.Index), match.Value, error.Split('\n')[0].TrimEnd('.') + ".");
            }
        }

        foreach (Match match in Statements().Matches(markdown))
        {
            yield return (LineOf(markdown, match.Index), match.Value, "statements are not taken in prose; write {{ a value }} only.");
        }
    }

    /// <summary>The text with each expression as a token, and the texts that stand for them. Tokens survive Markdown, so that no value is read as Markdown.</summary>
    public static (string Marked, IReadOnlyList<string> Values) Replace(string markdown, Lazy<JsonDocument> review)
    {
        List<string> values = [];
        if (!Expressions().IsMatch(markdown))
        {
            return (markdown, values);
        }

        TemplateOptions options = new() { MaxSteps = MostSteps, CultureInfo = Culture() };
        TemplateContext context = new(ModelOf(review.Value.RootElement)!, options);
        string marked = Expressions().Replace(markdown, match =>
        {
            string shown = Parser.Value.TryParse(match.Value, out IFluidTemplate template, out _) ? template.Render(context) : match.Value;
            values.Add(shown.Trim().Length == 0 ? Units.DisplayUnits.NotKnown : shown);
            return string.Create(CultureInfo.InvariantCulture, $"{Open}{values.Count - 1}{Close}");
        });
        return (marked, values);
    }

    /// <summary>Puts the texts in the tokens' places, encoded by the caller's function.</summary>
    public static string PutBack(string html, IReadOnlyList<string> values, Func<string, string> encode)
        => Tokens().Replace(html, token => int.TryParse(token.Groups[1].Value, CultureInfo.InvariantCulture, out int at) && at < values.Count ? encode(values[at]) : "");

    /// <summary>JSON as what the template engine walks through.</summary>
    private static object? ModelOf(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Object => json.EnumerateObject().ToDictionary(p => p.Name, p => ModelOf(p.Value)),
        JsonValueKind.Array => json.EnumerateArray().Select(ModelOf).ToList(),
        JsonValueKind.Number => json.TryGetDecimal(out decimal number) ? number : json.GetDouble(),
        JsonValueKind.String => json.GetString(),
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => null,
    };

    /// <summary>The invariant culture with the decimal mark of the language of the moment.</summary>
    private static CultureInfo Culture()
    {
        CultureInfo culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = Nursery.Languages.Language.Current.DecimalMark.ToString();
        return culture;
    }

    private static int LineOf(string text, int index) => text.AsSpan(0, index).Count('\n');

    [GeneratedRegex(@"\{\{.*?\}\}")]
    private static partial Regex Expressions();

    [GeneratedRegex(@"^\{\{ *[A-Za-z_]\w*(?:\.[A-Za-z_]\w*)* *\}\}$", RegexOptions.ExplicitCapture)]
    private static partial Regex PlainName();

    [GeneratedRegex(@"\{%.*?%\}")]
    private static partial Regex Statements();

    [GeneratedRegex("\uE000([0-9]+)\uE001")]
    private static partial Regex Tokens();
}
