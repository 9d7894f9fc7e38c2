using System.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Imports;
using CsCheck;

namespace ClimateLens.Logs.Tests;

public sealed class AccountingTests
{
    private static readonly Gen<string> Cell = Gen.OneOf<string>(
        Gen.Int[-20, 60].Select(n => $"{n}"),
        Gen.Double[-5, 40].Select(n => n.ToString("F1", System.Globalization.CultureInfo.InvariantCulture)),
        Gen.OneOf<string>("", " ", "-999", "x", "\"", "\"1", "1\"2", "\"20.5\"", "\"a,b\"", "1,5", "NaN", "\u00e9", "\0", "\ufffd", "1e3", "\"multi\nline\""));

    private static readonly Gen<string> Stamp = Gen.OneOf<string>(
        Gen.Int[0, 40].Select(q => new DateTime(2025, 10, 25, 22, 0, 0).AddMinutes(15 * q).ToString("yyyy-MM-dd'T'HH:mm", System.Globalization.CultureInfo.InvariantCulture)),
        Gen.Int[0, 20].Select(q => new DateTime(2025, 3, 30, 0, 0, 0).AddMinutes(15 * q).ToString("yyyy-MM-dd'T'HH:mm", System.Globalization.CultureInfo.InvariantCulture)),
        Gen.OneOf<string>("2024-12-31T23:59", "2025-01-01T00:00+14:00", "2025-06-31T10:00", "", "time", "25/12/2025", "2025-07-01T10:00Z"));

    private static readonly Gen<string> Line = Gen.OneOf<string>(
        Gen.Select(Stamp, Cell, Cell).Select((t, a, b) => $"{t},{a},{b}"),
        Gen.Select(Stamp, Cell).Select((t, a) => $"{t},{a}"),
        Gen.Select(Stamp, Cell, Cell).Select((t, a, b) => $"{t},{a},{b},"),
        Gen.OneOf<string>("", ",,", "time,temp,rh", "# note", "   ", "\"", ";;;"));

    private static readonly Gen<string> Messy = Gen.Select(Line.List[0, 40], Gen.OneOf<string>("\n", "\r\n", "\r"), Gen.Bool)
        .Select((lines, end, last) => "time,temp,rh" + end + string.Join(end, lines) + (last ? end : ""));

    [Fact]
    public void Import_AnyMessyFiles_EveryRowIsAccountedFor_AndNothingChangesTheSecondTime()
    {
        Gen.Select(Messy, Messy).Sample(
            (first, second) =>
            {
                using var nursery = new TestNursery(TestNursery.Climate);
                nursery.Write("a.csv", first);
                nursery.Write("b.csv", second);
                ImportReport report = nursery.Import();
                foreach (ImportSheet sheet in report.Sheets)
                {
                    Assert.Equal(sheet.RowsRead, sheet.Accepted + sheet.SetAside + sheet.Duplicates + sheet.Blank);
                    int Of(SetAsideKind kind) => sheet.Details!.Reasons.Where(r => r.Kind == kind).Sum(r => r.Count);
                    Assert.Equal((sheet.SetAside, sheet.CellsNotRead), (Of(SetAsideKind.Row), Of(SetAsideKind.Cell)));
                }

                Assert.Equal(report.Sheets.Sum(s => s.SetAside + s.CellsNotRead) + report.Sheets.Sum(s => s.Conflicts) - Count(nursery, "import.repeated"), nursery.SetAside().Length);
                Assert.True(nursery.Rows().Length <= report.Sheets.Sum(s => s.Accepted));
                var before = nursery.StoreFiles();
                nursery.Import();
                Assert.Equal(before, nursery.StoreFiles());
            },
            iter: 40,
            threads: 1);
    }

    [Fact]
    public void Check_AnyBytes_NeverThrows()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        byte[] header = Encoding.UTF8.GetBytes("time,temp,rh\n2025-07-01T10:00,20,80\n");
        Gen.Select(Gen.Byte.Array[0, 400], Gen.Bool).Sample(
            (bytes, sound) =>
            {
                nursery.Write("a.csv", sound ? [.. header, .. bytes] : bytes);
                foreach (ImportSheet sheet in ExportChecker.Check(nursery.Settings, nursery.Folder).Sheets)
                {
                    Assert.Equal(sheet.RowsRead, sheet.Accepted + sheet.SetAside + sheet.Duplicates + sheet.Blank);
                }
            },
            iter: 1000,
            threads: 1);
    }

    private static int Count(TestNursery nursery, string code) => nursery.SetAside().Count(a => a.Code == code);
}
