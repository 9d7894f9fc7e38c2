using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Reports.Data;

/// <summary>Risk hours and affected plants, a row a week and symptom.</summary>
internal static class ScoutingTable
{
    public static byte[] Of(ScoutingReport scouting)
    {
        CsvTable table = new("week", "riskHours", "symptom", "plants");
        for (int week = 0; week < scouting.Weeks.Length; week++)
        {
            foreach (ScoutedSymptom symptom in scouting.Symptoms)
            {
                table.Text(scouting.Weeks[week].Week).Number(scouting.Weeks[week].RiskHours).Text(symptom.Symptom).Number(symptom.Plants[week]).EndRow();
            }
        }

        return table.ToBytes();
    }
}
