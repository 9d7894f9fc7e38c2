using System.Globalization;
using System.Text;

namespace ClimateLens.Logs.Tests;

/// <summary>Writes small .xls files by hand, in the oldest form of their records: a start, cells with a text or a number, an end.</summary>
internal static class MadeOldWorkbook
{
    /// <summary>A sheet; a DateTime becomes a text, null an empty cell.</summary>
    public static byte[] Of(object?[][] rows)
    {
        using var bytes = new MemoryStream();
        using var writer = new BinaryWriter(bytes);
        Record(writer, 0x0009, [2, 0, 0x10, 0]);
        for (int r = 0; r < rows.Length; r++)
        {
            for (int c = 0; c < rows[r].Length; c++)
            {
                Cell(writer, (ushort)r, (ushort)c, rows[r][c]);
            }
        }

        Record(writer, 0x000A, []);
        return bytes.ToArray();
    }

    private static void Cell(BinaryWriter writer, ushort row, ushort column, object? value)
    {
        byte[] at = [.. BitConverter.GetBytes(row), .. BitConverter.GetBytes(column), 0, 0, 0];
        if (value is double number)
        {
            Record(writer, 0x0003, [.. at, .. BitConverter.GetBytes(number)]);
        }
        else if (value is not null)
        {
            byte[] text = Encoding.Latin1.GetBytes(value is DateTime time ? time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) : (string)value);
            Record(writer, 0x0004, [.. at, (byte)text.Length, .. text]);
        }
    }

    private static void Record(BinaryWriter writer, ushort type, byte[] data)
    {
        writer.Write(type);
        writer.Write((ushort)data.Length);
        writer.Write(data);
    }
}
