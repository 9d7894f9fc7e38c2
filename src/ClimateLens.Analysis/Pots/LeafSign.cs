namespace ClimateLens.Analysis.Pots;

/// <summary>How the leaves of a pot stood, the worse the greater.</summary>
public enum LeafSign
{
    /// <summary>Not noted, or in words that are not known.</summary>
    NotKnown,

    /// <summary>Full of water.</summary>
    Turgid,

    /// <summary>Beginning to hang.</summary>
    Flagging,

    /// <summary>Hanging.</summary>
    SevereFlagging,

    /// <summary>Limp.</summary>
    Wilted,
}
