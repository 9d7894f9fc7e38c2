using ClimateLens.Cli.Output;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>No text of a file steers a terminal.</summary>
public sealed class PlainTextTests
{
    [Theory]
    [InlineData("a\u001b[2Jb", "a\uFFFD[2Jb")]
    [InlineData("a\u009bb", "a\uFFFDb")]
    [InlineData("cod\u202Efdp.exe", "cod\uFFFDfdp.exe")]
    [InlineData("a\u2066b\u2069\u200Fc", "a\uFFFDb\uFFFD\uFFFDc")]
    [InlineData("a\tb\nc", "a b\nc")]
    [InlineData("Gewächshaus 北 שלום", "Gewächshaus 北 שלום")]
    public void Plain_TakesOutWhatSteers_AndLeavesLetters(string text, string plain) => Assert.Equal(plain, Messages.Plain(text));
}
