using ClimateLens.Nursery.Channels;

namespace ClimateLens.Analysis.Gridding;

/// <summary>Why the differences of a counter do not simply follow each other.</summary>
internal enum CounterEvent
{
    /// <summary>It began anew.</summary>
    Reset,

    /// <summary>It ran over its last digit.</summary>
    Rollover,

    /// <summary>It fell by too little to have begun anew.</summary>
    Backwards,
}

/// <summary>A count turned into the amounts between its readings.</summary>
/// <param name="Values">The amount since the reading before; NaN where it is not known. [SI unit of the channel]</param>
/// <param name="OverGap">Whether readings are missing between the two.</param>
/// <param name="Events">Row of each fall, and what it is taken for.</param>
/// <remarks>
/// <para><b>Rules</b> (choice of this project, no source): a count that falls to less than half began anew, and what it shows is the
/// amount since; what came after the last reading before the reset is not known. It ran over a power of ten of its own unit, from 1000
/// on, when it stood above nine tenths of it, the amount is no larger than others of the series, and it never falls from elsewhere. A
/// smaller fall is no amount. Counts below 0 or from 1e12 on are no counts.</para>
/// </remarks>
internal sealed record CounterAmounts(double[] Values, bool[] OverGap, IReadOnlyList<(int Row, CounterEvent Event)> Events)
{
    private const double Largest = 1e12, SmallestRegister = 1000, Close = 0.9, Anew = 0.5;

    /// <summary>Takes the differences.</summary>
    /// <param name="utcMicros">Stamps, ascending. [µs]</param>
    /// <param name="counts">Counts as stored; NaN where missing. [SI unit of the channel]</param>
    /// <param name="stepMicros">Usual step between readings. [µs]</param>
    /// <param name="unit">Unit in which the counter shows its digits.</param>
    public static CounterAmounts Of(long[] utcMicros, double[] counts, long stepMicros, Unit unit)
    {
        int[] rows = [.. Enumerable.Range(0, counts.Length).Where(row => counts[row] >= 0 && counts[row] < Largest)];
        double register = Register(rows, counts, unit);
        double[] amounts = new double[counts.Length];
        Array.Fill(amounts, double.NaN);
        bool[] overGap = new bool[counts.Length];
        List<(int, CounterEvent)> events = [];
        for (int i = 1; i < rows.Length; i++)
        {
            (int before, int row) = (rows[i - 1], rows[i]);
            double rise = counts[row] - counts[before];
            if (rise < 0)
            {
                (rise, CounterEvent what) = Fall(counts[before], counts[row], register);
                events.Add((row, what));
            }

            amounts[row] = rise;
            overGap[row] = double.IsFinite(rise) && utcMicros[row] - utcMicros[before] > stepMicros * 3 / 2;
        }

        return new CounterAmounts(amounts, overGap, events);
    }

    private static (double Amount, CounterEvent Event) Fall(double from, double to, double register)
        => double.IsFinite(register) ? (to + register - from, CounterEvent.Rollover)
            : to < Anew * from ? (to, CounterEvent.Reset)
            : (double.NaN, CounterEvent.Backwards);

    /// <summary>The power of ten over which the counter ran in all its falls, or NaN. [SI unit of the channel]</summary>
    private static double Register(int[] rows, double[] counts, Unit unit)
    {
        double register = double.NaN, largestRise = 0, largestOver = 0;
        for (int i = 1; i < rows.Length; i++)
        {
            (double from, double to) = (counts[rows[i - 1]], counts[rows[i]]);
            if (to >= from)
            {
                largestRise = Math.Max(largestRise, to - from);
                continue;
            }

            double power = SmallestRegister;
            while (power <= unit.FromSi(from))
            {
                power *= 10;
            }

            double full = unit.ToSi(power);
            if (from < Close * full || (double.IsFinite(register) && register != full))
            {
                return double.NaN;
            }

            register = full;
            largestOver = Math.Max(largestOver, to + full - from);
        }

        return largestOver <= largestRise ? register : double.NaN;
    }
}
