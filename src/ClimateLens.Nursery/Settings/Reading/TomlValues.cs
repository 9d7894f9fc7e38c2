using NodaTime;
using Tomlyn.Syntax;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>Takes names, places and single values out of syntax nodes.</summary>
internal static class TomlValues
{
    /// <summary>Where a node begins.</summary>
    public static Place PlaceOf(SyntaxNode node) => new(node.Span.Start.Line + 1, node.Span.Start.Column + 1);

    /// <summary>The parts of a dotted name with their places.</summary>
    public static List<(string Key, Place At)> PathOf(KeySyntax key)
    {
        List<(string, Place)> path = [];
        Add(key.Key);
        foreach (DottedKeyItemSyntax part in key.DotKeys)
        {
            Add(part.Key);
        }

        return path;

        void Add(BareKeyOrStringValueSyntax? part)
        {
            if (part is not null)
            {
                path.Add((TextOf(part), PlaceOf(part)));
            }
        }
    }

    /// <summary>A value that is neither list nor table.</summary>
    public static TomlScalar Scalar(ValueSyntax syntax, Place at)
    {
        object? value = syntax switch
        {
            StringValueSyntax text => text.Value ?? "",
            IntegerValueSyntax whole => whole.Value,
            FloatValueSyntax number => number.Value,
            BooleanValueSyntax flag => flag.Value,
            DateTimeValueSyntax { Kind: SyntaxKind.LocalDate } date => LocalDate.FromDateTime(date.Value.DateTime.DateTime),
            DateTimeValueSyntax { Kind: SyntaxKind.LocalDateTime } moment => LocalDateTime.FromDateTime(moment.Value.DateTime.DateTime),
            _ => null,
        };
        return new TomlScalar(at, value, syntax.ToString());
    }

    private static string TextOf(BareKeyOrStringValueSyntax part) => part switch
    {
        BareKeySyntax bare => bare.Key?.Text ?? "",
        StringValueSyntax quoted => quoted.Value ?? "",
        _ => "",
    };
}
