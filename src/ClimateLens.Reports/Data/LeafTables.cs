using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Reports.Data;

/// <summary>Wet periods and causes of error as tables.</summary>
internal static class LeafTables
{
    public static byte[] WetPeriods(ImmutableArray<WetPeriod> periods)
    {
        CsvTable table = new("start", "end", "wetHours", "meanTemperatureC", "index", "grade", "outsideFit", "unknownHours", "open");
        foreach (WetPeriod p in periods)
        {
            table.Time(p.Start).Time(p.End).Number(p.Hours).Number(p.MeanTemperatureC).Number(p.Index).Text(p.Grade).Flag(p.OutsideFit).Number(p.UnknownHours).Flag(p.Open).EndRow();
        }

        return table.ToBytes();
    }

    public static byte[] ErrorShares(ImmutableArray<ErrorShare> shares)
    {
        CsvTable table = new("cause", "hours", "share");
        foreach (ErrorShare s in shares)
        {
            table.Text(s.Cause).Number(s.Hours).Number(s.Share).EndRow();
        }

        return table.ToBytes();
    }
}
