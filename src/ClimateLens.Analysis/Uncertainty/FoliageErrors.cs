namespace ClimateLens.Analysis.Uncertainty;

/// <summary>What is wrong with the sensors and assumptions in one draw; all zero but the factors for "as read".</summary>
internal readonly record struct FoliageErrors()
{
    /// <summary>Added to the main air temperature. [K]</summary>
    public double TemperatureK { get; init; }

    /// <summary>Added to the main relative humidity. [%]</summary>
    public double HumidityPct { get; init; }

    /// <summary>Added to a canopy sensor's temperature. [K]</summary>
    public double CanopySensorK { get; init; }

    /// <summary>Added to a canopy sensor's humidity. [%]</summary>
    public double CanopySensorPct { get; init; }

    /// <summary>Added to a measured leaf temperature. [K]</summary>
    public double LeafSensorK { get; init; }

    /// <summary>Added to an assumed leaf temperature at night. [K]</summary>
    public double LeafOffsetK { get; init; }

    /// <summary>
    /// How much warmer a dry leaf of the energy balance would be in the dark; it comes as heat radiated from above, so that a wet leaf moves less. [K]
    /// </summary>
    public double LeafBalanceK { get; init; }

    /// <summary>Error of the assumed difference of temperature between canopy and main sensor, in its standard errors. [1]</summary>
    public double CanopyTemperatureScore { get; init; }

    /// <summary>Likewise of humidity. [1]</summary>
    public double CanopyHumidityScore { get; init; }

    /// <summary>Quantile of ground cover; 0.5 as forecast. [1]</summary>
    public double CoverQuantile { get; init; } = 0.5;

    /// <summary>Factor on the air speed at the leaf. [1]</summary>
    public double AirSpeedFactor { get; init; } = 1;

    /// <summary>Factor on the sun that leaves take up. [1]</summary>
    public double LightFactor { get; init; } = 1;

    /// <summary>Factor on the water that leaves hold. [1]</summary>
    public double FilmFactor { get; init; } = 1;

    /// <summary>The opposite errors: a draw and its opposite together lean to neither side.</summary>
    public FoliageErrors Opposite() => new()
    {
        TemperatureK = -TemperatureK,
        HumidityPct = -HumidityPct,
        CanopySensorK = -CanopySensorK,
        CanopySensorPct = -CanopySensorPct,
        LeafSensorK = -LeafSensorK,
        LeafOffsetK = -LeafOffsetK,
        LeafBalanceK = -LeafBalanceK,
        CanopyTemperatureScore = -CanopyTemperatureScore,
        CanopyHumidityScore = -CanopyHumidityScore,
        CoverQuantile = 1 - CoverQuantile,
        AirSpeedFactor = 1 / AirSpeedFactor,
        LightFactor = 2 - LightFactor,
        FilmFactor = 1 / FilmFactor,
    };
}
