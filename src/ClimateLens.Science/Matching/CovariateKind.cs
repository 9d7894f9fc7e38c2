namespace ClimateLens.Science.Matching;

/// <summary>Over which time of a stretch a likeness is judged.</summary>
public enum CovariateKind
{
    /// <summary>Local hour of the day at the start, 0 to 24; 23:30 is as near to 0:30 as 10:00 is to 11:00. An hour counts as one standard deviation: a choice of this project.</summary>
    HourOfDay,

    /// <summary>Mean over the time before the start. For what a watering itself moves, as vents do.</summary>
    Before,

    /// <summary>Mean over the whole stretch. For what no watering moves, as the weather.</summary>
    Throughout,
}
