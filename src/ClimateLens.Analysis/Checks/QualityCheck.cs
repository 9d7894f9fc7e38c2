namespace ClimateLens.Analysis.Checks;

/// <summary>The checks that a reading goes through; docs/science/quality.md says what each is.</summary>
public enum QualityCheck
{
    /// <summary>Possible and usual span of the channel.</summary>
    GrossRange,

    /// <summary>Zeros that no sensor reads.</summary>
    Zero,

    /// <summary>A lone value far from both neighbours.</summary>
    Spike,

    /// <summary>A step from one reading to the next.</summary>
    RateOfChange,

    /// <summary>No movement.</summary>
    FlatLine,

    /// <summary>Hardly any movement in a day.</summary>
    AttenuatedSignal,

    /// <summary>An amount that came in a gap before it.</summary>
    OverGap,

    /// <summary>Values as if in another unit than before.</summary>
    UnitChange,

    /// <summary>A dew point or wet bulb above the air temperature.</summary>
    WetOverDry,

    /// <summary>Another sensor of the house says otherwise.</summary>
    SensorPair,
}
