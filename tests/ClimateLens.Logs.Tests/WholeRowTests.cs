using System.Globalization;
using System.Text;
using ClimateLens.Logs.Cells;
using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Settings;
using CsCheck;

namespace ClimateLens.Logs.Tests;

/// <summary>The values of a row at once, held to those of its cells one by one.</summary>
public sealed class WholeRowTests
{
    private const string Exports = """
        [[export]]
        name = "climate"
        house = "1"
        files = ["*.csv"]
        missingValues = ["-999", "6999", "---"]
          [export.time]
          field = "time"
          format = "iso"
          [[export.column]]
          field = "f"
          channel = "airTemperature"
          unit = "[degF]"
          [[export.column]]
          field = "rh"
          channel = "relativeHumidity"
          unit = "1"
          [[export.column]]
          field = "c"
          channel = "leafTemperature"
          unit = "Cel"
        """;

    private static readonly Gen<string> Cell = Gen.Frequency(
        (6, Gen.Int[-2000, 12000].Select(n => (n / 100.0).ToString(CultureInfo.InvariantCulture))),
        (2, Gen.Int[0, 8].Select(i => ((string[])["-999", "-999.0", "6999", "---", "", "-0.0", "0", "1e9", "99999999"])[i])),
        (1, Gen.Double[-1e4, 1e4].Select(n => n.ToString(CultureInfo.InvariantCulture))));

    [Fact]
    public void Read_OfAnyRow_AgreesWithItsCells() => Gen.Select(Cell, Cell, Cell).Array[1, 20].Sample(rows =>
    {
        using var nursery = new TestNursery(Exports);
        ExportSettings export = nursery.Settings.Exports[0];
        string text = "time,f,rh,c\n" + string.Concat(rows.Select(r => $"2025-07-01T10:00,{r.Item1},{r.Item2},{r.Item3}\n"));
        using var opened = new OpenedExport(new ExportStream(new MemoryStream(Encoding.UTF8.GetBytes(text))), Encoding.UTF8, export.Dialect);
        using var aside = new SetAsideLog("a.csv", new ProblemList(), open: null);
        using ExportTable table = ExportTable.Open(opened, export, linesInQuotes: false, aside, new RowCounts())!;
        ReadingColumn[] columns = ReadingColumns.Bind(export, table.Columns, aside.Problems);
        var numbers = new PlainNumbers(table.Delimiter, columns);
        WholeRow whole = WholeRow.Of(columns, numbers)!;
        double[] values = new double[columns.Length];
        while (table.Next())
        {
            numbers.Read(table);
            bool all = whole.Read(numbers, values);
            bool allValues = true;
            for (int c = 0; c < columns.Length; c++)
            {
                bool isValue = columns[c].Reader.Read(table.Field(columns[c].Field), out double expected) == CellKind.Value;
                allValues &= whole.IsValue(c);
                Assert.True(isValue || !whole.IsValue(c));
                Assert.True(!isValue || whole.IsValue(c) || double.IsNaN(numbers[columns[c].Field])); // 1e9 is a value and no plain number
                if (whole.IsValue(c))
                {
                    Assert.Equal(BitConverter.DoubleToInt64Bits(expected), BitConverter.DoubleToInt64Bits(values[c]));
                }
            }

            Assert.Equal(allValues, all);
        }
    });

    [Fact]
    public void Of_ColumnsThatAskEachRow_IsNone()
    {
        using var nursery = new TestNursery(Exports.Replace("unit = \"Cel\"", "unit = \"Cel\"\n  unitChanges = [{ from = 2025-07-01T00:00, unit = \"[degF]\" }]", StringComparison.Ordinal));
        ReadingColumn[] columns = ReadingColumns.Bind(nursery.Settings.Exports[0], new ColumnFinder("a.csv", ["time", "f", "rh", "c"], 4, 1), new ProblemList());
        Assert.Null(WholeRow.Of(columns, new PlainNumbers((byte)',', columns)));
    }
}
