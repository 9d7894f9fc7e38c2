using ClimateLens.Analysis.Comparison;

namespace ClimateLens.Reports.Data;

/// <summary>A comparison as tables.</summary>
internal static class CompareTables
{
    public static byte[] Nights(ComparisonReport report)
    {
        CsvTable table = new("evening", "firstRiskHours", "secondRiskHours", "firstHumidityPct", "secondHumidityPct", "firstLeastMarginK", "secondLeastMarginK");
        foreach (NightPair n in report.Nights)
        {
            table.Date(n.Evening).Number(n.FirstRiskHours).Number(n.SecondRiskHours).Number(n.FirstHumidityPct).Number(n.SecondHumidityPct).Number(n.FirstLeastMarginK).Number(n.SecondLeastMarginK).EndRow();
        }

        return table.ToBytes();
    }

    public static byte[] Differences(ComparisonReport report)
    {
        CsvTable table = new("quantity", "first", "second", "difference", "low", "high", "sensorError", "verdict");
        foreach (MeanDifference d in report.Differences)
        {
            table.Text(d.Name).Number(d.First).Number(d.Second).Number(d.Difference.Value).Number(d.Difference.Low).Number(d.Difference.High).Number(d.SensorError).Text(d.Verdict).EndRow();
        }

        return table.ToBytes();
    }
}
