using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace ClimateLens.Cli.Commands;

/// <summary>Options that are numbers. The parser's own conversion tells what it cannot read in the language's type names, and throws where a validator asks for the value.</summary>
internal static class NumberOption
{
    /// <summary>An option that is a whole number.</summary>
    /// <param name="name">Name with its dashes.</param>
    /// <param name="usual">Where it is not given; null for none.</param>
    /// <param name="least">Least that it takes.</param>
    /// <param name="most">Most that it takes.</param>
    /// <param name="fault">What is told of anything else: a whole sentence.</param>
    public static Option<int> Whole(string name, int? usual, int least, int most, string fault) => Make(name, usual, fault, text
        => int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int number) && number >= least && number <= most ? number : null);

    /// <summary>An option that is a number with a decimal point.</summary>
    /// <inheritdoc cref="Whole" path="/param"/>
    public static Option<double> Decimal(string name, double? usual, double least, double most, string fault) => Make(name, usual, fault, text
        => double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) && number >= least && number <= most ? number : null);

    private static Option<T> Make<T>(string name, T? usual, string fault, Func<string, T?> read)
        where T : struct
    {
        Option<T> option = new(name)
        {
            CustomParser = given =>
            {
                if (given.Tokens is [Token only] && read(only.Value) is { } number)
                {
                    return number;
                }

                given.AddError(fault);
                return default;
            },
        };
        if (usual is { } value)
        {
            option.DefaultValueFactory = _ => value;
        }

        return option;
    }
}
