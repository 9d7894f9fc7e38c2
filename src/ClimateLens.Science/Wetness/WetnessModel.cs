namespace ClimateLens.Science.Wetness;

/// <summary>A way to tell wet leaves, as it is named on a page.</summary>
/// <param name="Key">Short name for files.</param>
/// <param name="Name">Name for readers.</param>
/// <param name="Source">Key of the source in docs/references.md.</param>
/// <param name="FitUnderGlass">Whether its opinion may count under glass.</param>
/// <param name="Caution">What a reader should know of it.</param>
public sealed record WetnessModel(string Key, string Name, string Source, bool FitUnderGlass, string Caution)
{
    /// <summary>The film of water on the leaves, <see cref="FoliageFilm"/>.</summary>
    public static WetnessModel Film { get; } = new(
        "film", "water film on the leaf", "[STANGHELLINI87]", true,
        "Needs the radiating temperature over the crop and the air speed at the leaf, which are mostly assumed.");

    /// <summary><see cref="HumidityThreshold"/>.</summary>
    public static WetnessModel Humidity { get; } = new(
        "humidity", "humidity above a limit", "[SENTELHAS08]", true,
        "Knows neither water from above nor the leaf's own temperature.");

    /// <summary><see cref="ExtendedHumidity"/>.</summary>
    public static WetnessModel ChangingHumidity { get; } = new(
        "changingHumidity", "humidity and how fast it changes", "[WICHINK04]", false,
        "Told too many wet hours in the open field, and vents make humidity jump under glass. For comparison only.");

    /// <summary><see cref="DewPointDepression"/>.</summary>
    public static WetnessModel Depression { get; } = new(
        "dewPointDepression", "air close to its dew point", "[GILLESPIE93]", true,
        "Takes every leaf to be about 2 K colder than the air, which under a screen it is not.");

    /// <summary><see cref="DecisionTree"/>.</summary>
    public static WetnessModel Tree { get; } = new(
        "decisionTree", "decision tree of the open field", "[KIM02]", false,
        "Unfit under glass: in air of up to 0.5 m/s all that is left of it is wet from about 80 % humidity. For comparison only.");

    /// <summary>All of them, the film first.</summary>
    public static IReadOnlyList<WetnessModel> All { get; } = [Film, Humidity, ChangingHumidity, Depression, Tree];
}
