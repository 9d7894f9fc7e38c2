using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;
using ClimateLens.Science.Treatments;

namespace ClimateLens.Reports.Cells;

/// <summary>The tables of the records: treatments, resistance groups, floors, tanks.</summary>
internal static class CareMarkup
{
    /// <summary>Treatments of the period with the dose where it is known.</summary>
    public static void Treatments(HtmlBuilder body, RecordsReport records)
    {
        if (records.Treatments.IsEmpty)
        {
            return;
        }

        PotTablesMarkup.Open(body, "Treatments", "Treatments of the period; dose is volume times concentration", "When", "Bench", "What", "Active ingredient", "Group", "Dose a pot", "Closed until");
        foreach (TreatmentEntry t in records.Treatments)
        {
            string dose = t.MilligramPerPot is { } mg ? $"{DisplayUnits.Number(mg, 2)} mg" : t.VolumeMl is { } ml ? $"{DisplayUnits.Number(ml, 0)} mL, concentration not noted" : "not noted";
            body.Line($"<tr><th scope=\"row\">{LocalTimes.Moment(t.At)}</th><td>{PotStrip.Bench(t.Bench)}</td><td>{t.What}{(t.Purpose.Length > 0 ? $", {t.Purpose}" : "")}</td><td>{t.ActiveIngredient}</td><td>{string.Join(" + ", t.Groups)}</td><td>{dose}</td><td>{(t.ReentryUntil is { } until ? LocalTimes.Moment(until) : "not noted")}</td></tr>");
        }

        PotTablesMarkup.Close(body);
    }

    /// <summary>Resistance groups of the season.</summary>
    public static void Groups(HtmlBuilder body, RecordsReport records)
    {
        if (records.Groups.IsEmpty)
        {
            return;
        }

        PotTablesMarkup.Open(body, "Resistance groups", $"Resistance groups since {LocalTimes.DayAndYear(records.SeasonFrom)}", "Group", "Uses", "In a row", "Last", "Risk of resistance");
        foreach (GroupUse g in records.Groups)
        {
            string risk = g.Risk == ResistanceRisk.NotKnown ? DisplayUnits.NotKnown : $"{Words.Spaced(System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(g.Risk.ToString()))}{(g.RiskSeen ? "" : " (from memory)")}";
            body.Line($"<tr><th scope=\"row\">{g.Group}{(g.Name.Length > 0 ? $", {g.Name}" : "")}</th><td>{g.Uses}</td><td>{g.LongestRun}</td><td>{LocalTimes.Moment(g.Last)}</td><td>{risk}</td></tr>");
        }

        PotTablesMarkup.Close(body);
    }

    /// <summary>Growth regulators on floors and benches.</summary>
    public static void Floors(HtmlBuilder body, RecordsReport records)
    {
        if (records.Floors.IsEmpty)
        {
            return;
        }

        PotTablesMarkup.Open(body, "Floors", "Growth regulators on floors and benches", "When", "Bench", "What", "Crop since", "Floods in the period");
        foreach (FloorEntry f in records.Floors)
        {
            body.Line($"<tr><th scope=\"row\">{LocalTimes.Moment(f.At)}</th><td>{PotStrip.Bench(f.Bench)}</td><td>{f.What}</td><td>{(f.NextCrop is { } crop ? $"{crop}{(f.Sensitive ? ", sensitive" : "")}" : "none")}</td><td>{f.Floods}</td></tr>");
        }

        PotTablesMarkup.Close(body);
    }

    /// <summary>Tanks against their limits.</summary>
    public static void Tanks(HtmlBuilder body, RecordsReport records)
    {
        if (records.Tanks.IsEmpty)
        {
            return;
        }

        PotTablesMarkup.Open(body, "Tanks", "Tanks against the limits of the nursery file", "Reading", "Limits", "Readings", "Out of limits", "Waterings out of limits or without a reading");
        foreach (TankEntry t in records.Tanks)
        {
            string limits = t is { Low: { } low, High: { } high } ? $"{DisplayUnits.Number(low, 1)} to {DisplayUnits.Number(high, 1)}" : t.Low is { } least ? $"from {DisplayUnits.Number(least, 1)}" : $"up to {DisplayUnits.Number(t.High, 1)}";
            body.Line($"<tr><th scope=\"row\">{t.What}{(t.Tank.Length > 0 ? $", {t.Tank}" : "")}</th><td>{limits} {t.Unit}</td><td>{t.Readings}</td><td>{t.Outside}</td><td>{t.Waterings.Length}</td></tr>");
        }

        PotTablesMarkup.Close(body);
    }
}
