using ClimateLens.Nursery.Channels;

namespace ClimateLens.Analysis.Learned;

/// <summary>A channel and sensor of the house or of the nursery, whatever export its values come from.</summary>
/// <param name="Channel">Channel.</param>
/// <param name="Sensor">Sensor name; may be empty.</param>
internal sealed record LearnedSensor(Channel Channel, string Sensor)
{
    /// <summary>
    /// What a reading is predicted from: states of the air, the crop and the sky, and what the house is told to do. Left out are series
    /// that are worked out from others (a logged dew point would carry the humidity sensor's fault to its own prediction), amounts,
    /// directions, valves, and what is slow or of one spot (medium, leaf wetness).
    /// </summary>
    private static readonly HashSet<string> Inputs =
    [
        "airTemperature", "relativeHumidity", "leafTemperature", "canopyTemperature", "canopyHumidity", "carbonDioxide", "ppfd", "illuminance",
        "insideRadiation", "ventPosition", "screenPosition", "heatingSetPoint", "ventilationSetPoint", "heatingPipeTemperature", "fan",
        "outsideTemperature", "outsideHumidity", "globalRadiation", "windSpeed",
    ];

    /// <summary>What is judged: sensors of temperature and humidity. What a person or a lamp sets has no usual value.</summary>
    private static readonly HashSet<string> Judged =
        ["airTemperature", "relativeHumidity", "leafTemperature", "canopyTemperature", "canopyHumidity", "outsideTemperature", "outsideHumidity"];

    /// <summary>Whether others are predicted from it.</summary>
    public bool IsInput => Inputs.Contains(Channel.Name);

    /// <summary>Whether it stands outside.</summary>
    public bool IsOutside => Channel.Name is "outsideTemperature" or "outsideHumidity";

    /// <summary>Whether it is judged itself.</summary>
    public bool IsJudged => Judged.Contains(Channel.Name);
}
