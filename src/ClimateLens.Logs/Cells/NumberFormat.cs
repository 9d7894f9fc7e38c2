using System.Text;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Cells;

/// <summary>The marks of a file's numbers.</summary>
/// <param name="decimalChar">Decimal mark.</param>
/// <param name="groupChar">Mark between groups of three digits, or null for none.</param>
/// <param name="either">Whether both '.' and ',' are decimal marks.</param>
internal sealed class NumberFormat(char decimalChar, char? groupChar, bool either = false)
{
    /// <summary>The marks that the nursery file gives.</summary>
    public NumberFormat(NumberMarks marks)
        : this(marks.DecimalChar, marks.GroupChar, marks.EitherDecimalChar)
    {
    }

    /// <summary>The decimal mark where it is one byte, else 0: such files take the slower way.</summary>
    public byte DecimalByte { get; } = decimalChar < 128 ? (byte)decimalChar : (byte)0;

    /// <summary>The other decimal mark where both '.' and ',' are, else the same.</summary>
    public byte OtherDecimalByte => either ? (byte)(DecimalByte == (byte)'.' ? ',' : '.') : DecimalByte;

    /// <summary>Whether both '.' and ',' are decimal marks.</summary>
    public bool Either => either;

    /// <summary>What a number looks like, for messages.</summary>
    public string Example => either ? "a number like 21.5 or 21,5" : $"a number like 21{decimalChar}5";

    /// <summary>The same with both decimal marks, to tell what the other mark would make of a cell.</summary>
    public NumberFormat WithEither() => new('.', groupChar is '.' or ',' ? null : groupChar, either: true);

    /// <summary>Whether the mark may stand before the fraction.</summary>
    public bool IsDecimal(Rune mark) => either ? mark.Value is '.' or ',' : mark.Value == decimalChar;

    /// <summary>
    /// Whether the mark may stand between groups of three digits. Special blanks and apostrophes always may, since they mean nothing
    /// else inside a number; a plain blank only where the nursery file says so, since it may as well part two numbers.
    /// </summary>
    public bool IsGroup(Rune mark)
        => mark.Value == groupChar
            || CellText.IsSpecialBlank(mark)
            || mark.Value is '\'' or '\u2019'
            || (mark.Value == ' ' && groupChar is char blank && char.IsWhiteSpace(blank))
            || (either && mark.Value is '.' or ',');
}
