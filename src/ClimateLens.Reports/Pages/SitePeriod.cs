using ClimateLens.Nursery.Time;
using ClimateLens.Reports.Cells;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Reports.Pages;

/// <summary>A period by its folder name, for ordering and in words.</summary>
/// <param name="From">First day, or null when the name is not ours.</param>
/// <param name="Name">"week 42 of 2025", or the dates.</param>
/// <param name="Dates">The dates, or empty when the name says them already.</param>
internal sealed record SitePeriod(LocalDate? From, string Name, string Dates)
{
    public static SitePeriod Of(string folderName)
    {
        if (IsoWeek.TryParse(folderName, out IsoWeek week))
        {
            return new SitePeriod(week.Monday, PeriodWords.WeekName(folderName), PeriodWords.Dates(week.Monday, week.Monday.PlusDays(6)));
        }

        string[] ends = folderName.Split('_');
        return ends.Length == 2 && LocalDatePattern.Iso.Parse(ends[0]).TryGetValue(default, out LocalDate from) && LocalDatePattern.Iso.Parse(ends[1]).TryGetValue(default, out LocalDate to)
            ? new SitePeriod(from, PeriodWords.Dates(from, to), "")
            : new SitePeriod(null, folderName, "");
    }
}
