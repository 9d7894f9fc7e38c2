using ClimateLens.Analysis.Stages;
using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>Drying power of the house's air over a stretch of time: vapour-pressure deficit summed over time. [kPa h]</summary>
internal sealed class DryingPower
{
    /// <summary>Share of a stretch whose air must be known. Choice of this project.</summary>
    private const double Known = 0.8;

    private const int FewestDays = 3, DaysLookedAt = 7;
    private static readonly Duration ADay = Duration.FromHours(24);
    private readonly Instant _split;
    private readonly Part? _before;
    private readonly Part? _own;

    /// <summary>The air of a period and of the weeks before it, each with its air states.</summary>
    public DryingPower(HousePeriod house, HousePeriod? past)
    {
        _split = past?.Frame.Axis.End ?? house.Frame.Axis.Start;
        _before = past is null ? null : Part.Of(past);
        _own = Part.Of(house);
    }

    /// <summary>Drying power between two moments, gaps filled at the mean of what is known; NaN where too little is. [kPa h]</summary>
    public double Between(Instant from, Instant to)
    {
        (double sum, double known) = (0, 0);
        foreach ((Part? part, Instant start, Instant end) in ((Part?, Instant, Instant)[])[(_before, from, Instant.Min(to, _split)), (_own, Instant.Max(from, _split), to)])
        {
            if (part is not null && end > start)
            {
                (double power, double hours) = part.Between(start, end);
                (sum, known) = (sum + power, known + hours);
            }
        }

        double length = (to - from).TotalHours;
        return length > 0 && known >= Known * length ? sum * length / known : double.NaN;
    }

    /// <summary>What is to be expected of a stretch of time from the same hours of the seven days before a moment; NaN where fewer than three are known. [kPa h]</summary>
    /// <returns>Mean, and standard deviation of one day.</returns>
    public (double Mean, double Deviation) Expected(Instant from, Instant to, Instant asOf)
    {
        double[] days =
        [
            .. Enumerable.Range(1, DaysLookedAt + 1)
                .Where(back => to - (ADay * back) <= asOf)
                .Take(DaysLookedAt)
                .Select(back => Between(from - (ADay * back), to - (ADay * back)))
                .Where(double.IsFinite),
        ];
        if (days.Length < FewestDays)
        {
            return (double.NaN, double.NaN);
        }

        double mean = days.Average();
        return (mean, Math.Sqrt(days.Sum(d => (d - mean) * (d - mean)) / (days.Length - 1)));
    }

    /// <summary>Running sums of one frame.</summary>
    private sealed class Part(Instant start, double stepHours, double[] power, double[] known)
    {
        public static Part? Of(HousePeriod period)
        {
            if (!period.Frame.Has(Derived.DeficitKPa))
            {
                return null;
            }

            double step = period.Frame.Axis.Step.TotalHours;
            var deficit = period.Frame.Values(Derived.DeficitKPa);
            double[] power = new double[deficit.Length + 1], known = new double[deficit.Length + 1];
            for (int i = 0; i < deficit.Length; i++)
            {
                bool has = !double.IsNaN(deficit[i]);
                power[i + 1] = power[i] + (has ? deficit[i] * step : 0);
                known[i + 1] = known[i] + (has ? step : 0);
            }

            return new(period.Frame.Axis.Start, step, power, known);
        }

        public (double Power, double Hours) Between(Instant from, Instant to) => (At(power, to) - At(power, from), At(known, to) - At(known, from));

        private double At(double[] sums, Instant at)
        {
            double place = Math.Clamp((at - start).TotalHours / stepHours, 0, sums.Length - 1);
            int below = Math.Min((int)place, sums.Length - 2);
            return below < 0 ? 0 : sums[below] + ((place - below) * (sums[below + 1] - sums[below]));
        }
    }
}
