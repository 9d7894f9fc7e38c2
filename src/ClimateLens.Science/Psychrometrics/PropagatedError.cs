namespace ClimateLens.Science.Psychrometrics;

/// <summary>First-order error of a derived quantity, by the sensor it comes from; in the unit of the quantity.</summary>
/// <param name="FromTemperature">Change of the result for a temperature sensor that reads high by its error.</param>
/// <param name="FromHumidity">Change of the result for a humidity sensor that reads high by its error.</param>
/// <remarks>The signs matter where the direction of a bias is known; <see cref="Combined"/> where it is not.</remarks>
public readonly record struct PropagatedError(double FromTemperature, double FromHumidity)
{
    /// <summary>Root of the sum of squares: both errors, independent of each other. 0 or more.</summary>
    public double Combined => Math.Sqrt((FromTemperature * FromTemperature) + (FromHumidity * FromHumidity));
}
