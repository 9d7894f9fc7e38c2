using ClimateLens.Nursery.Problems;
using CsCheck;

namespace ClimateLens.Nursery.Tests.Problems;

public class ProblemTests
{
    private static readonly Problem Whole = new("import.number", Severity.Error, "a.csv", 7, 3, "\"x\"", "a number", "write it as 5.2.");

    [Fact]
    public void Problem_WithEverything_IsOneLineForPeople()
        => Assert.Equal("a.csv:7:3: error: \"x\"; expected a number. Mend: write it as 5.2. [import.number]", Whole.ToString());

    [Fact]
    public void Problem_WithoutColumnOrLineOrFile_LeavesThemOut()
    {
        Assert.StartsWith("a.csv:7: error", (Whole with { Column = null }).ToString(), StringComparison.Ordinal);
        Assert.StartsWith("a.csv: error", (Whole with { Line = null, Column = null }).ToString(), StringComparison.Ordinal);
        Assert.StartsWith("error", (Whole with { File = null }).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Problem_WithoutExpectationOrMend_LeavesThemOut()
        => Assert.Equal("a.csv:7:3: error: \"x\". [import.number]", (Whole with { Expected = "", Mend = "" }).ToString());

    [Fact]
    public void Problem_OfManyRows_CountsThem()
        => Assert.Equal("a.csv:7:3: error: \"x\"; expected a number (12 times). Mend: write it as 5.2. [import.number]", (Whole with { Count = 12 }).ToString());

    [Theory]
    [InlineData(Severity.Note, "note")]
    [InlineData(Severity.Warning, "warning")]
    [InlineData(Severity.Error, "error")]
    public void Severity_EveryOne_HasItsWord(Severity severity, string word)
        => Assert.StartsWith($"a.csv:7:3: {word}: ", (Whole with { Severity = severity }).ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("timezone", "timeZone")]
    [InlineData("nmae", "name")]
    [InlineData("latitud", "latitude")]
    [InlineData("lattitude", "latitude")]
    [InlineData("elevation", "elevationM")]
    [InlineData("zone", "timeZone")]
    [InlineData("postcode", null)]
    [InlineData("x", null)]
    [InlineData("", null)]
    public void Name_Written_IsNearAKnownOneOrNot(string written, string? expected)
        => Assert.Equal(expected, NearestName.Of(written, ["name", "timeZone", "latitude", "longitude", "elevationM"]));

    [Theory]
    [InlineData("2", null)] // a house called 2 is not meant to be 1
    [InlineData("house-2", "house-1")]
    public void Name_Short_IsNotNearToAnother(string written, string? expected)
        => Assert.Equal(expected, NearestName.Of(written, ["1", "house-1"]));

    [Fact]
    public void Name_KnownItself_IsNearestToItself()
        => Gen.Select(Gen.String[Gen.Char['a', 'z'], 1, 12], Gen.String[Gen.Char['a', 'z'], 1, 12]).Sample((one, two) =>
            NearestName.Of(one, [two, one]) is { } near && (near == one || near.Equals(one, StringComparison.OrdinalIgnoreCase)));

    [Fact]
    public void Name_WithOneLetterLost_IsFound()
        => Gen.Select(Gen.String[Gen.Char['a', 'z'], 5, 12], Gen.Int[0, 4]).Sample((name, at) =>
            NearestName.Of(name.Remove(at, 1), [name]) == name);

    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("tab\there", "tab□here")]
    [InlineData("\u001b[31mred", "□[31mred")]
    [InlineData("\u202eevil", "□evil")]
    [InlineData("Måge 🌱", "Måge 🌱")]
    public void Excerpt_OfAnyText_HidesWhatIsNotPlain(string text, string expected) => Assert.Equal(expected, Excerpt.Of(text));

    [Fact]
    public void Excerpt_OfHalfACharacter_HidesIt() => Assert.Equal("a□", Excerpt.Of("a" + (char)0xD83C)); // attributes cannot hold it

    [Fact]
    public void Excerpt_OfAnyText_IsShortAndPlain()
        => Gen.String.Sample(text =>
        {
            string excerpt = Excerpt.Of(text);
            return !Excerpt.HasHidden(excerpt) && excerpt.EnumerateRunes().Count() <= 61;
        });
}
