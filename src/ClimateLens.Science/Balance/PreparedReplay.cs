namespace ClimateLens.Science.Balance;

/// <summary>Drivers of a balance made ready once for many runs with other parameters. Holds the memory for one run; a run allocates nothing.</summary>
public sealed class PreparedReplay
{
    private readonly BalanceDrivers _drivers;
    private readonly double[] _result;

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
        _result = new double[_drivers.Inputs.Steps];
    }

    /// <summary>Humidity at the end of each joined step, as <see cref="BalanceReplay.Run"/> gives it; good until the next run. [g/m³]</summary>
    /// <param name="parameters">All parameters.</param>
    /// <exception cref="ArgumentException">The number of parameters is not theirs.</exception>
    public ReadOnlySpan<double> Run(ReadOnlySpan<double> parameters)
    {
        Guard.SameLength(TermCatalogue.All.Count, parameters.Length);
        BalanceRun.Run(parameters, _drivers, false, _result);
        return _result;
    }
}
