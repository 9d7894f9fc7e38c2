namespace ClimateLens.Science.Treatments;

/// <summary>How soon a fungus or water mould becomes resistant to a group.</summary>
public enum ResistanceRisk
{
    /// <summary>Not in the list.</summary>
    NotKnown,

    /// <summary>Low, or resistance is not known.</summary>
    Low,

    /// <summary>Medium, or low to medium.</summary>
    Medium,

    /// <summary>High, or assumed medium to high.</summary>
    High,
}
