namespace ClimateLens.Science.Balance;

/// <summary>Runs a fitted balance over a stretch of time, as it was and with something done otherwise.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>χ_what-if = χ_measured + (χ_replayed otherwise - χ_replayed as it was)</c>: what the balance misses in both falls out.</para>
/// <para><b>Range:</b> drivers other than those that were changed are taken as they were: a vent that would have answered to the drier air does not. What is warmer or shaded otherwise must be changed
/// in the inputs. <b>Error:</b> that of the parameters, drawn with <see cref="BalanceFit.Draw"/>.</para>
/// </remarks>
public static class BalanceReplay
{
    /// <summary>The humidity that the balance gives, run free from the first reading and anew after each gap in the drivers.</summary>
    /// <param name="inputs">The drivers, and the humidity to start from.</param>
    /// <param name="terms">Those of the fit.</param>
    /// <param name="parameters">All parameters, as <see cref="BalanceFit.Parameters"/> or <see cref="BalanceFit.Draw"/> give them.</param>
    /// <returns>Humidity at the end of each step; NaN where it starts and where a driver is not known. [g/m³]</returns>
    /// <exception cref="ArgumentException">Columns differ in length, or the number of parameters is not theirs.</exception>
    public static double[] Run(BalanceInputs inputs, BalanceTerms terms, double[] parameters)
        => new PreparedReplay(inputs, terms, 1).Run(parameters).ToArray();

    /// <summary>The measured humidity, changed by what doing otherwise changes in the balance.</summary>
    /// <param name="asWas">The drivers as they were.</param>
    /// <param name="otherwise">The drivers otherwise, with the same steps.</param>
    /// <param name="terms">Those of the fit.</param>
    /// <param name="parameters">All parameters.</param>
    /// <returns>Humidity at the end of each step, 0 or more; as measured where the balance does not run; NaN where it was not measured. [g/m³]</returns>
    /// <exception cref="ArgumentException">Columns differ in length, or the number of parameters is not theirs.</exception>
    public static double[] WhatIf(BalanceInputs asWas, BalanceInputs otherwise, BalanceTerms terms, double[] parameters)
    {
        Guard.SameLength(asWas.Steps, otherwise.Steps);
        double[] before = Run(asWas, terms, parameters), after = Run(otherwise, terms, parameters);
        ReadOnlySpan<double> measured = asWas.HumidityGm3.Span;
        for (int i = 0; i < after.Length; i++)
        {
            double change = after[i] - before[i];
            after[i] = double.IsNaN(change) ? measured[i] : Math.Max(0, measured[i] + change);
        }

        return after;
    }
}
