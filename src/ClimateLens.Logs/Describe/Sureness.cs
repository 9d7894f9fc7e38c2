namespace ClimateLens.Logs.Describe;

/// <summary>How sure a guess about a file is.</summary>
public enum Sureness
{
    /// <summary>The file leaves no other reading.</summary>
    Sure,

    /// <summary>Another reading is possible but would be odd.</summary>
    Likely,

    /// <summary>Two readings are about as good: the user is asked, and nothing is taken.</summary>
    Unsure,
}

/// <summary>The words for how sure a guess is.</summary>
public static class SurenessWords
{
    /// <summary>For example "likely".</summary>
    public static string Of(Sureness sureness) => sureness switch
    {
        Sureness.Sure => "sure",
        Sureness.Likely => "likely",
        _ => "unsure",
    };
}
