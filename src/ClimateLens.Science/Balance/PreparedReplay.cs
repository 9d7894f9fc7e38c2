using System.Runtime.Intrinsics;

namespace ClimateLens.Science.Balance;

/// <summary>Drivers of a balance made ready once for many runs with other parameters. Holds the memory for what four runs give; a run allocates nothing.</summary>
public sealed class PreparedReplay
{
    /// <summary>How many sets of parameters run at once, for little more than one costs.</summary>
    public const int AtOnce = Lanes.Count;

    private readonly BalanceDrivers _drivers;
    private readonly Vector256<double>[] _run;
    private readonly double[][] _results = new double[AtOnce][];

    /// <summary>Prepares the drivers.</summary>
    /// <param name="inputs">The drivers, and the humidity to start from.</param>
    /// <param name="terms">Those of the fit.</param>
    /// <param name="times">How many steps are joined to one, as in <see cref="ThinnedInputs"/>; 1 or more.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is impossible.</exception>
    public PreparedReplay(BalanceInputs inputs, BalanceTerms terms, int times)
    {
        inputs.Check();
        Guard.Within(times, 1, 1000, "(steps)");
        _drivers = BalanceDrivers.ForRun(ThinnedInputs.Of(inputs, times), terms);
        _run = new Vector256<double>[_drivers.Inputs.Steps];
        for (int set = 0; set < AtOnce; set++)
        {
            _results[set] = new double[_run.Length];
        }
    }

    /// <summary>Number of joined steps.</summary>
    public int Steps => _run.Length;

    /// <summary>Humidity at the end of each joined step, as <see cref="BalanceReplay.Run"/> gives it; good until the next run. [g/m³]</summary>
    /// <param name="parameters">All parameters.</param>
    /// <exception cref="ArgumentException">The number of parameters is not theirs.</exception>
    public ReadOnlySpan<double> Run(double[] parameters)
    {
        RunAll([parameters]);
        return Humidity(0);
    }

    /// <summary>Runs with several sets of parameters, each to the same bits as alone.</summary>
    /// <param name="sets">All parameters of one to <see cref="AtOnce"/> sets.</param>
    /// <exception cref="ArgumentException">The number of parameters is not theirs.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No sets, or too many.</exception>
    public void RunAll(ReadOnlySpan<double[]> sets)
    {
        Guard.Within(sets.Length, 1, AtOnce, "(sets)");
        foreach (double[] set in sets)
        {
            Guard.SameLength(TermCatalogue.All.Count, set.Length);
        }

        BalanceRun.Run(sets, _drivers, false, _run);
        for (int set = 0; set < sets.Length; set++)
        {
            BalanceRun.Of(_run, set, _results[set]);
        }
    }

    /// <summary>What the last run gave for one set; good until the next run. [g/m³]</summary>
    /// <param name="set">Which set, 0 for the first.</param>
    public ReadOnlySpan<double> Humidity(int set) => _results[set];
}
