using NodaTime;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>The watering cut-off of a day.</summary>
/// <param name="Latest">Latest finish that still lets leaves dry before sunset; null where no finish of the day does.</param>
/// <param name="ByFilm">Whether it comes from the film model with the day's own drying; else from a fixed number of hours.</param>
public readonly record struct DayCutOff(Instant? Latest, bool ByFilm);
