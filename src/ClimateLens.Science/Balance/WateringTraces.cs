using System.Runtime.Intrinsics;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Balance;

/// <summary>Waterings that the log does not have, seen from the humidity alone: a hint to ask about, not a record.</summary>
/// <remarks>
/// <para><b>Formula:</b> from each reading the fitted balance is run a quarter of an hour on, with the waterings that are known; what the humidity then has more is the rise. Score = (rise - median)/scatter,
/// scatter 1.4826 times the median absolute deviation [HAMPEL74] of all rises within two hours of that time of day. Of rises that follow each other within three hours the
/// greatest is told, and none within an hour and a half of a watering that is known.</para>
/// <para><b>Source:</b> a choice of this project. <b>Range:</b> a house whose balance has skill. What is not logged (a door, a spray, a hose on the floor) looks the same.</para>
/// <para><b>Error:</b> in simulated autumns the log of which was withheld it found at least three in ten of the
/// boom's rounds, with at most one false one in two weeks of drip; sensors there answer at once, and slow ones will find fewer (WateringTracesTests).</para>
/// </remarks>
public static class WateringTraces
{
    /// <summary>Least score that is told. [1]</summary>
    public const double LeastScore = 4;

    /// <summary>Least rise that is told: what a sensor off by 2 % is off at 20 °C. [g/m³]</summary>
    public const double LeastRiseGm3 = 0.35;

    private const double NormalMad = 1.4826, NearHours = 2, ApartHours = 3, KnownHours = 1.5;

    /// <summary>Finds such rises, in order of time.</summary>
    /// <param name="inputs">The readings, with the waterings that are known.</param>
    /// <param name="fit">The balance of the house.</param>
    /// <returns>Rises; none where there is no fit.</returns>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    public static IReadOnlyList<WateringTrace> Find(BalanceInputs inputs, BalanceFit fit)
    {
        inputs.Check();
        if (!fit.IsFitted)
        {
            return [];
        }

        int times = BalanceFit.JoinedSteps(inputs.StepHours);
        BalanceInputs thinned = ThinnedInputs.Of(inputs, times);
        double[] rises = Rises(thinned, fit), scores = Scores(thinned, rises);
        int apart = (int)Math.Round(ApartHours / thinned.StepHours);
        List<WateringTrace> found = [];
        for (int i = 0; i < scores.Length; i++)
        {
            if (scores[i] >= LeastScore && !IsNearKnown(thinned, i) && rises[i] >= LeastRiseGm3 && IsGreatest(scores, i, apart))
            {
                found.Add(new(i * times, rises[i], scores[i]));
            }
        }

        return found;
    }

    /// <summary>What the humidity has at the end of each step more than the balance expects from the reading before.</summary>
    private static double[] Rises(BalanceInputs inputs, BalanceFit fit)
    {
        var drivers = BalanceDrivers.ForRun(inputs, fit.Terms);
        double[] rises = new double[inputs.Steps];
        var parameters = new Vector256<double>[TermCatalogue.All.Count];
        BalanceRun.SideBySide([fit.Parameters()], parameters);
        ReadOnlySpan<double> measured = inputs.HumidityGm3.Span;
        VapourState state = default;
        bool known = false;
        for (int i = 0; i < rises.Length; i++)
        {
            bool runs = drivers.IsKnown(i) && double.IsFinite(measured[i]);
            rises[i] = double.NaN;
            if (runs && known)
            {
                state.Step(parameters, drivers.Steps[i], inputs.HeightM, inputs.StepHours);
                rises[i] = measured[i] - state.HumidityGm3[0];
            }

            state = runs && known ? state.At(measured[i]) : new VapourState(Vector256.Create(measured[i])); // wet surfaces are carried on
            known = runs;
        }

        return rises;
    }

    private static double[] Scores(BalanceInputs inputs, double[] rises)
    {
        int day = (int)Math.Round(24 / inputs.StepHours), near = (int)Math.Round(NearHours / inputs.StepHours);
        (double Median, double Scatter)[] usual = [.. Enumerable.Range(0, day).Select(time => Usual(rises, time, day, near))];
        return [.. rises.Select((rise, i) => (rise - usual[i % day].Median) / usual[i % day].Scatter)];
    }

    private static (double Median, double Scatter) Usual(double[] rises, int time, int day, int near)
    {
        double[] alike = [.. rises.Where((rise, i) => !double.IsNaN(rise) && TimeApart(i, time, day) <= near)];
        Array.Sort(alike);
        double median = Quantiles.Of(alike, 0.5);
        double[] away = Array.ConvertAll(alike, rise => Math.Abs(rise - median));
        Array.Sort(away);
        return (median, NormalMad * Quantiles.Of(away, 0.5));
    }

    private static bool IsNearKnown(BalanceInputs inputs, int at)
    {
        int near = (int)Math.Round(KnownHours / inputs.StepHours), from = Math.Max(0, at - near), until = Math.Min(inputs.Steps, at + near + 1);
        return AnyWater(inputs.LeafWetted.Span, from, until) || AnyWater(inputs.FloorWetted.Span, from, until);
    }

    private static bool AnyWater(ReadOnlySpan<double> column, int from, int until) =>
        !column.IsEmpty && column[from..until].ContainsAnyInRange(double.Epsilon, double.MaxValue);

    private static int TimeApart(int step, int time, int day)
    {
        int apart = Math.Abs((step % day) - time);
        return Math.Min(apart, day - apart);
    }

    private static bool IsGreatest(double[] scores, int at, int apart)
    {
        for (int i = Math.Max(0, at - apart); i <= Math.Min(scores.Length - 1, at + apart); i++)
        {
            if (scores[i] > scores[at] || (scores[i] == scores[at] && i < at))
            {
                return false;
            }
        }

        return true;
    }
}
