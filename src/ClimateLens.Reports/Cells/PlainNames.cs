using System.Collections.Frozen;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Reports.Cells;

/// <summary>Plain words for the keys that a review uses as names; a key without an entry is spelled out.</summary>
internal static class PlainNames
{
    private static readonly FrozenDictionary<string, string> Known = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["riskHours"] = "Risk hours",
        ["pots.drying"] = "How fast the benches dry",
        ["pots.drying.forecast"] = "Tomorrow's moisture",
        ["bandLow"] = "Driest level that the crop should reach",
        ["bandHigh"] = "Wettest level that it should stand at",
        ["warmMediumC"] = "A medium warmer than this favours root rot of warm houses",
        ["coolMediumC"] = "A wet medium cooler than this favours root rot of cool houses",
        ["groupUses"] = "Uses of a resistance group in a season above which it is named",
        ["riskHoursBefore"] = "Risk hours of the week before",
        ["clock"] = "Whether the clock runs right",
        ["clockFaultMin"] = "Offset from the sun from which on a clock counts as wrong",
        ["secondOpinion"] = "A second opinion on the sensors",
        ["hours.wet"] = "Whether leaves were wet in some hours",
        ["hours.wetFromWatering"] = "Leaves wet from watering",
        ["leafBalanceErrorK"] = "Error of a leaf temperature from the energy balance, either way",
        ["canopyTemperatureK"] = "Air in a closed canopy assumed warmer (colder: minus) than the sensor by",
        ["canopyTemperatureErrorK"] = "Standard error of that assumption",
        ["canopyHumidityPct"] = "Air in a closed canopy assumed damper than the sensor by",
        ["canopyHumidityErrorPct"] = "Standard error of that assumption of damper air",
        ["canopyTemperatureAccuracy"] = "Accuracy of the temperature sensor in the canopy, either way",
        ["canopyHumidityAccuracy"] = "Accuracy of the humidity sensor in the canopy, either way",
        ["wetPeriods"] = "How long leaves stayed wet",
        ["canopy"] = "How far the crop has closed",
        ["waterings"] = "Waterings",
        ["waterings.riskHoursCaused"] = "Risk hours that a watering caused",
        ["whatIfs"] = "What another way would have changed",
        ["causes"] = "Who put the humidity there",
        ["houseBalance"] = "The vapour balance of the house",
        ["matchedWaterings"] = "What waterings did, by comparison",
        ["whatIfs.widerSpacing"] = "What wider spacing would have changed",
        ["whatIfs.heatAndVentBeforeSunrise"] = "What heat and vent before sunrise would have changed",
        ["pots"] = "Pot checks",
        ["roots"] = "State of the roots",
        ["records"] = "Records of the crop",
        ["scouting"] = "Affected plants",
        ["outlook"] = "The coming night",
        ["marginK"] = "Margin above the dew point under which an hour can be a risk hour",
        ["temperatureLowC"] = "Lowest temperature of a risk hour",
        ["temperatureHighC"] = "Highest temperature of a risk hour",
        ["leafNightOffsetK"] = "Leaves assumed colder than the air at night by",
        ["leafNightOffsetErrorK"] = "Error of that assumption, either way",
        ["dullDayMJm2"] = "Sun over the crop under which a day is dull",
        ["hotLeafC"] = "Leaves from which a watering is listed as on hot leaves",
        ["strongSunWm2"] = "Sun over the crop from which a watering is listed as in strong sun",
        ["dryingHours"] = "Time that wetted leaves need to dry",
        ["humidNightPct"] = "Relative humidity from which a night hour counts as humid",
        ["saturatedPct"] = "Relative humidity taken as saturated",
        ["airTemperatureAccuracy"] = "Accuracy of the air temperature, either way",
        ["relativeHumidityAccuracy"] = "Accuracy of the relative humidity, either way",
        ["leafTemperatureAccuracy"] = "Accuracy of the leaf temperature, either way",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The words of a key.</summary>
    public static string Of(string key)
        => Known.TryGetValue(key, out string? words) ? words
            : ChannelCatalogue.TryGet(key, out Channel? channel) ? channel.Label
            : Words.Capital(Words.Spaced(key.Replace(".", ": ", StringComparison.Ordinal)));
}
