using ClimateLens.Analysis.Pots;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Pots;
using ClimateLens.Science.Treatments;
using ClimateLens.Science.Wetness;
using ClimateLens.TestKit;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace ClimateLens.Reports.Tests.Languages;

/// <summary>
/// All messages of the program, read out of its source: what Phrase.Of, Phrase.Id and the counting words are given, the text
/// between the tags of interpolated markup, the prose of the built-in notebooks, and the words of a few enumerations.
/// </summary>
internal static class MessageScan
{
    private static readonly string[] Projects = ["Nursery", "Analysis", "Reports"];

    public static SortedSet<string> All()
    {
        SortedSet<string> messages = new(StringComparer.Ordinal);
        foreach (string file in Projects.SelectMany(p => Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", $"ClimateLens.{p}"), "*.cs", SearchOption.AllDirectories)))
        {
            if (!file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            {
                InSource(File.ReadAllText(file), messages);
            }
        }

        messages.UnionWith(BuiltInNotebooks.All.Values.Select(n => n.Title));
        messages.UnionWith(BuiltInNotebooks.All.Values.SelectMany(n => n.Parts).OfType<ProsePart>().Select(p => p.Markdown.Trim()));
        messages.UnionWith(ResistanceGroups.All.Select(g => g.Name).Where(n => n.Length > 0));
        messages.UnionWith(WetnessModel.All.SelectMany(m => (string[])[m.Name, m.Caution]));
        messages.UnionWith(MoistureScale.Names.Concat(MoistureScale.Signs));
        messages.UnionWith(SpacedNames<BalanceTerm>().Concat(SpacedNames<LeafSign>()).Concat(SpacedNames<ResistanceRisk>()));
        return messages;
    }

    private static IEnumerable<string> SpacedNames<T>()
        where T : struct, Enum
        => Enum.GetNames<T>().Select(n => Words.Spaced(char.ToLowerInvariant(n[0]) + n[1..]));

    private static void InSource(string source, SortedSet<string> messages)
    {
        foreach (InvocationExpressionSyntax call in CSharpSyntaxTree.ParseText(source).GetRoot().DescendantNodes().OfType<InvocationExpressionSyntax>())
        {
            string name = call.Expression.ToString();
            ArgumentSyntax[] arguments = [.. call.ArgumentList.Arguments];
            if (name is "Phrase.Of" or "Phrase.Id" && Template(arguments[0].Expression) is { } message)
            {
                messages.Add(message);
            }
            else if (name is "Words.Count" or "Phrase.Count" or "Say.Count" or "ClockWords.Count" or "Count" && arguments.Length is 2 or 3)
            {
                bool plural = arguments.Length == 2;
                foreach (string noun in arguments.Skip(1).SelectMany(a => a.DescendantNodes()).OfType<LiteralExpressionSyntax>().Where(l => l.IsKind(SyntaxKind.StringLiteralExpression)).Select(l => l.Token.ValueText))
                {
                    messages.UnionWith(plural ? ["{0} " + noun, "{0} " + noun + "s"] : ["{0} " + noun]);
                }
            }
            else if ((name.EndsWith(".Line", StringComparison.Ordinal) || name.EndsWith(".Add", StringComparison.Ordinal) || name == "HtmlBuilder.Of") && arguments is [{ Expression: InterpolatedStringExpressionSyntax markup }])
            {
                InMarkup(markup, messages);
            }
        }
    }

    private static void InMarkup(InterpolatedStringExpressionSyntax markup, SortedSet<string> messages)
    {
        if (!markup.ToString().Contains('<', StringComparison.Ordinal))
        {
            return;
        }

        MarkupTexts texts = new(_ => { }, (message, _) => messages.Add(message), _ => { });
        foreach (InterpolatedStringContentSyntax part in markup.Contents)
        {
            if (part is InterpolatedStringTextSyntax text)
            {
                texts.Literal(Plain(text));
            }
            else
            {
                texts.Hole();
            }
        }

        texts.End();
    }

    private static string Plain(InterpolatedStringTextSyntax text)
        => text.TextToken.ValueText.Replace("{{", "{", StringComparison.Ordinal).Replace("}}", "}", StringComparison.Ordinal);

    /// <summary>The text with numbered holes, or null for what is no literal.</summary>
    private static string? Template(ExpressionSyntax expression)
    {
        int holes = 0;
        return Of(expression);

        string? Of(ExpressionSyntax part) => part switch
        {
            LiteralExpressionSyntax literal when literal.IsKind(SyntaxKind.StringLiteralExpression) => literal.Token.ValueText,
            BinaryExpressionSyntax sum when sum.IsKind(SyntaxKind.AddExpression) => Of(sum.Left) is { } left && Of(sum.Right) is { } right ? left + right : null,
            InterpolatedStringExpressionSyntax text => string.Concat(text.Contents.Select(c => c is InterpolatedStringTextSyntax t ? Plain(t) : $"{{{holes++}}}")),
            _ => null,
        };
    }
}
