using System.Globalization;
using System.Text;
using ClimateLens.Logs.SetAside;
using CsvHelper;

namespace ClimateLens.Logs.Tests;

/// <summary>Reads a set-aside file back with a CSV reader that is not ours.</summary>
internal static class SetAsideReader
{
    public static IEnumerable<(int Line, int? Column, string Code, string Text)> Read(string path)
    {
        var rows = new List<(int, int?, string, string)>();
        using var reader = CsvReader.Create(File.ReadAllBytes(path), new CsvReaderOptions { Separator = ',' });
        while (reader.Read())
        {
            string[] cells = [.. Enumerable.Range(0, 5).Select(i => Encoding.UTF8.GetString(reader.GetSpan(i)))];
            rows.Add((
                int.Parse(cells[1], CultureInfo.InvariantCulture),
                cells[2].Length == 0 ? null : int.Parse(cells[2], CultureInfo.InvariantCulture),
                cells[3],
                Encoding.Latin1.GetString(SetAsideCsv.Restore(cells[4]))));
        }

        return rows;
    }
}
