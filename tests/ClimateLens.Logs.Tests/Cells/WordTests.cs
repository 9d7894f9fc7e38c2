using System.Text;
using ClimateLens.Logs.Cells;
using ClimateLens.TestKit;

namespace ClimateLens.Logs.Tests.Cells;

/// <summary>Words for on, off and "no value".</summary>
public sealed class WordTests
{
    [Theory]
    [InlineData("NA")]
    [InlineData("NAN")]
    [InlineData("NaN")]
    [InlineData("-nan(ind)")]
    [InlineData("1.#QNAN")]
    [InlineData("-1.#IND00")]
    [InlineData("1,#INF")]
    [InlineData("-Infinity")]
    [InlineData("null")]
    [InlineData("(null)")]
    [InlineData("<NA>")]
    [InlineData("\\N")]
    [InlineData("---")]
    [InlineData("-")]
    [InlineData("--.-")]
    [InlineData("***")]
    [InlineData("#####")]
    [InlineData("?")]
    [InlineData("Err7")]
    [InlineData("Err 7")]
    [InlineData("Error: 12")]
    [InlineData("E01")]
    [InlineData("#N/A")]
    [InlineData("#VALUE!")]
    [InlineData("#WERT!")]
    [InlineData("#VALEUR!")]
    [InlineData("#¡VALOR!")]
    [InlineData("#VÆRDI!")]
    [InlineData("#DIV/0!")]
    [InlineData("#I/T")]
    [InlineData("k.A.")]
    [InlineData("Ungültig")]
    [InlineData("UNGULTIG")]
    [InlineData("geen waarde")]
    [InlineData("Draadbreuk")]
    [InlineData("ingen værdi")]
    [InlineData("Erreur")]
    [InlineData("sin  datos")]
    [InlineData("non valido")]
    [InlineData("Over range")]
    public void MissingWords_TextForNoValue_IsKnown(string text) => Assert.True(IsMissing(text));

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("12")]
    [InlineData("-5")]
    [InlineData("E")]
    [InlineData("E12345")]
    [InlineData("A7")]
    [InlineData("#12")]
    [InlineData("1e5")]
    [InlineData("no")]
    [InlineData("an")]
    [InlineData("open")]
    [InlineData("closed")]
    [InlineData("12 NA")]
    [InlineData("21.5 °C")]
    [InlineData("high")]
    public void MissingWords_AnythingElse_IsNot(string text) => Assert.False(IsMissing(text));

    [Theory]
    [InlineData(48, true)]
    [InlineData(49, false)]
    public void MissingWords_MarksThatFillAField_AreKnownUpToALength(int length, bool known)
    {
        Assert.Equal(known, IsMissing(new string('-', length)));
        Assert.Equal(known, MissingWords.Contains(new string('-', length)));
    }

    [Theory]
    [InlineData("on", "off")]
    [InlineData("TRUE", "False")]
    [InlineData("yes", "no")]
    [InlineData("open", "closed")]
    [InlineData("ja", "nee")]
    [InlineData("aan", "uit")]
    [InlineData("Open", "Dicht")]
    [InlineData("Ein", "AUS")]
    [InlineData("an", "aus")]
    [InlineData("auf", "zu")]
    [InlineData("Geöffnet", "geschlossen")]
    [InlineData("ja", "nein")]
    [InlineData("til", "fra")]
    [InlineData("Åben", "lukket")]
    [InlineData("tændt", "slukket")]
    [InlineData("ja", "nej")]
    [InlineData("Marche", "Arrêt")]
    [InlineData("ouvert", "FERMÉ")]
    [InlineData("oui", "non")]
    [InlineData("sí", "no")]
    [InlineData("Abierto", "cerrado")]
    [InlineData("encendido", "apagado")]
    [InlineData("acceso", "spento")]
    [InlineData("aperto", "chiuso")]
    [InlineData("sì", "no")]
    public void SwitchCell_PairOfALanguage_IsOnAndOff(string on, string off)
    {
        Assert.True(SwitchCell.TryRead(Encoding.UTF8.GetBytes(on), out double one));
        Assert.True(SwitchCell.TryRead(Encoding.UTF8.GetBytes(off), out double zero));
        Assert.Equal((1, 0), (one, zero));
    }

    [Fact]
    public void SwitchCell_Words_HaveOneMeaningAndAreNoWordsForNoValue()
    {
        Assert.Empty(SwitchCell.On().Intersect(SwitchCell.Off()));
        Assert.All(SwitchCell.On().Concat(SwitchCell.Off()), word => Assert.False(IsMissing(word), word));
        Assert.All(SwitchCell.On().Concat(SwitchCell.Off()).Concat(MissingWords.All()), word => Assert.Equal(CellText.Folded(word), word));
    }

    [Theory]
    [InlineData("-999", 1, true)]
    [InlineData("-9999", 1, true)]
    [InlineData("-99.0", 1, true)]
    [InlineData("-99,00", 1, true)]
    [InlineData("66.5", 1, false)]
    [InlineData("69", 1, false)]
    [InlineData("-99", 1, true)]
    [InlineData("999.9", 1, true)]
    [InlineData("6999", 1, true)]
    [InlineData("7999", 1, true)]
    [InlineData("-7777", 1, true)]
    [InlineData("65535", 1, true)]
    [InlineData("1e30", 1, true)]
    [InlineData("3.4028235E+38", 1, true)]
    [InlineData("84.2", 2, false)]
    [InlineData("84.2", 3, true)]
    [InlineData("-127", 1, true)]
    [InlineData("128", 1, false)]
    [InlineData("", 50, false)]
    [InlineData("abc", 1, false)]
    [InlineData("1000000000", 1, true)]
    [InlineData("6959", 1, false)]
    [InlineData("777", 1, true)]
    [InlineData("77", 1, false)]
    public void NumericCodes_ByLookOrByNumber_AreLikely(string text, int count, bool expected)
        => Assert.Equal(expected, NumericCodes.IsLikely(text, count));

    [Fact]
    public void Page_ListsEveryWord()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/nursery-file.md"));
        string[] told = [.. page.Split('`')];
        Assert.Empty(SwitchCell.On().Concat(SwitchCell.Off()).Concat(MissingWords.All()).Except(told));
    }

    private static bool IsMissing(string text) => MissingWords.Contains(Encoding.UTF8.GetBytes(text));
}
