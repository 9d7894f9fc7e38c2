using System.Collections.Frozen;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Reports.Cells;

/// <summary>Plain words for the keys that a review uses as names; a key without an entry is spelled out.</summary>
internal static class PlainNames
{
    private static readonly FrozenDictionary<string, string> Known = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["riskHours"] = Phrase.Id("Risk hours"),
        ["pots.drying"] = Phrase.Id("How fast the benches dry"),
        ["pots.drying.forecast"] = Phrase.Id("Tomorrow's moisture"),
        ["bandLow"] = Phrase.Id("Driest level that the crop should reach"),
        ["bandHigh"] = Phrase.Id("Wettest level that it should stand at"),
        ["warmMediumC"] = Phrase.Id("A medium warmer than this favours root rot of warm houses"),
        ["coolMediumC"] = Phrase.Id("A wet medium cooler than this favours root rot of cool houses"),
        ["groupUses"] = Phrase.Id("Uses of a resistance group in a season above which it is named"),
        ["riskHoursBefore"] = Phrase.Id("Risk hours of the week before"),
        ["weekBefore"] = Phrase.Id("Hours and waterings of the week before"),
        ["clock"] = Phrase.Id("Whether the clock runs right"),
        ["clockFaultMin"] = Phrase.Id("Offset from the sun from which on a clock counts as wrong"),
        ["secondOpinion"] = Phrase.Id("A second opinion on the sensors"),
        ["hours.wet"] = Phrase.Id("Whether leaves were wet in some hours"),
        ["hours.wetFromWatering"] = Phrase.Id("Leaves wet from watering"),
        ["leafBalanceErrorK"] = Phrase.Id("Error of a leaf temperature from the energy balance, either way"),
        ["canopyTemperatureK"] = Phrase.Id("Air in a closed canopy assumed warmer (colder: minus) than the sensor by"),
        ["canopyTemperatureErrorK"] = Phrase.Id("Standard error of that assumption"),
        ["canopyHumidityPct"] = Phrase.Id("Air in a closed canopy assumed damper than the sensor by"),
        ["canopyHumidityErrorPct"] = Phrase.Id("Standard error of that assumption of damper air"),
        ["canopyTemperatureAccuracy"] = Phrase.Id("Accuracy of the temperature sensor in the canopy, either way"),
        ["canopyHumidityAccuracy"] = Phrase.Id("Accuracy of the humidity sensor in the canopy, either way"),
        ["wetPeriods"] = Phrase.Id("How long leaves stayed wet"),
        ["canopy"] = Phrase.Id("How far the crop has closed"),
        ["waterings"] = Phrase.Id("Waterings"),
        ["waterings.riskHoursCaused"] = Phrase.Id("Risk hours that a watering caused"),
        ["whatIfs"] = Phrase.Id("What another way would have changed"),
        ["causes"] = Phrase.Id("Who put the humidity there"),
        ["houseBalance"] = Phrase.Id("The vapour balance of the house"),
        ["matchedWaterings"] = Phrase.Id("What waterings did, by comparison"),
        ["whatIfs.widerSpacing"] = Phrase.Id("What wider spacing would have changed"),
        ["whatIfs.heatAndVentBeforeSunrise"] = Phrase.Id("What heat and vent before sunrise would have changed"),
        ["pots"] = Phrase.Id("Pot checks"),
        ["roots"] = Phrase.Id("State of the roots"),
        ["records"] = Phrase.Id("Records of the crop"),
        ["scouting"] = Phrase.Id("Affected plants"),
        ["outlook"] = Phrase.Id("The coming night"),
        ["marginK"] = Phrase.Id("Margin above the dew point under which an hour can be a risk hour"),
        ["temperatureLowC"] = Phrase.Id("Lowest temperature of a risk hour"),
        ["temperatureHighC"] = Phrase.Id("Highest temperature of a risk hour"),
        ["leafNightOffsetK"] = Phrase.Id("Leaves assumed colder than the air at night by"),
        ["leafNightOffsetErrorK"] = Phrase.Id("Error of that assumption, either way"),
        ["dullDayMJm2"] = Phrase.Id("Sun over the crop under which a day is dull"),
        ["hotLeafC"] = Phrase.Id("Leaves from which a watering is listed as on hot leaves"),
        ["strongSunWm2"] = Phrase.Id("Sun over the crop from which a watering is listed as in strong sun"),
        ["dryingHours"] = Phrase.Id("Time that wetted leaves need to dry"),
        ["humidNightPct"] = Phrase.Id("Relative humidity from which a night hour counts as humid"),
        ["saturatedPct"] = Phrase.Id("Relative humidity taken as saturated"),
        ["airTemperatureAccuracy"] = Phrase.Id("Accuracy of the air temperature, either way"),
        ["relativeHumidityAccuracy"] = Phrase.Id("Accuracy of the relative humidity, either way"),
        ["leafTemperatureAccuracy"] = Phrase.Id("Accuracy of the leaf temperature, either way"),
        ["floods"] = Phrase.Id("What floods leave in the air"),
        ["wateringHints"] = Phrase.Id("Waterings that the log lacks"),
        ["outlook.riskHours"] = Phrase.Id("Risk hours of the coming night"),
        ["outlook.latestFinish"] = Phrase.Id("The watering cut-off of the coming day"),
        ["potChecks"] = Phrase.Id("Pot checks"),
        ["plantWidths"] = Phrase.Id("Plant widths"),
        ["treatments"] = Phrase.Id("Treatments"),
        ["floors"] = Phrase.Id("Floors"),
        ["tanks"] = Phrase.Id("Tanks"),
        ["leafBasis"] = Phrase.Id("The state of the leaves"),
        ["pots.leafState"] = Phrase.Id("What some leaf words mean"),
        ["waterings.method"] = Phrase.Id("How some water was given"),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The words of a key.</summary>
    public static string Of(string key)
        => Known.TryGetValue(key, out string? words) ? Phrase.Of(words)
            : ChannelCatalogue.TryGet(key, out Channel? channel) ? channel.Label
            : Words.Capital(Words.Spaced(key.Replace(".", ": ", StringComparison.Ordinal)));
}
