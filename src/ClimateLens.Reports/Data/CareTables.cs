using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Reports.Data;

/// <summary>What the records say, as tables.</summary>
internal static class CareTables
{
    public static IEnumerable<(string Name, byte[] Table)> Of(RecordsReport? records)
    {
        if (records is { Treatments.IsEmpty: false })
        {
            yield return (DataFiles.Treatments, Treatments(records));
        }

        if (records is { Groups.IsEmpty: false })
        {
            yield return (DataFiles.Groups, Groups(records));
        }

        if (records is { Scouted.IsEmpty: false })
        {
            yield return (DataFiles.ScoutedBenches, Scouted(records));
        }
    }

    private static byte[] Treatments(RecordsReport records)
    {
        CsvTable table = new("at", "bench", "what", "purpose", "activeIngredient", "groups", "volumeMl", "milligramPerPot", "reentryUntil");
        foreach (TreatmentEntry t in records.Treatments)
        {
            table.Time(t.At).Text(t.Bench).Text(t.What).Text(t.Purpose).Text(t.ActiveIngredient).Text(string.Join(" + ", t.Groups)).Number(t.VolumeMl).Number(t.MilligramPerPot).Time(t.ReentryUntil).EndRow();
        }

        return table.ToBytes();
    }

    private static byte[] Groups(RecordsReport records)
    {
        CsvTable table = new("group", "name", "uses", "longestRun", "last", "risk", "riskSeen", "seasonFrom");
        foreach (GroupUse g in records.Groups)
        {
            table.Text(g.Group).Text(g.Name).Number(g.Uses).Number(g.LongestRun).Time(g.Last).Text(System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(g.Risk.ToString())).Flag(g.RiskSeen).Date(records.SeasonFrom).EndRow();
        }

        return table.ToBytes();
    }

    private static byte[] Scouted(RecordsReport records)
    {
        CsvTable table = new("at", "bench", "symptom", "plants");
        foreach (ScoutedBench s in records.Scouted)
        {
            table.Time(s.At).Text(s.Bench).Text(s.Symptom).Number(s.Plants).EndRow();
        }

        return table.ToBytes();
    }
}
