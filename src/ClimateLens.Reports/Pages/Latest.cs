using System.Collections.Immutable;
using System.Text.Json;
using ClimateLens.Reports.Publishing;

namespace ClimateLens.Reports.Pages;

/// <summary>The newest page of each house as latest.json, for those who build on it; its keys are listed in docs/command-line.md.</summary>
internal static class Latest
{
    /// <summary>The file.</summary>
    /// <param name="entries">All pages, newest first.</param>
    public static byte[] Write(ImmutableArray<SiteEntry> entries)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteStartArray("houses");
            foreach (SiteEntry entry in entries.DistinctBy(e => e.Summary.House).OrderBy(e => e.Summary.House, NaturalOrder.Instance))
            {
                Write(json, entry);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return [.. stream.ToArray(), (byte)'\n'];
    }

    private static void Write(Utf8JsonWriter json, SiteEntry entry)
    {
        HouseWeekSummary s = entry.Summary;
        json.WriteStartObject();
        json.WriteString("house", s.House);
        json.WriteString("houseName", s.HouseName);
        json.WriteString("nursery", entry.Nursery);
        json.WriteBoolean("invented", entry.Invented);
        json.WriteString("period", s.Period);
        json.WriteString("ended", entry.Ended);
        Estimate(json, "riskHours", s.RiskHours, s.Low, s.High);
        Estimate(json, "riskHoursBefore", entry.Before?.Value, entry.Before?.Low, entry.Before?.High);
        json.WriteNumber("expectedHours", s.ExpectedHours);
        json.WriteNumber("hoursWithData", s.HoursWithData);
        json.WriteNumber("setAside", s.SetAside);
        json.WriteString("said", entry.Said);
        json.WriteString("page", s.Page);
        json.WriteEndObject();
    }

    private static void Estimate(Utf8JsonWriter json, string name, double? value, double? low, double? high)
    {
        if (value is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteNumber("value", known);
        json.WriteNumber("low", low ?? known);
        json.WriteNumber("high", high ?? known);
        json.WriteEndObject();
    }
}
