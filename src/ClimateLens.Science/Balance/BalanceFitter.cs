using System.Runtime.Intrinsics;
using ClimateLens.Science.Statistics;
using MathNet.Numerics.LinearAlgebra;

namespace ClimateLens.Science.Balance;

/// <summary>Fits a balance to drivers that are ready.</summary>
internal sealed class BalanceFitter
{
    private const double FirstResidualGm3 = 0.5, FirstShareUnrelated = 0.05; // before the first fit has told
    private const double LeastResidualGm3 = 0.01; // a perfect fit still needs a weight: the last digit of a good sensor

    private readonly BalanceDrivers _drivers;
    private readonly int[] _used;
    private readonly TermInfo[] _infos;
    private readonly Vector256<double>[] _run;
    private readonly double[] _humidity;
    private readonly double[][] _sets = [.. Enumerable.Range(0, Lanes.Count).Select(_ => DoNothing())];

    public BalanceFitter(BalanceDrivers drivers, Predicate<int> useDay)
    {
        _drivers = drivers;
        _run = new Vector256<double>[drivers.Inputs.Steps];
        _humidity = new double[_run.Length];
        _infos = [.. TermCatalogue.All.Where(info => drivers.Terms.Has(info.Term))];
        BalanceRun.Run([Parameters(_infos.Select(i => i.Term), _infos.Select(i => i.Typical))], drivers, true, _run);
        ReadOnlySpan<double> measured = drivers.Inputs.HumidityGm3.Span;
        ReadOnlySpan<int> day = drivers.Inputs.Day.Span;
        List<int> used = [];
        for (int i = 0; i < _run.Length; i++)
        {
            if (double.IsFinite(_run[i][0] + measured[i]) && useDay(day[i]))
            {
                used.Add(i);
            }
        }

        _used = [.. used];
    }

    public static double[] Parameters(IEnumerable<BalanceTerm> terms, IEnumerable<double> values)
    {
        double[] all = DoNothing();
        foreach ((BalanceTerm term, double value) in terms.Zip(values))
        {
            all[(int)term] = value;
        }

        return all;
    }

    /// <summary>Parameters of a house without sources and exchange.</summary>
    private static double[] DoNothing()
    {
        double[] all = new double[TermCatalogue.All.Count];
        all[(int)BalanceTerm.LeafStore] = all[(int)BalanceTerm.FloorStore] = 1; // evaporates nothing: its conductance is 0
        return all;
    }

    public BalanceFit Fit()
    {
        BalanceInputs inputs = _drivers.Inputs;
        BalanceProblem problem = !AnyKnown(inputs.OutsideGm3.Span) ? BalanceProblem.NoOutsideHumidity
            : !AnyKnown(inputs.HumidityGm3.Span) || !AnyKnown(inputs.AirC.Span) ? BalanceProblem.NoHouseAir
            : _used.Length * inputs.StepHours < 24 * BalanceFit.FewestDays * 0.9 ? BalanceProblem.TooLittle
            : BalanceProblem.None;
        if (problem != BalanceProblem.None)
        {
            return BalanceFit.None(problem, _drivers.Terms);
        }

        double[] low = [.. _infos.Select(i => i.Low)], high = [.. _infos.Select(i => i.High)], at = [.. _infos.Select(i => i.Typical)];
        double spread = FirstResidualGm3, worth = FirstShareUnrelated * _used.Length;
        double[] residuals = new double[_used.Length];
        BoundedLeastSquares squares = Problem(low, high, spread, worth);
        for (int round = 0; round < 2; round++)
        {
            at = squares.Minimise(at);
            Misses([at], [residuals]);
            spread = Math.Max(LeastResidualGm3, Math.Sqrt(residuals.Average(r => r * r)));
            worth = EffectiveCount.Of(residuals);
            squares = Problem(low, high, spread, worth);
        }

        return Result(at, squares.NormalAt(at), residuals, spread, worth);
    }

    private static bool AnyKnown(ReadOnlySpan<double> column)
    {
        foreach (double value in column)
        {
            if (double.IsFinite(value))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Residuals of the readings in their error, then each parameter's distance from its typical value in its error.</summary>
    private BoundedLeastSquares Problem(double[] low, double[] high, double spread, double worth)
    {
        double weight = Math.Sqrt(worth / _used.Length) / spread;
        void Residuals(ReadOnlySpan<double[]> sets, ReadOnlySpan<double[]> results)
        {
            Misses(sets, results);
            for (int set = 0; set < sets.Length; set++)
            {
                Span<double> result = results[set];
                for (int i = 0; i < _used.Length; i++)
                {
                    result[i] *= weight;
                }

                for (int j = 0; j < _infos.Length; j++)
                {
                    result[_used.Length + j] = (sets[set][j] - _infos[j].Typical) / _infos[j].TypicalError;
                }
            }
        }

        return new(Residuals, _used.Length + low.Length, low, high);
    }

    /// <summary>What the balance has too much under each set of parameters, four sets at a time.</summary>
    private void Misses(ReadOnlySpan<double[]> sets, ReadOnlySpan<double[]> results)
    {
        for (int first = 0; first < sets.Length; first += Lanes.Count)
        {
            int count = Math.Min(Lanes.Count, sets.Length - first);
            for (int set = 0; set < count; set++)
            {
                for (int j = 0; j < _infos.Length; j++)
                {
                    _sets[set][(int)_infos[j].Term] = sets[first + set][j];
                }
            }

            BalanceRun.Run(_sets.AsSpan(0, count), _drivers, true, _run);
            for (int set = 0; set < count; set++)
            {
                Misses(set, results[first + set]);
            }
        }
    }

    private void Misses(int set, Span<double> result)
    {
        BalanceRun.Of(_run, set, _humidity);
        ReadOnlySpan<double> measured = _drivers.Inputs.HumidityGm3.Span;
        for (int i = 0; i < _used.Length; i++)
        {
            result[i] = _humidity[_used[i]] - measured[_used[i]];
        }
    }

    private BalanceFit Result(double[] at, Matrix<double> normal, double[] residuals, double spread, double worth)
    {
        bool[] low = [.. at.Select((v, j) => IsAt(v, _infos[j].Low, _infos[j]))], high = [.. at.Select((v, j) => IsAt(v, _infos[j].High, _infos[j]))];
        int[] free = [.. Enumerable.Range(0, at.Length).Where(j => !low[j] && !high[j])];
        Matrix<double> covariance = Matrix<double>.Build.Dense(at.Length, at.Length);
        if (free.Length > 0)
        {
            Matrix<double> inner = Matrix<double>.Build.Dense(free.Length, free.Length, (i, j) => normal[free[i], free[j]]).Inverse();
            for (int i = 0; i < free.Length; i++)
            {
                for (int j = 0; j < free.Length; j++)
                {
                    covariance[free[i], free[j]] = inner[i, j];
                }
            }
        }

        FittedTerm[] fitted = [.. at.Select((value, j) => new FittedTerm(
            _infos[j], value, low[j] || high[j] ? double.NaN : Math.Sqrt(covariance[j, j]), low[j], high[j]))];
        return new(
            BalanceProblem.None, _drivers.Terms, fitted, covariance, residuals.Length, worth, spread, (residuals.Length - worth) / (residuals.Length + worth));
    }

    private static bool IsAt(double value, double bound, TermInfo info) => Math.Abs(value - bound) <= 1e-6 * (info.High - info.Low);
}
