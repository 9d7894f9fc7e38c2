using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Reports.Data;

/// <summary>What people saw of the pots, as tables.</summary>
internal static class PotTables
{
    public static IEnumerable<(string Name, byte[] Table)> Of(PotReport? pots)
    {
        if (pots is null)
        {
            yield break;
        }

        yield return (DataFiles.Pots, Levels(pots));
        if (pots.Drying is { } drying)
        {
            yield return (DataFiles.Drying, Drying(drying));
        }

        if (!pots.Agreement.Pairs.IsEmpty)
        {
            yield return (DataFiles.Graders, Graders(pots.Agreement));
        }
    }

    private static byte[] Levels(PotReport pots)
    {
        CsvTable table = new("at", "bench", "what", "level", "pots");
        foreach (PotBenchReport bench in pots.Benches)
        {
            foreach (PotVisit visit in bench.Visits)
            {
                table.Time(visit.At).Text(bench.Bench).Text("check").Number(visit.Level).Number(visit.Checks).EndRow();
            }

            foreach (NodaTime.OffsetDateTime watering in bench.Waterings)
            {
                table.Time(watering).Text(bench.Bench).Text("watering").Number(null).Number(null).EndRow();
            }
        }

        return table.ToBytes();
    }

    private static byte[] Drying(DryingReport drying)
    {
        CsvTable table = new("bench", "ratePerKPaH", "rateLow", "rateHigh", "fallADay", "morning", "morningLevel", "morningLow", "morningHigh", "afternoon", "afternoonLevel", "afternoonLow", "afternoonHigh", "waterInTheMorning");
        foreach (BenchDrying b in drying.Benches)
        {
            table.Text(b.Bench).Number(b.RatePerKPaH.Value).Number(b.RatePerKPaH.Low).Number(b.RatePerKPaH.High).Number(b.FallADay);
            Forecast(table, b.Morning);
            Forecast(table, b.Afternoon);
            table.Flag(b.WaterInTheMorning).EndRow();
        }

        return table.ToBytes();
    }

    private static void Forecast(CsvTable table, LevelForecast? forecast)
        => table.Time(forecast?.At).Number(forecast?.Level.Value).Number(forecast?.Level.Low).Number(forecast?.Level.High);

    private static byte[] Graders(AgreementReport agreement)
    {
        CsvTable table = new("first", "second", "pots", "rounds", "kappaLinear", "kappaLinearLow", "kappaLinearHigh", "kappaQuadratic", "kappaQuadraticLow", "kappaQuadraticHigh", "bias", "biasLow", "biasHigh", "potsNeeded");
        foreach (GraderPair p in agreement.Pairs)
        {
            table.Text(p.First).Text(p.Second).Number(p.Pots).Number(p.Rounds);
            Range(table, p.KappaLinear);
            Range(table, p.KappaQuadratic);
            Range(table, p.Bias);
            table.Number(p.PotsNeeded).EndRow();
        }

        return table.ToBytes();
    }

    private static void Range(CsvTable table, Estimate? estimate) => table.Number(estimate?.Value).Number(estimate?.Low).Number(estimate?.High);
}
