using ClimateLens.HouseSimulator.Control;
using ClimateLens.HouseSimulator.Crop;
using ClimateLens.HouseSimulator.Watering;

namespace ClimateLens.HouseSimulator;

/// <summary>All that makes one house differ from another under the same weather.</summary>
/// <param name="Id">House id.</param>
/// <param name="Crop">What stands in it.</param>
/// <param name="Control">What the climate computer is told.</param>
/// <param name="Watering">Who waters when.</param>
/// <param name="TemperatureBiasK">What the air sensor reads too high, all the time. [K]</param>
/// <param name="HumidityBiasPct">What the humidity sensor reads too high, all the time. [%]</param>
/// <param name="Dawn">Heat and vents held before sunrise; null: none.</param>
public sealed record HouseOptions(
    string Id,
    CropPlan Crop,
    ControlSettings Control,
    IWateringPlan Watering,
    double TemperatureBiasK = 0,
    double HumidityBiasPct = 0,
    DawnControl? Dawn = null)
{
    /// <summary>What nobody logs of it.</summary>
    public HouseNature Nature { get; init; } = HouseNature.Usual;
}
