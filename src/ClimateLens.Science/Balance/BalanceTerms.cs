namespace ClimateLens.Science.Balance;

/// <summary>What the logs of a house let a balance know.</summary>
/// <param name="Sun">Sun over the crop.</param>
/// <param name="Cover">Ground cover; without it the crop is taken as it is on the whole.</param>
/// <param name="Vent">Opening of the vents; without it all exchange is one number.</param>
/// <param name="Wind">Wind outside.</param>
/// <param name="Fan">Fans.</param>
/// <param name="CoverTemperature">Temperature of the cover; without it dew on the cover hides in the exchange.</param>
/// <param name="LeafWatering">At least one watering that wets leaves.</param>
/// <param name="FloorWatering">At least one watering that wets the floor alone.</param>
public sealed record BalanceTerms(
    bool Sun, bool Cover, bool Vent, bool Wind, bool Fan, bool CoverTemperature, bool LeafWatering, bool FloorWatering)
{
    /// <summary>Whether a parameter can be fitted.</summary>
    /// <param name="term">The parameter.</param>
    public bool Has(BalanceTerm term) => term switch
    {
        BalanceTerm.SunTranspiration => Sun,
        BalanceTerm.WindLeak => Wind,
        BalanceTerm.VentStill => Vent,
        BalanceTerm.VentWind => Vent && Wind,
        BalanceTerm.Fan => Fan,
        BalanceTerm.CoverCondensation => CoverTemperature,
        BalanceTerm.SunDrying => Sun && (LeafWatering || FloorWatering),
        BalanceTerm.LeafStore or BalanceTerm.LeafEvaporation => LeafWatering,
        BalanceTerm.FloorStore or BalanceTerm.FloorEvaporation => FloorWatering,
        _ => true,
    };
}
