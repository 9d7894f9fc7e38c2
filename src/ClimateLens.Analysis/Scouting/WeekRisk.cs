using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery;

namespace ClimateLens.Analysis.Scouting;

/// <summary>Risk hours of an earlier week by the same stages, code and draws as its own review, but fewer of them, since only the number is wanted and not its range.</summary>
/// <remarks><b>Error:</b> that of the week's own page; the number parts from the page's by some hours (test).</remarks>
internal static class WeekRisk
{
    /// <summary>
    /// None at fault, and the first dozen draws with their opposites, so that so few lean to no side; an odd number, so that an hour is one in more or in less than
    /// half of them. Choice of this project.
    /// </summary>
    public const int Draws = 25;

    private static readonly WorkedOutOnce<HouseInput, int?> Known = new(WorkOut);

    /// <summary>Risk hours; null where less than half of the hours have air temperature and humidity, or more than half of the readings are doubtful. [h]</summary>
    public static int? Of(HouseInput week) => Known.Of(week);

    private static int? WorkOut(HouseInput week)
    {
        HousePeriod period = LeafState.Add(CanopyCover.Add(AirStates.Add(Quality.Check(Alignment.Align(week)))));
        HourTable hours = HourTable.Of(period);
        int known = hours.HasData.AsSpan(hours.FirstOfPeriod).Count(true);
        if (!period.HasAir || 2 * known < hours.Count - hours.FirstOfPeriod || Checks.Trust.MostlyDoubtful(period, period.FirstStep, period.Frame.Axis.Count) is not null)
        {
            return null;
        }

        BiasDraws draws = BiasDraws.For(period);
        int[] drawsWithRisk = new int[hours.Count];
        double[] none = new double[hours.Count];
        new FoliageDraws(() => new FoliageHours(period, hours, firstHour: FoliageHours.FirstHourOf(hours))).Run(Draws, (draw, foliage) =>
        {
            FoliageErrors errors = draw == 0 ? new FoliageErrors() : draw % 2 == 1 ? draws.At(draw / 2) : draws.At((draw / 2) - 1).Opposite();
            foliage.Take(errors, 0, none);
        }, (_, foliage) =>
        {
            for (int h = 0; h < drawsWithRisk.Length; h++)
            {
                drawsWithRisk[h] += foliage.Risk[h] ? 1 : 0;
            }
        });
        return drawsWithRisk.Skip(hours.FirstOfPeriod).Count(n => 2 * n > Draws);
    }
}
