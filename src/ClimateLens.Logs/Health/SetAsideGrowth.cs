using System.Globalization;
using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Health;

/// <summary>
/// The share of rows set aside: of the file that a source imported last, against those before it. An export whose layout has changed shows here first.
/// </summary>
internal static class SetAsideGrowth
{
    // Growth is told from this many rows on, at this share, and this many times the share before. Common practice, no source.
    private const int FewestRows = 5;
    private const double LeastShare = 0.01, Growth = 3;

    public static IEnumerable<CheckupLine> Of(Ledger ledger) => ledger.Sources
        .Select(s => (Source: s, Files: s.Files.Where(f => f.Size != LedgerFile.UnknownSize).ToArray())) // rows of a lost ledger were not counted
        .Where(s => s.Files.Length > 0)
        .Select(s => Of(s.Source, s.Files));

    private static CheckupLine Of(LedgerSource source, LedgerFile[] files)
    {
        LedgerFile newest = files[^1];
        double share = Share(newest.SetAside, Rows(newest));
        long before = files[..^1].Sum(f => (long)Rows(f));
        double usual = Share(files[..^1].Sum(f => (long)f.SetAside), before);
        string what = $"{(source.House == "nursery" ? "The whole nursery" : "House " + source.House)}, export \"{source.Source}\"{(source.Kind is null ? "" : $" of {source.Kind}")}";
        string last = $"{newest.SetAside} of {Checkup.Count(Rows(newest), "row")} of {newest.File} are set aside ({Percent(share)})";
        string text = before == 0 ? $"{what}: {last}; there is no earlier file to compare with." : $"{what}: {last}; of the files before it, {Percent(usual)}.";
        bool grown = newest.SetAside >= FewestRows && share >= LeastShare && share > Growth * usual;
        return grown
            ? CheckupLine.Look("setAside.growth", text, "See climatelens set-aside for the rows and reasons; an export whose columns or times changed needs the nursery file changed too.")
            : CheckupLine.Fine("setAside.growth", text);
    }

    private static int Rows(LedgerFile file) => file.RowsRead - file.Blank;

    private static double Share(long part, long whole) => whole == 0 ? 0 : (double)part / whole;

    private static string Percent(double share) => share is > 0 and < 0.001 ? "below 0.1 %" : (share * 100).ToString("0.0", CultureInfo.InvariantCulture) + " %";
}
