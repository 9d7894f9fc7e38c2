namespace ClimateLens.Nursery.Time;

/// <summary>
/// Quality of one value, with the codes of the QARTOD manuals [QARTODFLAG].
/// </summary>
public enum QualityFlag : byte
{
    /// <summary>Passed every test that ran.</summary>
    Pass = 1,

    /// <summary>No test could run.</summary>
    NotEvaluated = 2,

    /// <summary>Used, and counted as doubtful.</summary>
    Suspect = 3,

    /// <summary>Not used.</summary>
    Fail = 4,

    /// <summary>No value.</summary>
    Missing = 9,
}
