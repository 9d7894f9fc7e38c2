using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
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

        PotTablesMarkup.Open(body, Phrase.Of("Treatments"), Phrase.Of("Treatments of the period; dose is volume times concentration"), Phrase.Of("When"), Phrase.Of("Bench"), Phrase.Of("What"), Phrase.Of("Active ingredient"), Phrase.Of("Group"), Phrase.Of("Dose a pot"), Phrase.Of("Closed until"));
        foreach (TreatmentEntry t in records.Treatments)
        {
            string dose = t.MilligramPerPot is { } mg ? Phrase.Of($"{DisplayUnits.Number(mg, 2)} mg") : t.VolumeMl is { } ml ? Phrase.Of($"{DisplayUnits.Number(ml, 0)} mL, concentration not noted") : Phrase.Of("not noted");
            body.Line($"<tr><th scope=\"row\">{LocalTimes.Moment(t.At)}</th><td>{PotStrip.Bench(t.Bench)}</td><td>{t.What}{(t.Purpose.Length > 0 ? $", {t.Purpose}" : "")}</td><td>{t.ActiveIngredient}</td><td>{string.Join(" + ", t.Groups)}</td><td>{dose}</td><td>{(t.ReentryUntil is { } until ? LocalTimes.Moment(until) : Phrase.Of("not noted"))}</td></tr>");
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

        PotTablesMarkup.Open(body, Phrase.Of("Resistance groups"), Phrase.Of($"Resistance groups since {LocalTimes.DayAndYear(records.SeasonFrom)}"), Phrase.Of("Group"), Phrase.Of("Uses"), Phrase.Of("In a row"), Phrase.Of("Last"), Phrase.Of("Risk of resistance"));
        foreach (GroupUse g in records.Groups)
        {
            string risk = g.Risk == ResistanceRisk.NotKnown ? DisplayUnits.NotKnown : $"{Words.Spaced(System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(g.Risk.ToString()))}{(g.RiskSeen ? "" : Phrase.Of(" (from memory)"))}";
            body.Line($"<tr><th scope=\"row\">{g.Group}{(g.Name.Length > 0 ? $", {Phrase.Of(g.Name)}" : "")}</th><td>{g.Uses}</td><td>{g.LongestRun}</td><td>{LocalTimes.Moment(g.Last)}</td><td>{risk}</td></tr>");
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

        PotTablesMarkup.Open(body, Phrase.Of("Floors"), Phrase.Of("Growth regulators on floors and benches"), Phrase.Of("When"), Phrase.Of("Bench"), Phrase.Of("What"), Phrase.Of("Crop since"), Phrase.Of("Floods in the period"));
        foreach (FloorEntry f in records.Floors)
        {
            body.Line($"<tr><th scope=\"row\">{LocalTimes.Moment(f.At)}</th><td>{PotStrip.Bench(f.Bench)}</td><td>{f.What}</td><td>{(f.NextCrop is { } crop ? $"{crop}{(f.Sensitive ? Phrase.Of(", sensitive") : "")}" : Phrase.Of("none"))}</td><td>{f.Floods}</td></tr>");
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

        PotTablesMarkup.Open(body, Phrase.Of("Tanks"), Phrase.Of("Tanks against the limits of the nursery file"), Phrase.Of("Reading"), Phrase.Of("Limits"), Phrase.Of("Readings"), Phrase.Of("Out of limits"), Phrase.Of("Waterings out of limits or without a reading"));
        foreach (TankEntry t in records.Tanks)
        {
            string limits = t is { Low: { } low, High: { } high } ? Phrase.Of($"{DisplayUnits.Number(low, 1)} to {DisplayUnits.Number(high, 1)}") : t.Low is { } least ? Phrase.Of($"from {DisplayUnits.Number(least, 1)}") : Phrase.Of($"up to {DisplayUnits.Number(t.High, 1)}");
            body.Line($"<tr><th scope=\"row\">{t.What}{(t.Tank.Length > 0 ? $", {t.Tank}" : "")}</th><td>{limits} {t.Unit}</td><td>{t.Readings}</td><td>{t.Outside}</td><td>{t.Waterings.Length}</td></tr>");
        }

        PotTablesMarkup.Close(body);
    }
}
