using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Columns that say the same twice, or that contradict what one channel can be.</summary>
internal static class Twins
{
    private const double Alike = 0.03;
    private const double Mostly = 0.9;
    private const int FewestDifferent = 10;

    /// <summary>
    /// The findings in which a column that holds the values of an earlier one, the same or in another unit, is left out, and of several columns of
    /// rain each is asked about: one may be of each interval and another a sum since morning.
    /// </summary>
    public static IReadOnlyList<ColumnFinding> Without(IReadOnlyList<ColumnFinding> findings)
    {
        ColumnFinding[] kept = [.. findings];
        for (int i = 0; i < kept.Length; i++)
        {
            int twin = Array.FindIndex(kept, 0, i, earlier => AreTwins(earlier, kept[i]));
            if (twin >= 0)
            {
                bool sameUnit = kept[twin].Unit?.Codes[0] == kept[i].Unit?.Codes[0];
                kept[i] = kept[i] with { Channel = ChannelGuess.Unused($"the same as column {kept[twin].Facts.Column + 1}{(sameUnit ? ", value for value" : " in another unit")}") };
            }
        }

        bool severalRains = kept.Count(f => f.Channel.Channels is ["rain"] && f.Where.IsEmpty && f.House is null) > 1;
        return severalRains
            ? [.. kept.Select(f => f.Channel.Channels is ["rain"] ? f with { Channel = ChannelGuess.Either("several columns of rain: is this the rain of each interval, or a sum?", "rain") } : f)]
            : kept;
    }

    private static bool AreTwins(ColumnFinding one, ColumnFinding other)
    {
        bool same = !one.Channel.IsUnused && !other.Channel.IsUnused && one.Channel.Channels[0] == other.Channel.Channels[0] && one.Where.SequenceEqual(other.Where) && one.House == other.House;
        if (!same || one.Unit is null || other.Unit is null || one.Facts.Values.Length != other.Facts.Values.Length)
        {
            return false;
        }

        if (one.Unit.Codes[0] == other.Unit.Codes[0])
        {
            // Two sensors of the air never agree in every last digit; vents and pipes that one command moves do.
            return one.Facts.Header.Bare == other.Facts.Header.Bare && other.Channel.Sureness != Sureness.Unsure && one.Channel.Channels[0] is "airTemperature" or "relativeHumidity" && one.Facts.Values.AsSpan().SequenceEqual(other.Facts.Values) && one.Facts.Values.Distinct().Count() >= FewestDifferent;
        }

        Quantity quantity = ChannelCatalogue.Get(one.Channel.Channels[0]).Quantity;
        if (!UnitCatalogue.TryGet(quantity, one.Unit.Codes[0], out Unit? a) || !UnitCatalogue.TryGet(quantity, other.Unit.Codes[0], out Unit? b))
        {
            return false;
        }

        double scale = Math.Max(1e-9, Math.Abs(a.ToSi(one.Facts.At(0.9)) - a.ToSi(one.Facts.At(0.1))));
        (double First, double Second)[] pairs = [.. one.Facts.Values.Zip(other.Facts.Values).Where(p => !double.IsNaN(p.First) && !double.IsNaN(p.Second))];
        return pairs.Length > 10 && pairs.Count(p => Math.Abs(a.ToSi(p.First) - b.ToSi(p.Second)) <= Alike * Math.Max(scale, Math.Abs(a.ToSi(p.First)))) > Mostly * pairs.Length;
    }
}
