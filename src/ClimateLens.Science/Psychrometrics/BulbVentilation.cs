namespace ClimateLens.Science.Psychrometrics;

/// <summary>How the air moves past the bulbs of a psychrometer; it decides the psychrometer coefficient.</summary>
public enum BulbVentilation
{
    /// <summary>Drawn past by a fan, about 5 m/s: coefficient 0.000662 /K.</summary>
    Aspirated,

    /// <summary>Moved by wind, about 1 m/s: coefficient 0.000800 /K.</summary>
    Natural,

    /// <summary>Still air of a room: coefficient 0.001200 /K.</summary>
    Unventilated,
}
