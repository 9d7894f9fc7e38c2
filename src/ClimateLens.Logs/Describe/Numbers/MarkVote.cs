using System.Globalization;

namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>Decides between decimal point and comma from the numbers of all rows.</summary>
internal static class MarkVote
{
    // Rows that were torn and joined leave a few numbers that nobody wrote: 1.028 and 18 become 1.02818.
    private const double Stray = 0.005;

    /// <summary>The marks of a file.</summary>
    /// <param name="columns">The columns that hold numbers.</param>
    public static MarkGuess Of(IReadOnlyCollection<NumberTally> columns)
    {
        long point = Sum(columns, NumberShape.Point);
        long comma = Sum(columns, NumberShape.Comma);
        char? blank = columns.FirstOrDefault(c => c.GroupMark != '\0')?.GroupMark;
        return (point > 0, comma > 0) switch
        {
            (true, true) when point <= Stray * comma && Sum(columns, NumberShape.PointOrGroup) > point => One(',', comma, columns, blank),
            (true, true) when comma <= Stray * point && Sum(columns, NumberShape.CommaOrGroup) > comma => One('.', point, columns, blank),
            (true, true) => Both(columns, point, comma),
            (true, false) => One('.', point, columns, blank),
            (false, true) => One(',', comma, columns, blank),
            _ => Undecided(columns, blank),
        };
    }

    /// <summary>The marks of one column, where the columns of a file differ; null where it has no decimals of its own.</summary>
    public static char? OfColumn(NumberTally column) => (column.Of(NumberShape.Point) > 0, column.Of(NumberShape.Comma) > 0) switch
    {
        (true, false) => '.',
        (false, true) => ',',
        _ => null,
    };

    private static MarkGuess One(char mark, long count, IReadOnlyCollection<NumberTally> columns, char? blank)
    {
        char other = mark == '.' ? ',' : '.';
        NumberShape maybe = mark == '.' ? NumberShape.CommaOrGroup : NumberShape.PointOrGroup;
        NumberShape grouped = mark == '.' ? NumberShape.GroupedByComma : NumberShape.GroupedByPoint;
        long stray = Sum(columns, mark == '.' ? NumberShape.Comma : NumberShape.Point);
        string few = stray == 0 ? $"none with a {Name(other)}" : string.Create(CultureInfo.InvariantCulture, $"{stray} with a {Name(other)} as in rows that were torn, none");
        string evidence = string.Create(CultureInfo.InvariantCulture, $"{count} numbers with a decimal {Name(mark)}, {few}");
        if (Sum(columns, grouped) > 0)
        {
            return new MarkGuess($"{mark}", other, Sureness.Sure, $"{evidence} but between thousands");
        }

        if (Sum(columns, maybe) > 0)
        {
            // A column of 950 and 1,012 counts in thousands; one where every number has three digits behind the mark may have decimals.
            bool thousands = columns.Where(c => c.Of(maybe) > 0).All(c => c.BeyondOne > 0 && OfColumn(c) is null);
            return new MarkGuess($"{mark}", other, thousands ? Sureness.Likely : Sureness.Unsure, $"{evidence} but before three digits, as between thousands");
        }

        return new MarkGuess($"{mark}", blank, Sureness.Sure, blank is null ? evidence : $"{evidence}; {Name(blank.Value)} between thousands");
    }

    /// <summary>No number settles it alone.</summary>
    private static MarkGuess Undecided(IReadOnlyCollection<NumberTally> columns, char? blank)
    {
        long maybeComma = Sum(columns, NumberShape.CommaOrGroup);
        long maybePoint = Sum(columns, NumberShape.PointOrGroup);
        long groupComma = Sum(columns, NumberShape.GroupedByComma);
        long groupPoint = Sum(columns, NumberShape.GroupedByPoint);
        if ((groupComma > 0 && groupPoint == 0 && maybePoint == 0) || (groupPoint > 0 && groupComma == 0 && maybeComma == 0))
        {
            char group = groupComma > 0 ? ',' : '.';
            return new MarkGuess(group == ',' ? "." : ",", group, Sureness.Sure, $"a {Name(group)} between thousands");
        }

        return maybeComma + maybePoint + groupComma + groupPoint == 0
            ? new MarkGuess(".", blank, Sureness.Likely, "no number has decimals so far")
            : new MarkGuess("?", null, Sureness.Unsure, $"three digits behind every {(maybeComma > 0 ? maybePoint > 0 ? "comma and point" : "comma" : "point")}: decimals, or thousands");
    }

    private static MarkGuess Both(IReadOnlyCollection<NumberTally> columns, long point, long comma)
    {
        string evidence = string.Create(CultureInfo.InvariantCulture, $"{point} numbers with a decimal point, {comma} with a comma");
        if (Sum(columns, NumberShape.GroupedByComma) + Sum(columns, NumberShape.GroupedByPoint) > 0)
        {
            return new MarkGuess("?", null, Sureness.Unsure, $"{evidence}, and marks between thousands");
        }

        bool apart = columns.All(c => c.Of(NumberShape.Point) == 0 || c.Of(NumberShape.Comma) == 0);
        return apart
            ? new MarkGuess(point >= comma ? "." : ",", null, Sureness.Likely, $"{evidence}, each in columns of its own")
            : new MarkGuess(".,", null, Sureness.Likely, $"{evidence}: either mark");
    }

    private static long Sum(IEnumerable<NumberTally> columns, NumberShape shape) => columns.Sum(c => (long)c.Of(shape));

    private static string Name(char mark) => mark switch { ',' => "comma", '.' => "point", '\'' or '’' => "apostrophe", _ => "blank" };
}
