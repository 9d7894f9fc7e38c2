namespace ClimateLens.Science.Canopy;

/// <summary>How plants stand.</summary>
public enum SpacingPattern
{
    /// <summary>Rows and columns at the same distance.</summary>
    Square,

    /// <summary>Each plant the same distance from its six neighbours.</summary>
    Triangular,

    /// <summary>Rows and columns at two distances.</summary>
    Rectangular,

    /// <summary>No order: broadcast or moved about.</summary>
    Random,
}
