using System.Collections.Immutable;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// The main sensor of the house against another of its kind: two honest sensors differ on average by no more than the root of the sum
/// of the squares of their accuracies.
/// </summary>
/// <remarks><para><b>Source:</b> [GUM08] 5.1.2, for sensors whose errors have nothing to do with each other. Sensors far apart
/// in a house may differ by more and both be right.</para></remarks>
/// <param name="Main">The one that the review uses.</param>
/// <param name="Other">The other.</param>
/// <param name="Steps">Steps of the period in which both were used.</param>
/// <param name="Mean">Mean of main less other. [SI unit of the channel]</param>
/// <param name="Allowed">What their accuracies allow. [SI unit of the channel]</param>
/// <param name="Stated">Whether both accuracies are stated in the nursery file.</param>
internal sealed record SensorPair(Series Main, Series Other, int Steps, double Mean, double Allowed, bool Stated)
{
    /// <summary>Whether they differ by more than their accuracies allow.</summary>
    public bool Disagrees => Math.Abs(Mean) > Allowed;

    /// <summary>"two humidity sensors differ by 7.0 % on average, ...".</summary>
    public string Sentence()
    {
        string kind = Main.Channel.Quantity == Quantity.RelativeHumidity ? "humidity" : "temperature";
        return $"two {kind} sensors differ by {Amount(Math.Abs(Mean))} on average, more than their {Accuracy} allows; the review uses {Named(Main)}";
    }

    /// <summary>All pairs of main air temperature and humidity that have an hour of steps in common.</summary>
    public static IEnumerable<SensorPair> All(HousePeriod period)
    {
        foreach (Series main in ((Series?[])[period.Temperature, period.Humidity]).OfType<Series>())
        {
            Series ruling = period.Series.First(s => JoinedSources.IsBehind(s, main));
            foreach (Series other in period.Series.Where(s => s.Channel.Name == main.Channel.Name && s.House == ruling.House && s.Key != ruling.Key))
            {
                // A further source of the main sensor fills its gaps, so it is held against the ruling source alone.
                ColumnKey key = other.Sensor == main.Sensor ? ruling.Key : main.Key;
                if (Compare(period, ruling, key, other) is SensorPair pair)
                {
                    yield return pair;
                }
            }
        }
    }

    /// <summary>Says at both sensors of every pair that disagrees by how much.</summary>
    public static HousePeriod AddNotes(HousePeriod period)
    {
        SensorNotes notes = period.Notes;
        foreach (SensorPair pair in All(period).Where(p => p.Disagrees))
        {
            notes = notes.With(pair.Main.Key, pair.Note(pair.Mean, pair.Other)).With(pair.Other.Key, pair.Note(-pair.Mean, pair.Main));
        }

        return period with { Notes = notes };
    }

    private string Accuracy => Stated ? "stated accuracy" : "accuracy (in part assumed)";

    private string Note(double mean, Series than)
        => $"Reads {Amount(Math.Abs(mean))} {(mean > 0 ? "more" : "less")} than {Named(than)} on average, over {Say.Count(Steps, "step")}: more than the {Accuracy} of the two allows ({Amount(Allowed)}).";

    private string Amount(double value) => Say.Number(value, 1) + (Main.Channel.Quantity == Quantity.RelativeHumidity ? " %" : " K");

    private static string Named(Series series)
        => series.Sensor.Length > 0 ? $"\"{series.Sensor}\" of export \"{series.Source}\"" : $"export \"{series.Source}\"";

    private static SensorPair? Compare(HousePeriod period, Series ruling, ColumnKey mainKey, Series other)
    {
        double[] ours = Quality.Used(period.Frame, mainKey), theirs = Quality.Used(period.Frame, other.Key);
        ImmutableArray<double> differences = [.. ours.Zip(theirs, (a, b) => a - b).Skip(period.FirstStep).Where(double.IsFinite)];
        SensorAccuracy first = SensorAccuracy.Of(period.Input.House, ruling.Channel.Name, ruling.Sensor);
        SensorAccuracy second = SensorAccuracy.Of(period.Input.House, other.Channel.Name, other.Sensor);
        double allowed = Math.Sqrt((first.HalfWidth * first.HalfWidth) + (second.HalfWidth * second.HalfWidth));
        return differences.Length < period.StepsPerHour
            ? null
            : new SensorPair(ruling, other, differences.Length, differences.Average(), allowed, first.Stated && second.Stated);
    }
}
