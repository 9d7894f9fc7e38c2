namespace ClimateLens.Analysis.Learned;

/// <summary>Which steps of a local day are looked at together.</summary>
internal enum DayPart
{
    /// <summary>All of them.</summary>
    Whole,

    /// <summary>Those with the sun up: a sensor in the sun errs in these.</summary>
    SunUp,

    /// <summary>Those with the sun down.</summary>
    SunDown,
}
