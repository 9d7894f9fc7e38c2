namespace ClimateLens.Nursery.Records;

/// <summary>How water reaches the crop. In files: <c>overheadBoom</c>, <c>sprinkler</c>, <c>hose</c>, <c>drip</c>, <c>ebbAndFlow</c>, <c>floodFloor</c>, <c>fog</c>.</summary>
public enum WateringMethod
{
    /// <summary>A boom that travels over the crop; wets leaves.</summary>
    OverheadBoom,

    /// <summary>Fixed overhead sprinklers; wets leaves.</summary>
    Sprinkler,

    /// <summary>By hand; wets leaves unless noted otherwise.</summary>
    Hose,

    /// <summary>Emitters in the pot; leaves stay dry.</summary>
    Drip,

    /// <summary>Benches flooded and drained; leaves stay dry.</summary>
    EbbAndFlow,

    /// <summary>Floors flooded and drained; leaves stay dry.</summary>
    FloodFloor,

    /// <summary>Fog or mist lines; wets leaves when heavy.</summary>
    Fog,
}
