using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using ClimateLens.Cli.Commands;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;
using ClimateLens.Reports;

namespace ClimateLens.Cli.Output;

/// <summary>The result as one JSON object; its keys are listed in docs/command-line.md.</summary>
internal static class JsonResult
{
    /// <summary>Writes the object and a line end.</summary>
    public static void Write(TextWriter output, Request request, CommandResult result)
    {
        using MemoryStream bytes = new();
        using (Utf8JsonWriter json = new(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("command", request.Command);
            json.WriteNumber("exitCode", result.ExitCode);
            json.WriteString("siteIndex", result.SiteIndex);
            WriteHouseWeeks(json, result);
            WriteImports(json, result);
            WriteProblems(json, result);
            if (result.SetAside is not null)
            {
                SetAsideJson.Write(json, result.SetAside);
            }

            if (result.Plan is { } plan)
            {
                WritePlan(json, plan);
            }

            if (!result.Checkup.IsEmpty)
            {
                CheckupOutput.WriteJson(json, result.Checkup);
            }

            if (result.Review is not null)
            {
                json.WritePropertyName("review");
                json.WriteRawValue(ReviewJson.Write(result.Review));
            }

            json.WriteEndObject();
        }

        output.WriteLine(Encoding.UTF8.GetString(bytes.ToArray()));
    }

    private static void WritePlan(Utf8JsonWriter json, ImmutableArray<PlannedWeek> plan)
    {
        json.WriteStartArray("plan");
        foreach (PlannedWeek week in plan)
        {
            json.WriteStartObject();
            json.WriteString("house", week.House);
            json.WriteString("week", week.Week.ToString());
            json.WriteNumber("values", week.Values);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteHouseWeeks(Utf8JsonWriter json, CommandResult result)
    {
        json.WriteStartArray("houseWeeks");
        foreach ((HouseWeekSummary s, string status) in result.HouseWeeks)
        {
            json.WriteStartObject();
            json.WriteString("house", s.House);
            json.WriteString("houseName", s.HouseName);
            json.WriteString("period", s.Period);
            if (s is { RiskHours: { } value, Low: { } low, High: { } high })
            {
                json.WriteStartObject("riskHours");
                json.WriteNumber("value", value);
                json.WriteNumber("low", low);
                json.WriteNumber("high", high);
                json.WriteEndObject();
            }
            else
            {
                json.WriteNull("riskHours");
            }

            json.WriteNumber("expectedHours", s.ExpectedHours);
            json.WriteNumber("hoursWithData", s.HoursWithData);
            json.WriteNumber("setAside", s.SetAside);
            json.WriteString("page", s.Page);
            json.WriteString("status", status);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteImports(Utf8JsonWriter json, CommandResult result)
    {
        json.WriteStartArray("imports");
        foreach (ImportSheet sheet in result.Imports)
        {
            json.WriteStartObject();
            json.WriteString("file", sheet.File);
            json.WriteString("house", sheet.House);
            json.WriteString("source", sheet.Source);
            json.WriteString("sha256", sheet.Sha256);
            json.WriteNumber("rowsRead", sheet.RowsRead);
            json.WriteNumber("accepted", sheet.Accepted);
            json.WriteNumber("setAside", sheet.SetAside);
            json.WriteNumber("duplicates", sheet.Duplicates);
            json.WriteNumber("blank", sheet.Blank);
            json.WriteNumber("cellsNotRead", sheet.CellsNotRead);
            json.WriteNumber("conflicts", sheet.Conflicts);
            json.WriteString("first", sheet.First?.ToString());
            json.WriteString("last", sheet.Last?.ToString());
            ImportDetailsJson.Write(json, sheet.Details);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Writes the problems of a result.</summary>
    internal static void WriteProblems(Utf8JsonWriter json, CommandResult result)
    {
        json.WriteStartArray("problems");
        foreach (Problem p in result.Problems)
        {
            json.WriteStartObject();
            json.WriteString("code", p.Code);
            json.WriteString("severity", p.Severity switch { Severity.Error => "error", Severity.Warning => "warning", _ => "note" });
            json.WriteString("file", p.File);
            WriteNumber(json, "line", p.Line);
            WriteNumber(json, "column", p.Column);
            json.WriteString("found", p.Found);
            json.WriteString("expected", p.Expected);
            json.WriteString("mend", p.Mend);
            json.WriteNumber("count", p.Count);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, int? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
