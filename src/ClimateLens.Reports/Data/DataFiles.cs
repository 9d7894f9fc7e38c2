using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Reports.Data;

/// <summary>The files that stand beside a page, by name. A file whose content is unknown is not there at all.</summary>
public static class DataFiles
{
    /// <summary>Hours.</summary>
    public const string Hours = "hours.csv";

    /// <summary>Ground cover by day.</summary>
    public const string Canopy = "canopy.csv";

    /// <summary>Waterings.</summary>
    public const string Waterings = "waterings.csv";

    /// <summary>Sensors and their flags.</summary>
    public const string Sensors = "sensors.csv";

    /// <summary>Readings in doubt or failed, by stretch.</summary>
    public const string Flags = "flags.csv";

    /// <summary>What the learned check named.</summary>
    public const string SecondOpinion = "second-opinion.csv";

    /// <summary>Gaps.</summary>
    public const string Gaps = "gaps.csv";

    /// <summary>Files behind the readings.</summary>
    public const string Files = "files.csv";

    /// <summary>Findings.</summary>
    public const string Findings = "findings.csv";

    /// <summary>Wet periods.</summary>
    public const string WetPeriods = "wet-periods.csv";

    /// <summary>Causes of error.</summary>
    public const string ErrorShares = "error-shares.csv";

    /// <summary>Shares of the risk hours.</summary>
    public const string Causes = "causes.csv";

    /// <summary>The period done otherwise.</summary>
    public const string WhatIfs = "what-ifs.csv";

    /// <summary>Parameters of the house balance.</summary>
    public const string HouseBalance = "house-balance.csv";

    /// <summary>What a watering over the leaves did to the humidity, by the time from its start.</summary>
    public const string WateringEffect = "watering-effect.csv";

    /// <summary>Risk hours and affected plants by week.</summary>
    public const string Scouting = "scouting.csv";

    /// <summary>Levels of each bench by visit.</summary>
    public const string Pots = "pots.csv";

    /// <summary>Drying and forecast by bench.</summary>
    public const string Drying = "drying.csv";

    /// <summary>How alike people grade.</summary>
    public const string Graders = "graders.csv";

    /// <summary>Treatments of the period.</summary>
    public const string Treatments = "treatments.csv";

    /// <summary>Resistance groups of the season.</summary>
    public const string Groups = "resistance-groups.csv";

    /// <summary>Affected plants by bench.</summary>
    public const string ScoutedBenches = "scouted-benches.csv";

    /// <summary>The review, whole.</summary>
    public const string Review = "review.json";

    /// <summary>Every name that this version can write.</summary>
    public static ImmutableArray<string> Names { get; } = [Canopy, Causes, Drying, ErrorShares, Files, Findings, Flags, Gaps, Graders, Hours, HouseBalance, Pots, Groups, Review, ScoutedBenches, Scouting, SecondOpinion, Sensors, Treatments, WateringEffect, Waterings, WetPeriods, WhatIfs];

    /// <summary>The files of a review, in ordinal order of their names.</summary>
    public static ImmutableSortedDictionary<string, byte[]> Of(Review review)
    {
        ArgumentNullException.ThrowIfNull(review);
        var files = ImmutableSortedDictionary.CreateBuilder<string, byte[]>(StringComparer.Ordinal);
        files[Review] = ReviewJson.Write(review);
        files[Hours] = HoursTable(review);
        files[Sensors] = SensorsTable(review);
        files[Flags] = FlagsTable(review);
        files[Gaps] = GapsTable(review);
        files[Findings] = FindingsTable(review);
        if (review.Canopy is { } canopy)
        {
            files[Canopy] = CanopyTable(canopy);
        }

        if (review.WetPeriods is { IsEmpty: false } wet)
        {
            files[WetPeriods] = LeafTables.WetPeriods(wet);
        }

        if (!review.ErrorShares.IsEmpty)
        {
            files[ErrorShares] = LeafTables.ErrorShares(review.ErrorShares);
        }

        if (!review.Imports.IsEmpty)
        {
            files[Files] = FilesTable.Of(review.Imports);
        }

        if (review.SecondOpinion is { } opinion)
        {
            files[SecondOpinion] = SecondOpinionTable.Of(opinion);
        }

        if (review.Causes is { } causes)
        {
            files[Causes] = CauseTables.Causes(causes);
        }

        if (review.WhatIfs is { } whatIfs)
        {
            files[WhatIfs] = CauseTables.WhatIfs(whatIfs);
        }

        if (review.HouseBalance is { } balance)
        {
            files[HouseBalance] = CauseTables.Balance(balance);
        }

        if (review.MatchedWaterings is { Curve.IsEmpty: false } matched)
        {
            files[WateringEffect] = CauseTables.Effect(matched);
        }

        if (review.Scouting is { } scouting)
        {
            files[Scouting] = ScoutingTable.Of(scouting);
        }

        foreach ((string name, byte[] table) in PotTables.Of(review.Pots).Concat(CareTables.Of(review.Records)))
        {
            files[name] = table;
        }

        if (review.Waterings is { } waterings)
        {
            files[Waterings] = WateringsTable(waterings);
        }

        return files.ToImmutable();
    }

    private static byte[] HoursTable(Review review)
    {
        CsvTable table = new(
            "start", "airTemperatureC", "relativeHumidityPct", "vpdKPa", "dewPointC", "leafTemperatureC", "leafAirDewPointC", "dewPointMarginK", "absoluteHumidityGm3", "wet", "wetOpinionShare", "risk", "riskProbability", "night");
        foreach (ReviewHour h in review.Hours)
        {
            table.Time(h.Start).Number(h.AirTemperatureC).Number(h.RelativeHumidityPct).Number(h.VpdKPa).Number(h.DewPointC)
                .Number(h.LeafTemperatureC).Number(h.LeafAirDewPointC).Number(h.DewPointMarginK).Number(h.AbsoluteHumidityGm3)
                .Flag(h.Wet).Number(h.WetOpinionShare).Flag(h.Risk).Number(h.RiskProbability).Flag(h.Night).EndRow();
        }

        return table.ToBytes();
    }

    private static byte[] WateringsTable(ImmutableArray<Watering> waterings)
    {
        CsvTable table = new(
            "start", "end", "method", "wetsLeaves", "bench", "litres", "sunset", "cutOff", "afterCutOff", "absoluteHumidityBeforeGm3", "absoluteHumidityAfterGm3",
            "absoluteHumidityRiseGm3", "absoluteHumidityRiseLowGm3", "absoluteHumidityRiseHighGm3", "relativeHumidityBeforePct", "relativeHumidityAfterPct",
            "hoursToSunset", "dryingLeftMm", "leafTemperatureC", "sunOverCropWm2", "riskHoursCaused", "riskHoursCausedLow", "riskHoursCausedHigh", "source");
        foreach (Watering w in waterings)
        {
            table.Time(w.Start).Time(w.End).Text(MethodName(w.Method)).Flag(w.WetsLeaves).Text(w.Bench).Number(w.Litres)
                .Time(w.Sunset).Time(w.CutOff).Flag(w.AfterCutOff).Number(w.AbsoluteHumidityBeforeGm3).Number(w.AbsoluteHumidityAfterGm3)
                .Number(w.AbsoluteHumidityRiseGm3?.Value).Number(w.AbsoluteHumidityRiseGm3?.Low).Number(w.AbsoluteHumidityRiseGm3?.High)
                .Number(w.RelativeHumidityBeforePct).Number(w.RelativeHumidityAfterPct)
                .Number(w.HoursToSunset).Number(w.DryingLeftMm).Number(w.LeafTemperatureC).Number(w.SunOverCropWm2)
                .Number(w.RiskHoursCaused?.Value).Number(w.RiskHoursCaused?.Low).Number(w.RiskHoursCaused?.High).Text(w.Source).EndRow();
        }

        return table.ToBytes();
    }

    private static byte[] CanopyTable(CanopyState canopy)
    {
        CsvTable table = new("date", "cover", "coverLow", "coverHigh");
        foreach (CanopyDay day in canopy.Days)
        {
            table.Date(day.Date).Number(day.Cover.Value).Number(day.Cover.Low).Number(day.Cover.High).EndRow();
        }

        return table.ToBytes();
    }

    private static byte[] SensorsTable(Review review)
    {
        CsvTable table = new("source", "channel", "sensor", "pass", "notEvaluated", "suspect", "fail", "missing", "notes");
        foreach (SensorReport s in review.Sensors)
        {
            FlagCounts f = s.Flags;
            table.Text(s.Source).Text(s.Channel).Text(s.Sensor).Number(f.Pass).Number(f.NotEvaluated).Number(f.Suspect)
                .Number(f.Fail).Number(f.Missing).Text(string.Join(' ', s.Notes)).EndRow();
        }

        return table.ToBytes();
    }

    private static byte[] FlagsTable(Review review)
    {
        CsvTable table = new("source", "channel", "sensor", "start", "end", "flag", "checks");
        foreach (SensorReport s in review.Sensors)
        {
            foreach (FlaggedStretch f in s.Flagged)
            {
                table.Text(s.Source).Text(s.Channel).Text(s.Sensor).Time(f.Start).Time(f.End).Text(f.Flag).Text(string.Join(' ', f.Checks)).EndRow();
            }
        }

        return table.ToBytes();
    }

    private static byte[] GapsTable(Review review)
    {
        CsvTable table = new("start", "end", "hours", "why");
        foreach (Gap g in review.Coverage.Gaps)
        {
            table.Time(g.Start).Time(g.End).Number(g.Hours).Text(g.Why).EndRow();
        }

        return table.ToBytes();
    }

    private static byte[] FindingsTable(Review review)
    {
        CsvTable table = new("rank", "id", "text", "action", "caution", "evidence");
        foreach (Finding f in review.Findings)
        {
            table.Number(f.Rank).Text(f.Id).Text(f.Text).Text(f.Action).Text(f.Caution).Text(string.Join(' ', f.Evidence)).EndRow();
        }

        return table.ToBytes();
    }

    private static string MethodName(WateringMethod? method)
        => method is { } known ? System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(known.ToString()) : "";
}
