using System.Collections.Immutable;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Foliage;

/// <summary>The model of leaf temperature held to the leaf sensor, where there is one: what the review would have said without it.</summary>
internal static class LeafScores
{
    /// <summary>Scores over run-in and period by night and by day; empty without a leaf sensor.</summary>
    public static ImmutableArray<LeafScore> Of(HousePeriod period)
    {
        FoliageWeather weather = period.Foliage!;
        if (!weather.LeafFrom.Contains(LeafFrom.Sensor))
        {
            return [];
        }

        HousePeriod blind = period with
        {
            Foliage = weather with
            {
                MeasuredLeafC = [.. Enumerable.Repeat(double.NaN, weather.Count)],
                LeafFrom = [.. weather.LeafFrom.Select((from, i) => from == LeafFrom.Sensor ? weather.LeafWithoutSensor[i] : from)],
            },
        };
        FoliageHours model = new(blind, HourTable.Of(blind));
        model.WithoutError();
        return [.. Score("night", night: 1), .. Score("day", night: 0)];

        IEnumerable<LeafScore> Score(string part, double night)
        {
            double[] measured = [.. weather.MeasuredLeafC.Select((v, i) => weather.Night[i] == night ? v : double.NaN)];
            ModelScore score = ModelScore.Of(measured, model.LeafStepC);
            double hours = (double)score.Count / period.StepsPerHour;
            if (score.Count > 0)
            {
                yield return new LeafScore(part, Math.Round(hours, 1), Math.Round(-score.Bias.Value, 3), Known(-score.Bias.High), Known(-score.Bias.Low), Math.Round(score.Rmse, 3));
            }
        }
    }

    private static double? Known(double value) => double.IsNaN(value) ? null : Math.Round(value, 3);
}
