using System.Collections.Immutable;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;
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
    /// <summary>The days of run-in and period (24 h each, counted from the start of the period) on which they differ by more.</summary>
    public ImmutableArray<PartedDay> Days { get; init; } = [];

    /// <summary>Whether they differ by more than their accuracies allow, over the period as a whole.</summary>
    public bool Disagrees => Math.Abs(Mean) > Allowed;

    /// <summary>Whether they do on some day of the period.</summary>
    public bool Parts => Days.Any(d => d.InPeriod);

    /// <summary>"two humidity sensors differ by 7.0 % on average, ...".</summary>
    public string Sentence()
    {
        string kind = Main.Channel.Quantity == Quantity.RelativeHumidity ? Phrase.Of("humidity") : Phrase.Of("temperature");
        return Disagrees
            ? Phrase.Of($"two {kind} sensors differ by {Amount(Math.Abs(Mean))} on average, more than their {Accuracy} allows; the review uses {Named(Main)}")
            : Phrase.Of($"two {kind} sensors part by more than their {Accuracy} allows on {Say.Count(Days.Count(d => d.InPeriod), "day")}; the review uses {Named(Main)}");
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

    /// <summary>Says at both sensors of every pair that parts by how much, and puts the days on which it does in doubt at both.</summary>
    public static HousePeriod Add(HousePeriod period)
    {
        SensorNotes notes = period.Notes;
        Dictionary<ColumnKey, QualityFlag[]> flags = [];
        foreach (SensorPair pair in All(period).Where(p => p.Days.Length > 0 || p.Disagrees))
        {
            if (pair.Disagrees || pair.Parts)
            {
                notes = notes.With(pair.Main.Key, pair.Note(1, pair.Other)).With(pair.Other.Key, pair.Note(-1, pair.Main));
            }

            foreach (PartedDay day in pair.Days)
            {
                Doubt(period, flags, pair.Main.Key, day);
                Doubt(period, flags, pair.Other.Key, day);
            }
        }

        return flags.OrderBy(f => f.Key.ToString(), StringComparer.Ordinal)
            .Aggregate(period with { Notes = notes }, (sofar, f) => sofar.With(f.Key, QualityCheck.SensorPair, f.Value));
    }

    private string Accuracy => Stated ? Phrase.Of("stated accuracy") : Phrase.Of("accuracy (in part assumed)");

    private static void Doubt(HousePeriod period, Dictionary<ColumnKey, QualityFlag[]> flags, ColumnKey key, PartedDay day)
    {
        if (!flags.TryGetValue(key, out QualityFlag[]? doubts))
        {
            flags[key] = doubts = new QualityFlag[period.Frame.Axis.Count];
            Array.Fill(doubts, QualityFlag.Missing);
        }

        ImmutableArray<double> values = period.Frame.Values(key);
        for (int i = day.First; i < day.End; i++)
        {
            doubts[i] = double.IsNaN(values[i]) ? QualityFlag.Missing : QualityFlag.Suspect;
        }
    }

    /// <summary>What is said of one of the two: of the main one with sign 1, of the other with −1.</summary>
    internal string Note(int sign, Series than)
    {
        string allowed = Phrase.Of($"more than the {Accuracy} of the two allows ({Amount(Allowed)})");
        if (Disagrees)
        {
            return Phrase.Of($"Reads {Amount(Math.Abs(Mean))} {(sign * Mean > 0 ? Phrase.Of("more") : Phrase.Of("less"))} than {Named(than)} on average, over {Say.Count(Steps, "step")}: {allowed}.");
        }

        PartedDay most = Days.Where(d => d.InPeriod).MaxBy(d => Math.Abs(d.Mean));
        return Phrase.Of($"Reads otherwise than {Named(than)} on {Say.Count(Days.Count(d => d.InPeriod), "day")} of the period, by up to {Amount(Math.Abs(most.Mean))} {(sign * most.Mean > 0 ? Phrase.Of("more") : Phrase.Of("less"))} over a day: {allowed}.");
    }

    private string Amount(double value) => Say.Number(value, 1) + (Main.Channel.Quantity == Quantity.RelativeHumidity ? " %" : " K");

    private static string Named(Series series)
        => series.Sensor.Length > 0 ? Phrase.Of($"\"{series.Sensor}\" of export \"{series.Source}\"") : Phrase.Of($"export \"{series.Source}\"");

    private static SensorPair? Compare(HousePeriod period, Series ruling, ColumnKey mainKey, Series other)
    {
        double[] ours = Quality.Used(period.Frame, mainKey), theirs = Quality.Used(period.Frame, other.Key);
        double[] all = [.. ours.Zip(theirs, (a, b) => a - b)];
        double[] differences = [.. all.Skip(period.FirstStep).Where(double.IsFinite)];
        SensorAccuracy first = SensorAccuracy.Of(period.Input.House, ruling.Channel.Name, ruling.Sensor);
        SensorAccuracy second = SensorAccuracy.Of(period.Input.House, other.Channel.Name, other.Sensor);
        double allowed = Math.Sqrt((first.HalfWidth * first.HalfWidth) + (second.HalfWidth * second.HalfWidth));
        return differences.Length < period.StepsPerHour
            ? null
            : new SensorPair(ruling, other, differences.Length, differences.Average(), allowed, first.Stated && second.Stated) { Days = PartedDay.Of(period, all, allowed) };
    }
}
