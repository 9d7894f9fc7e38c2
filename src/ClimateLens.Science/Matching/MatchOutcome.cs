namespace ClimateLens.Science.Matching;

/// <summary>What became of an event.</summary>
public enum MatchOutcome
{
    /// <summary>It was compared.</summary>
    Matched,

    /// <summary>It lies too near an end of the data, or too little was measured around it.</summary>
    NotMeasured,

    /// <summary>Another treatment shortly before is still at work.</summary>
    FollowsAnother,

    /// <summary>No untreated stretch is alike.</summary>
    NothingAlike,
}
