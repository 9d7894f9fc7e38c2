namespace ClimateLens.Science.Infection;

/// <summary>How far the weather of a wet period favoured grey mould; never a forecast of disease.</summary>
public enum Grade
{
    /// <summary>An input is not known.</summary>
    NotKnown,

    /// <summary>Did not favour it.</summary>
    None,

    /// <summary>Favoured it a little.</summary>
    Low,

    /// <summary>Favoured it.</summary>
    Moderate,

    /// <summary>Favoured it strongly.</summary>
    High,
}
