namespace ClimateLens.HouseSimulator.Records;

/// <summary>
/// What was put on the crop: active ingredients with their FRAC group codes, no products and no rates. The plan is
/// invented to give a record to read and advises nobody.
/// </summary>
public static class TreatmentBook
{
    private static readonly string[][] Rows =
    [
        ["2025-09-04 16:30", "1", "", "drench", "root rot", "propamocarb", "28", "60", "2025-09-05 06:30", "KL"],
        ["2025-09-04 17:20", "2", "", "drench", "root rot", "propamocarb", "28", "60", "2025-09-05 06:30", "KL"],
        ["2025-09-18 15:45", "1", "", "spray", "grey mould", "fenhexamid", "17", "", "2025-09-19 06:30", "KL"],
        ["2025-10-02 10:10", "1", "", "drench", "root rot", "Trichoderma asperellum", "BM02", "50", "", "MB"],
        ["2025-10-02 10:50", "2", "", "drench", "root rot", "Trichoderma asperellum", "BM02", "50", "", "MB"],
        ["2025-10-16 16:40", "1", "", "spray", "grey mould", "cyprodinil + fludioxonil", "9 + 12", "", "2025-10-17 06:30", "KL"],
        ["2025-10-16 17:20", "2", "", "spray", "grey mould", "cyprodinil + fludioxonil", "9 + 12", "", "2025-10-17 06:30", "KL"],
        ["2025-10-30 15:50", "1", "B", "spray", "grey mould", "fenhexamid", "17", "", "2025-10-31 06:30", "KL"],
    ];

    public static string Write()
    {
        var csv = new CsvText("time", "house", "bench", "what", "purpose", "activeIngredient", "group", "mlPerPot", "reentryUntil", "operator");
        foreach (string[] row in Rows)
        {
            csv.Row(row);
        }

        return csv.ToString();
    }
}
