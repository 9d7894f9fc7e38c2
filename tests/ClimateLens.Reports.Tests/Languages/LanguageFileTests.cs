using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;
using ClimateLens.Nursery.Languages;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests.Languages;

/// <summary>Every message has its words in every language, and every language no others.</summary>
public sealed partial class LanguageFileTests
{
    [Fact]
    public void EnglishFile_ListsTheMessagesOfTheSource()
        => GoldenFile.Check(Path.Combine(Repository.Root, "src", "ClimateLens.Nursery", "Languages", "en.json"), Json(MessageScan.All().ToDictionary(m => m, m => m)));

    [Theory]
    [InlineData("es")]
    [InlineData("nl")]
    public void Language_HasWordsForEveryMessage(string code)
    {
        Assert.True(Language.TryGet(code, out Language? language));
        SortedSet<string> messages = MessageScan.All();
        Assert.Equal([], messages.Except(language.Words.Keys));
        Assert.Equal([], language.Words.Keys.Except(messages));
    }

    [Theory]
    [InlineData("es")]
    [InlineData("nl")]
    public void Language_KeepsHolesBlanksAndMarks(string code)
    {
        Assert.True(Language.TryGet(code, out Language? language));
        Assert.Equal([], language.Words.Where(w => !Holes(w.Key).SetEquals(Holes(w.Value))).Select(w => $"{w.Key} -> {w.Value}"));
        Assert.Equal([], language.Words.Where(w => char.IsWhiteSpace(w.Key[0]) != char.IsWhiteSpace(w.Value[0]) || char.IsWhiteSpace(w.Key[^1]) != char.IsWhiteSpace(w.Value[^1])).Select(w => $"{w.Key} -> {w.Value}"));
        Assert.Equal([], language.Words.Where(w => w.Value.Any(c => c is '<' or '>' or '&') && !w.Key.Any(c => c is '<' or '>' or '&')).Select(w => $"{w.Key} -> {w.Value}"));
    }

    private static HashSet<string> Holes(string text) => [.. Hole().Matches(text).Select(m => m.Value)];

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static string Json(Dictionary<string, string> words) => JsonSerializer.Serialize(words, Readable) + "\n";

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Hole();
}
