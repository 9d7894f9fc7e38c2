using ClimateLens.Nursery.Time;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.Analysis.Causes;

/// <summary>What a balance missed on days that it had not seen, drawn by whole days at the same time of day.</summary>
internal sealed class Residuals
{
    private readonly List<double[]> _days = [];
    private readonly int _perDay, _firstOfDay;

    /// <summary>Sorts what was missed by day.</summary>
    /// <param name="balance">A balance with a score.</param>
    /// <param name="axis">Steps of run-in and period.</param>
    /// <param name="firstStep">The step with which a replay begins.</param>
    public Residuals(HouseBalance balance, TimeAxis axis, int firstStep)
    {
        HeldOutScore score = balance.Score!;
        _perDay = (int)Math.Round(24 / score.StepHours);

        // The weeks before end where the period starts, at midnight; both count their steps back from it.
        Instant start = axis.StartOf(firstStep);
        int stepsToMidnight = score.ResidualGm3.Length % _perDay;
        _firstOfDay = (int)Math.Round(start.InZone(axis.Zone).TimeOfDay.TickOfDay / (double)NodaConstants.TicksPerHour / score.StepHours) % _perDay;
        ReadOnlySpan<double> all = score.ResidualGm3.Span;
        double squares = 0;
        int known = 0;
        for (int from = stepsToMidnight; from + _perDay <= all.Length; from += _perDay)
        {
            double[] day = all.Slice(from, _perDay).ToArray();
            if (day.Count(double.IsFinite) >= _perDay / 2)
            {
                _days.Add(day);
            }
        }

        foreach (double value in all)
        {
            (squares, known) = double.IsFinite(value) ? (squares + (value * value), known + 1) : (squares, known);
        }

        SpreadGm3 = Math.Max(0.01, Math.Sqrt(squares / known));
    }

    /// <summary>Their root mean square. [g/m³]</summary>
    public double SpreadGm3 { get; }

    /// <summary>A stretch of days, one after the other. [g/m³]</summary>
    /// <param name="random">Source of the draw.</param>
    /// <param name="steps">Steps of the balance.</param>
    public double[] Draw(SeededRandom random, int steps)
    {
        double[] drawn = new double[steps];
        double[] day = [];
        for (int i = 0; i < steps && _days.Count > 0; i++)
        {
            int at = (_firstOfDay + i) % _perDay;
            day = i == 0 || at == 0 ? _days[(int)(random.NextDouble() * _days.Count)] : day;
            drawn[i] = double.IsFinite(day[at]) ? day[at] : 0;
        }

        return drawn;
    }
}
