using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Reports.Data;

/// <summary>Causes, what-ifs, the house balance and the effect of waterings as tables.</summary>
internal static class CauseTables
{
    public static byte[] Causes(ImmutableArray<Cause> causes)
    {
        CsvTable table = new("cause", "riskHours", "low", "high");
        foreach (Cause c in causes)
        {
            table.Text(c.Name).Number(c.RiskHours.Value).Number(c.RiskHours.Low).Number(c.RiskHours.High).EndRow();
        }

        return table.ToBytes();
    }

    public static byte[] WhatIfs(ImmutableArray<WhatIf> whatIfs)
    {
        CsvTable table = new("whatIf", "riskHours", "low", "high", "avoided", "avoidedLow", "avoidedHigh");
        foreach (WhatIf w in whatIfs)
        {
            table.Text(w.Name).Number(w.RiskHours.Value).Number(w.RiskHours.Low).Number(w.RiskHours.High)
                .Number(w.RiskHoursAvoided.Value).Number(w.RiskHoursAvoided.Low).Number(w.RiskHoursAvoided.High).EndRow();
        }

        return table.ToBytes();
    }

    public static byte[] Balance(HouseBalanceReport balance)
    {
        CsvTable table = new("parameter", "value", "standardError", "unit", "low", "high", "atBound", "told", "source");
        foreach (BalanceParameter p in balance.Parameters)
        {
            table.Text(p.Name).Number(p.Value).Number(p.Error).Text(p.Unit).Number(p.Low).Number(p.High).Text(p.AtBound).Flag(p.Told).Text(p.Source).EndRow();
        }

        return table.ToBytes();
    }

    public static byte[] Effect(MatchedWaterings matched)
    {
        CsvTable table = new("hoursFromStart", "absoluteHumidityGm3", "low", "high");
        foreach (EffectPoint p in matched.Curve)
        {
            table.Number(p.Hours).Number(p.Gm3).Number(p.Low).Number(p.High).EndRow();
        }

        return table.ToBytes();
    }
}
