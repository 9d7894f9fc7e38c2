using System.Globalization;
using ClimateLens.Cli.Commands;
using ClimateLens.Reports;

namespace ClimateLens.Cli.Output;

/// <summary>The result as lines for people.</summary>
internal static class TextResult
{
    /// <summary>One line a house and period, then where to look.</summary>
    public static void Write(TextWriter output, CommandResult result)
    {
        int name = result.HouseWeeks.Select(l => Name(l.Summary).Length).DefaultIfEmpty(0).Max();
        int period = result.HouseWeeks.Select(l => l.Summary.Period.Length).DefaultIfEmpty(0).Max();
        foreach (HouseWeekLine line in result.HouseWeeks)
        {
            HouseWeekSummary s = line.Summary;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{Name(s).PadRight(name)}  {s.Period.PadRight(period)}  {Risk(s),-32}  data {s.HoursWithData,3} of {s.ExpectedHours} h  set aside in its files {s.SetAside,3}  {Status(line.Status)}").TrimEnd());
        }

        if (result.SetAside is not null)
        {
            SetAsideText.Write(output, result.SetAside);
        }

        CheckupOutput.WriteText(output, result.Checkup);
        if (result.SiteIndex is not null)
        {
            output.WriteLine($"Open {result.SiteIndex}");
        }

        if (result.Summary.Length > 0)
        {
            output.WriteLine(result.Summary);
        }
    }

    private static string Name(HouseWeekSummary summary) => Messages.Plain(summary.HouseName);

    private static string Risk(HouseWeekSummary s) => s.RiskHours is not { } hours
        ? "risk hours not known"
        : string.Create(CultureInfo.InvariantCulture, $"{hours,3:0} risk {(hours == 1 ? "hour " : "hours")} (range {s.Low:0} to {s.High:0})");

    private static string Status(string status) => status switch
    {
        "unchanged" => "unchanged",
        "withFailedCells" => "some parts failed, see the page",
        _ => "",
    };
}
