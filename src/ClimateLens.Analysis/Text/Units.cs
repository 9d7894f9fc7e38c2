using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Analysis.Text;

/// <summary>Unit symbols in sentences, with the space before them.</summary>
internal static class Units
{
    /// <summary>Symbol of a quantity's SI unit.</summary>
    public static string Symbol(Quantity quantity) => UnitSymbols.Of(quantity) is { Length: > 0 } symbol && symbol != "°" ? " " + symbol : UnitSymbols.Of(quantity);

    /// <summary>Symbol of a difference of two values of a quantity.</summary>
    public static string Difference(Quantity quantity) => quantity switch
    {
        Quantity.Temperature => " K",
        Quantity.RelativeHumidity => Phrase.Of(" points"),
        _ => Symbol(quantity),
    };
}
