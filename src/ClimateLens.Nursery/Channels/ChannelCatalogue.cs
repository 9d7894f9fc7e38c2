using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

using ClimateLens.Nursery.Languages;

namespace ClimateLens.Nursery.Channels;

/// <summary>
/// Every channel that the tool knows. A new channel is one line here (DEVELOPERS.md, "How to add a channel").
/// Gross limits of weather channels follow the plausible values of [WMO8], from memory;
/// the suspect limits of a working house, the limits of all other tests and the default accuracies are
/// common practice without a source, and can be overruled by a stated accuracy in the nursery file.
/// </summary>
public static class ChannelCatalogue
{
    private const string Practice = "common practice, no source";
    private const string Wmo = "fail limits after WMO-No. 8 plausible values (from memory); suspect limits common practice, no source";

    /// <summary>All channels, in the order in which pages list them.</summary>
    public static IReadOnlyList<Channel> All { get; } =
    [
        new("airTemperature", Phrase.Id("Air temperature"), Quantity.Temperature, -40, 60, 2, 45, Gridding.Smooth, Wmo) { StepLimit = 5, LeastDailyRange = 0.3, ZeroLimit = 3, SpikeLimit = 3, FlatHours = 6, FlatTolerance = 0.01, DefaultAccuracy = 0.5 },
        new("relativeHumidity", Phrase.Id("Relative humidity"), Quantity.RelativeHumidity, 0, 104, 15, 100.5, Gridding.Smooth, Wmo) { StepLimit = 25, LeastDailyRange = 1, ZeroLimit = 0, SpikeLimit = 15, FlatHours = 6, FlatTolerance = 0.05, DefaultAccuracy = 3 },
        new("vapourPressureDeficit", Phrase.Id("VPD as logged"), Quantity.Pressure, -0.1, 12, 0, 6, Gridding.Smooth, Practice) { ZeroLimit = 0.3 },
        new("dewPoint", Phrase.Id("Dew point as logged"), Quantity.Temperature, -80, 40, -20, 32, Gridding.Smooth, Wmo) { StepLimit = 6, ZeroLimit = 4, DefaultAccuracy = 1 },
        new("wetBulbTemperature", Phrase.Id("Wet-bulb temperature"), Quantity.Temperature, -40, 60, 0, 40, Gridding.Smooth, Wmo) { StepLimit = 5, LeastDailyRange = 0.3, ZeroLimit = 3, SpikeLimit = 3, FlatHours = 6, FlatTolerance = 0.01, DefaultAccuracy = 0.5 },
        new("humidityDeficit", Phrase.Id("Humidity deficit as logged"), Quantity.VapourDensity, -1, 80, 0, 40, Gridding.Smooth, Practice) { ZeroLimit = 2 },
        new("leafTemperature", Phrase.Id("Leaf temperature"), Quantity.Temperature, -40, 70, 0, 50, Gridding.Smooth, Practice) { StepLimit = 8, LeastDailyRange = 0.3, ZeroLimit = 5, SpikeLimit = 5, FlatHours = 6, FlatTolerance = 0.01, DefaultAccuracy = 1 },
        new("canopyTemperature", Phrase.Id("Air temperature in the canopy"), Quantity.Temperature, -40, 60, 2, 45, Gridding.Smooth, Wmo) { StepLimit = 5, LeastDailyRange = 0.3, ZeroLimit = 3, SpikeLimit = 3, FlatHours = 6, FlatTolerance = 0.01, DefaultAccuracy = 0.5 },
        new("canopyHumidity", Phrase.Id("Relative humidity in the canopy"), Quantity.RelativeHumidity, 0, 104, 15, 100.5, Gridding.Smooth, Wmo) { StepLimit = 25, LeastDailyRange = 0.5, ZeroLimit = 0, SpikeLimit = 15, FlatHours = 12, FlatTolerance = 0.05, DefaultAccuracy = 3 },
        new("leafWetness", Phrase.Id("Leaf wetness"), Quantity.Percent, 0, 100, 0, 100, Gridding.Hold, Practice),
        new("mediumTemperature", Phrase.Id("Medium temperature"), Quantity.Temperature, -10, 60, 5, 40, Gridding.Smooth, Practice) { StepLimit = 4, ZeroLimit = 3, SpikeLimit = 3, DefaultAccuracy = 0.5 },
        new("mediumMoisture", Phrase.Id("Medium moisture"), Quantity.Percent, 0, 100, 0, 100, Gridding.Smooth, Practice),
        new("carbonDioxide", Phrase.Id("CO2"), Quantity.CarbonDioxide, 30, 6000, 150, 5000, Gridding.Smooth, Practice) { LeastDailyRange = 5, ZeroLimit = 0 },
        new("ppfd", Phrase.Id("Light at the crop"), Quantity.PhotonFlux, -5, 3500, -5, 2800, Gridding.Smooth, Practice),
        new("illuminance", Phrase.Id("Light intensity"), Quantity.Illuminance, 0, 200000, 0, 150000, Gridding.Smooth, Practice),
        new("insideRadiation", Phrase.Id("Radiation inside"), Quantity.Irradiance, -20, 1500, -20, 1300, Gridding.Smooth, Wmo),
        new("ventPosition", Phrase.Id("Vent position"), Quantity.Percent, 0, 100, 0, 100, Gridding.Hold, Practice),
        new("screenPosition", Phrase.Id("Screen closed"), Quantity.Percent, 0, 100, 0, 100, Gridding.Hold, Practice),
        new("heatingSetPoint", Phrase.Id("Heating set point"), Quantity.Temperature, -10, 60, 0, 40, Gridding.Hold, Practice),
        new("ventilationSetPoint", Phrase.Id("Ventilation set point"), Quantity.Temperature, -10, 60, 0, 45, Gridding.Hold, Practice),
        new("heatingPipeTemperature", Phrase.Id("Heating pipe temperature"), Quantity.Temperature, -10, 120, 0, 95, Gridding.Smooth, Practice) { ZeroLimit = 10 },
        new("fan", Phrase.Id("Fan running"), Quantity.OnOff, 0, 1, 0, 1, Gridding.Hold, Practice),
        new("valve", Phrase.Id("Water valve open"), Quantity.OnOff, 0, 1, 0, 1, Gridding.Hold, Practice),
        new("fogLine", Phrase.Id("Fog line on"), Quantity.OnOff, 0, 1, 0, 1, Gridding.Hold, Practice),
        new("waterVolume", Phrase.Id("Water given"), Quantity.Volume, 0, 1e6, 0, 1e5, Gridding.Amount, Practice),
        new("outsideTemperature", Phrase.Id("Outside temperature"), Quantity.Temperature, -80, 60, -45, 48, Gridding.Smooth, Wmo) { StepLimit = 6, LeastDailyRange = 0.3, ZeroLimit = 4, SpikeLimit = 4, FlatHours = 12, FlatTolerance = 0.01 },
        new("outsideHumidity", Phrase.Id("Outside relative humidity"), Quantity.RelativeHumidity, 0, 104, 3, 100.5, Gridding.Smooth, Wmo) { StepLimit = 35, LeastDailyRange = 1, ZeroLimit = 0, SpikeLimit = 25 },
        new("globalRadiation", Phrase.Id("Sun outside"), Quantity.Irradiance, -20, 1500, -20, 1300, Gridding.Smooth, Wmo),
        new("radiationSum", Phrase.Id("Radiation sum"), Quantity.RadiantExposure, 0, 4500, 0, 3500, Gridding.Amount, "fail limit: no day brings more than 4270 J/cm2 to the top of the atmosphere up to 70 degrees of latitude ([FAO56] eq. 21, from memory); suspect limit common practice, no source"),
        new("windSpeed", Phrase.Id("Wind speed"), Quantity.Speed, 0, 75, 0, 40, Gridding.Smooth, Wmo),
        new("windDirection", Phrase.Id("Wind direction"), Quantity.Angle, 0, 360, 0, 360, Gridding.Hold, Wmo),
        new("rain", Phrase.Id("Rain"), Quantity.WaterDepth, 0, 200, 0, 40, Gridding.Amount, Wmo),
        new("airPressure", Phrase.Id("Air pressure"), Quantity.Pressure, 50, 110, 85, 108, Gridding.Smooth, Wmo) { StepLimit = 0.5, LeastDailyRange = 0.02 },
    ];

    private static readonly FrozenDictionary<string, Channel> ByName = All.ToFrozenDictionary(c => c.Name, StringComparer.Ordinal);

    /// <summary>Finds a channel by its exact name.</summary>
    public static bool TryGet(string name, [NotNullWhen(true)] out Channel? channel) => ByName.TryGetValue(name, out channel);

    /// <summary>The channel of that name; throws <see cref="KeyNotFoundException"/> for an unknown one.</summary>
    public static Channel Get(string name) => ByName[name];
}
