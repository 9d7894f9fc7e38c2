namespace ClimateLens.Science.Statistics;

/// <summary>How much better than a plain reference a forecast was.</summary>
/// <param name="Count">Steps in which forecast, reference and truth are known.</param>
/// <param name="MeanSquare">Mean square of forecast minus truth, in the unit of the columns squared; NaN without steps.</param>
/// <param name="ReferenceMeanSquare">Mean square of reference minus truth; NaN without steps.</param>
/// <remarks>
/// <para><b>Formula:</b> <c>skill = 1 - MSE/MSE_reference</c>: 1 is perfect, 0 no better than the reference, below 0 worse. <b>Source:</b> [MURPHY88], from memory.</para>
/// <para><b>Error:</b> that of the sample: steps hang together, so a week is worth few unrelated ones. Both are scored on the very same steps.</para>
/// </remarks>
public readonly record struct ForecastSkill(int Count, double MeanSquare, double ReferenceMeanSquare)
{
    /// <summary>Skill over the reference, up to 1; NaN without steps or where the reference is perfect. [1]</summary>
    public double Skill => ReferenceMeanSquare > 0 ? 1 - (MeanSquare / ReferenceMeanSquare) : double.NaN;

    /// <summary>Root of the mean square, in the unit of the columns.</summary>
    public double Rmse => Math.Sqrt(MeanSquare);

    /// <summary>Scores a forecast.</summary>
    /// <param name="truth">What came; NaN for not known.</param>
    /// <param name="forecast">What was forecast.</param>
    /// <param name="reference">What the reference said.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    public static ForecastSkill Of(ReadOnlySpan<double> truth, ReadOnlySpan<double> forecast, ReadOnlySpan<double> reference)
    {
        Guard.SameLength(truth.Length, forecast.Length);
        Guard.SameLength(truth.Length, reference.Length);
        int count = 0;
        double squares = 0, referenceSquares = 0;
        for (int i = 0; i < truth.Length; i++)
        {
            double miss = forecast[i] - truth[i], referenceMiss = reference[i] - truth[i];
            if (!double.IsNaN(miss + referenceMiss))
            {
                count++;
                squares += miss * miss;
                referenceSquares += referenceMiss * referenceMiss;
            }
        }

        return new(count, squares / count, referenceSquares / count);
    }
}
