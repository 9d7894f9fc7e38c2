namespace ClimateLens.Science.Balance;

/// <summary>Why a balance could not be fitted.</summary>
public enum BalanceProblem
{
    /// <summary>It was.</summary>
    None,

    /// <summary>No humidity of the air outside: what leaves the house cannot be told.</summary>
    NoOutsideHumidity,

    /// <summary>Humidity or temperature of the house is not known.</summary>
    NoHouseAir,

    /// <summary>Less than <see cref="BalanceFit.FewestDays"/> days in which all is known.</summary>
    TooLittle,
}
