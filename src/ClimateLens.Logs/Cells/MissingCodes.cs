using System.Text;

namespace ClimateLens.Logs.Cells;

/// <summary>
/// Texts that mean "no value": the empty text and those of the nursery file. A code that is a number also covers
/// its other spellings, so "-999" covers "-999.0".
/// </summary>
internal sealed class MissingCodes
{
    private readonly byte[][] _texts;
    private readonly double[] _numbers;

    /// <summary>Takes the codes of a dialect and of a column.</summary>
    public MissingCodes(IEnumerable<string> codes, NumberFormat format)
    {
        _texts = [.. codes.Select(code => code.Trim()).Where(code => code.Length > 0).Distinct(StringComparer.Ordinal).Select(Encoding.UTF8.GetBytes)];
        _numbers = [.. _texts.Select(text => NumberCell.TryRead(text, format, out double number) ? number : double.NaN).Where(double.IsFinite).Distinct()];
    }

    /// <summary>Those that are numbers.</summary>
    public IReadOnlyList<double> Numbers => _numbers;

    /// <summary>Whether the trimmed text is a code.</summary>
    public bool Contains(ReadOnlySpan<byte> cell)
    {
        foreach (byte[] text in _texts)
        {
            if (cell.SequenceEqual(text))
            {
                return true;
            }
        }

        return cell.Length == 0;
    }

    /// <summary>Whether the number is a code.</summary>
    public bool Contains(double value)
    {
        foreach (double number in _numbers)
        {
            if (value == number)
            {
                return true;
            }
        }

        return false;
    }
}
