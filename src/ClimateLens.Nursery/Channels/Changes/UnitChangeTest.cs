namespace ClimateLens.Nursery.Channels.Changes;

/// <summary>Whether one change of unit explains what lies between the days before and the days after.</summary>
/// <param name="candidate">The change.</param>
/// <param name="channel">The channel.</param>
/// <param name="was">Hours of the days before. [SI unit]</param>
/// <param name="became">Hours of the days after. [SI unit]</param>
internal sealed class UnitChangeTest(UnitCandidate candidate, Channel channel, double[] was, double[] became)
{
    private const long Near = 2 * 3_600_000_000L;
    private const int FewestHours = 4;

    /// <summary>Hours below this share of the highest one carry no ratio: nights. [1]</summary>
    private const double Informative = 0.02;

    private readonly bool _light = channel.Quantity is Quantity.Illuminance or Quantity.Irradiance;
    private readonly double _floorWas = Informative * Highest(was);
    private readonly double _floorBecame = Informative * Highest(became);

    /// <summary>Whether the hours after are those before, converted, within what days differ by themselves.</summary>
    public bool Fits() => candidate.IsScale ? RatiosFit() : DifferencesFit();

    /// <summary>The place that parts readings like those before from readings like those after best.</summary>
    public int Split(ReadOnlySpan<long> utcMicros, ReadOnlySpan<double> values)
    {
        double sum = 0, least = double.PositiveInfinity;
        int at = 0;
        for (int i = 0; i <= values.Length; i++)
        {
            if (sum <= least)
            {
                (least, at) = (sum, i);
            }

            sum += i < values.Length ? Leaning(DayProfile.HourOf(utcMicros[i]), values[i]) : 0;
        }

        return at;
    }

    /// <summary>Whether the readings around the moment make the step. By night light has none, and the days alone have to do.</summary>
    public bool StepsAt(ReadOnlySpan<long> utcMicros, ReadOnlySpan<double> values, int at)
    {
        double last = Around(utcMicros, values, at - 1, -1), next = Around(utcMicros, values, at, 1);
        if (double.IsNaN(last) || double.IsNaN(next))
        {
            return _light;
        }

        double expected = candidate.Of(last);
        return candidate.IsScale
            ? Math.Abs(Math.Log(next / expected)) <= Math.Abs(Math.Log(candidate.Slope)) / 4
            : Math.Abs(next - expected) <= Math.Abs(expected - last) / 4;
    }

    private bool DifferencesFit()
    {
        Span<double> rest = stackalloc double[24], change = stackalloc double[24];
        int hours = 0;
        for (int hour = 0; hour < 24; hour++)
        {
            if (double.IsFinite(was[hour]) && double.IsFinite(became[hour]))
            {
                rest[hours] = Math.Abs(became[hour] - candidate.Of(was[hour]));
                change[hours++] = Math.Abs(became[hour] - was[hour]);
            }
        }

        // From three days to the next three, houses differ by up to 5 K by themselves and weather by up to 8 K; what is less than 15 K is
        // no change of unit in any case.
        double tolerance = (channel.Name == "outsideTemperature" ? 8 : 5) * Math.Max(1, candidate.Slope);
        double unlike = DayProfile.Median(rest[..hours]);
        return hours >= FewestHours && unlike <= tolerance && DayProfile.Median(change[..hours]) >= Math.Max(15, 2 * unlike);
    }

    private bool RatiosFit()
    {
        Span<double> room = stackalloc double[24];
        int hours = 0;
        int lit = 0;
        for (int hour = 0; hour < 24; hour++)
        {
            bool wasLit = was[hour] > _floorWas, becameLit = became[hour] > _floorBecame;
            lit += (wasLit ? 1 : 0) - (becameLit ? 1 : 0);
            if (wasLit && becameLit && was[hour] > 0 && became[hour] > 0 && double.IsFinite(was[hour]) && double.IsFinite(became[hour]))
            {
                room[hours++] = Math.Log(became[hour] / was[hour]);
            }
        }

        if (hours < FewestHours)
        {
            return false;
        }

        Span<double> logs = room[..hours];
        double off = Math.Abs(DayProfile.Median(logs) - Math.Log(candidate.Slope));
        double spread = logs[hours * 3 / 4] - logs[hours / 4]; // sorted by Median
        double tolerance = channel.Name == "airPressure" ? Math.Log(1.1) : _light ? Math.Log(2) : Math.Log(1.6);
        return off <= tolerance && spread <= 2 * tolerance && (!_light || Math.Abs(lit) <= 4);
    }

    /// <summary>The highest hour; 0 where none is known.</summary>
    private static double Highest(double[] hours)
    {
        double highest = double.NegativeInfinity;
        foreach (double hour in hours)
        {
            highest = double.IsFinite(hour) ? Math.Max(highest, hour) : highest;
        }

        return double.IsFinite(highest) ? highest : 0;
    }

    /// <summary>How much nearer a reading lies to the days before (below 0) or after (above 0), from -1 to 1.</summary>
    private double Leaning(int hour, double value)
    {
        double before = was[hour], after = became[hour];
        if (!candidate.IsScale)
        {
            double nearer = Math.Abs(value - before) - Math.Abs(value - after);
            bool far = Math.Min(Math.Abs(value - before), Math.Abs(value - after)) > Math.Abs(after - before); // a code, a fault
            return double.IsFinite(nearer) && !far ? Math.Clamp(nearer / 10, -1, 1) : 0;
        }

        if (!(value > 0 && before > _floorWas && after > _floorBecame))
        {
            return 0;
        }

        double ratio = Math.Abs(Math.Log(value / before)) - Math.Abs(Math.Log(value / after));
        return double.IsFinite(ratio) ? Math.Clamp(ratio, -1, 1) : 0;
    }

    /// <summary>The middle of up to three readings that say something, nearest to the place on one side of it; light only within two hours.</summary>
    private double Around(ReadOnlySpan<long> utcMicros, ReadOnlySpan<double> values, int first, int direction)
    {
        List<double> near = [];
        double floor = direction < 0 ? _floorWas : _floorBecame;
        long nearest = utcMicros[first];
        for (int i = first; i >= 0 && i < values.Length && near.Count < 3 && (near.Count == 0 && !_light || Math.Abs(utcMicros[i] - nearest) <= Near); i += direction)
        {
            if (double.IsFinite(values[i]) && (!candidate.IsScale || values[i] > floor))
            {
                nearest = near.Count == 0 ? utcMicros[i] : nearest;
                near.Add(values[i]);
            }
        }

        return DayProfile.Median([.. near]);
    }
}
