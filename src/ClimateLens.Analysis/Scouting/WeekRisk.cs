using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery;

namespace ClimateLens.Analysis.Scouting;

/// <summary>Risk hours of a week from its readings as they are, without the draws of their error: by the same stages and the same code as its own review.</summary>
/// <remarks><b>Error:</b> that of the week's own page; the number may part from the page's by some hours, which counts an hour when it is one in half of the draws.</remarks>
internal static class WeekRisk
{
    /// <summary>Risk hours; null where less than half of the hours have air temperature and humidity, or more than half of the readings are doubtful. [h]</summary>
    public static int? Of(HouseInput week) => Of(LeafState.Add(CanopyCover.Add(AirStates.Add(Quality.Check(Alignment.Align(week))))));

    /// <summary>The same of a house period that has come to the weather of its leaves.</summary>
    public static int? Of(HousePeriod period)
    {
        HourTable hours = HourTable.Of(period);
        int known = hours.HasData.AsSpan(hours.FirstOfPeriod).Count(true);
        if (!period.HasAir || 2 * known < hours.Count - hours.FirstOfPeriod || Checks.Trust.MostlyDoubtful(period, period.FirstStep, period.Frame.Axis.Count) is not null)
        {
            return null;
        }

        FoliageHours foliage = new(period, hours);
        foliage.WithoutError();
        return foliage.Risk.AsSpan(hours.FirstOfPeriod).Count(true);
    }
}
