using System.Text;

namespace ClimateLens.Logs.Cells;

/// <summary>The marks of a file's numbers, as UTF-8.</summary>
/// <param name="decimalChar">Decimal mark.</param>
/// <param name="groupChar">Mark between groups of three digits, or null for none.</param>
internal sealed class NumberFormat(char decimalChar, char? groupChar)
{
    /// <summary>The decimal mark.</summary>
    public byte[] Decimal { get; } = Encoding.UTF8.GetBytes([decimalChar]);

    /// <summary>The group mark; empty for none.</summary>
    public byte[] Group { get; } = groupChar is char mark ? Encoding.UTF8.GetBytes([mark]) : [];

    /// <summary>The decimal mark where it is one byte, else 0: such files take the slower way.</summary>
    public byte DecimalByte { get; } = decimalChar < 128 ? (byte)decimalChar : (byte)0;

    /// <summary>What a number looks like, for messages.</summary>
    public string Example => $"a number like 21{decimalChar}5";
}
