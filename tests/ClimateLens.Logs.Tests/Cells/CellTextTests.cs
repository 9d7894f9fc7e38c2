using System.Text;
using ClimateLens.Logs.Cells;

namespace ClimateLens.Logs.Tests.Cells;

/// <summary>Quotes and blanks around a cell, and the form in which words are compared.</summary>
public sealed class CellTextTests
{
    [Theory]
    [InlineData("=\"21.5\"", "21.5")]
    [InlineData("='21.5'", "21.5")]
    [InlineData("=\"\"", "")]
    [InlineData("''", "")]
    [InlineData("' 21.5 '", "21.5")]
    [InlineData("'21.5", "21.5")]
    public void Unwrap_OnePairOfQuotes_IsTakenOff(string cell, string expected) => Assert.Equal(expected, Unwrapped(cell));

    [Theory]
    [InlineData("'")]
    [InlineData("=\"")]
    [InlineData("=21.5")]
    [InlineData("a\"5\"")]
    [InlineData("\"21.5'")]
    [InlineData("\"21.5")]
    [InlineData("")]
    public void Unwrap_AnythingElse_IsLeft(string cell) => Assert.Equal(cell, Unwrapped(cell));

    [Theory]
    [InlineData("  A  b\u00A0\u2009c ", "a b c")]
    [InlineData("ÀÁÂÃÄÅ àáâãäå", "aaaaaa aaaaaa")]
    [InlineData("ÈÉÊË èéêë", "eeee eeee")]
    [InlineData("ÌÍÎÏ ìíîï", "iiii iiii")]
    [InlineData("ÒÓÔÕÖØ òóôõöø", "oooooo oooooo")]
    [InlineData("ÙÚÛÜ ùúûü", "uuuu uuuu")]
    [InlineData("Ç Ñ Æ Œ ß", "c n ae oe ss")]
    [InlineData("e\u0300e\u0301e\u036F", "eee")]
    [InlineData("off\u200Bline\u2060\uFEFF", "offline")]
    [InlineData("ý þ ð × ÷", "ý þ ð × ÷")]
    [InlineData("\u0370", "\u0371")]
    public void Folded_Words_LoseCaseAccentsAndBlanks(string text, string expected) => Assert.Equal(expected, CellText.Folded(text));

    private static string Unwrapped(string cell) => Encoding.UTF8.GetString(CellText.Unwrap(Encoding.UTF8.GetBytes(cell)));
}
