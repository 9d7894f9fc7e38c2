using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Reports.Cells;

/// <summary>How sure it is that an hour was a risk hour.</summary>
public enum RiskLevel
{
    /// <summary>The data do not tell.</summary>
    Unknown,

    /// <summary>In under 5 % of the draws of sensor error.</summary>
    None,

    /// <summary>In 5 to 50 % of the draws.</summary>
    Possible,

    /// <summary>In half or more: counted as a risk hour.</summary>
    Likely,

    /// <summary>In 95 % or more.</summary>
    NearlySure,
}

/// <summary>Words, marks and classes of the levels. The steps at 5 and 95 % are those of the printed ranges.</summary>
public static class RiskLevels
{
    /// <summary>The levels as a legend shows them.</summary>
    public static IReadOnlyList<RiskLevel> All { get; } = [RiskLevel.None, RiskLevel.Possible, RiskLevel.Likely, RiskLevel.NearlySure, RiskLevel.Unknown];

    /// <summary>The level of an hour.</summary>
    public static RiskLevel Of(ReviewHour hour)
    {
        ArgumentNullException.ThrowIfNull(hour);
        return (hour.RiskProbability, hour.Risk) switch
        {
            ({ } p, _) when double.IsFinite(p) => p < 0.05 ? RiskLevel.None : p < 0.5 ? RiskLevel.Possible : p < 0.95 ? RiskLevel.Likely : RiskLevel.NearlySure,
            (_, true) => RiskLevel.Likely,
            (_, false) => RiskLevel.None,
            _ => RiskLevel.Unknown,
        };
    }

    /// <summary>A mark that reads without colour.</summary>
    public static string Mark(RiskLevel level) => level switch
    {
        RiskLevel.None => "",
        RiskLevel.Possible => "○",
        RiskLevel.Likely => "◐",
        RiskLevel.NearlySure => "●",
        _ => "?",
    };

    /// <summary>Class in the style sheet.</summary>
    public static string Class(RiskLevel level) => level switch
    {
        RiskLevel.None => "r0",
        RiskLevel.Possible => "r1",
        RiskLevel.Likely => "r2",
        RiskLevel.NearlySure => "r3",
        _ => "ru",
    };

    /// <summary>In words.</summary>
    public static string Words(RiskLevel level) => level switch
    {
        RiskLevel.None => Phrase.Of("risk unlikely"),
        RiskLevel.Possible => Phrase.Of("risk possible"),
        RiskLevel.Likely => Phrase.Of("risk likely"),
        RiskLevel.NearlySure => Phrase.Of("risk nearly sure"),
        _ => Phrase.Of("not known"),
    };
}
