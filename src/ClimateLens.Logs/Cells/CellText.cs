namespace ClimateLens.Logs.Cells;

/// <summary>What cells have in common.</summary>
internal static class CellText
{
    /// <summary>Takes off blanks, tabs and no-break spaces at both ends.</summary>
    public static ReadOnlySpan<byte> Trim(ReadOnlySpan<byte> cell)
    {
        while (cell.Length > 0)
        {
            if (cell[0] is (byte)' ' or (byte)'\t')
            {
                cell = cell[1..];
            }
            else if (cell[^1] is (byte)' ' or (byte)'\t')
            {
                cell = cell[..^1];
            }
            else if (cell.StartsWith("\u00A0"u8))
            {
                cell = cell[2..];
            }
            else if (cell.EndsWith("\u00A0"u8))
            {
                cell = cell[..^2];
            }
            else
            {
                return cell;
            }
        }

        return cell;
    }
}
