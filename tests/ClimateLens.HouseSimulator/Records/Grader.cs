namespace ClimateLens.HouseSimulator.Records;

/// <summary>An invented person who grades pots by look and weight.</summary>
/// <param name="Initials">How they sign.</param>
/// <param name="Bias">Levels graded too wet in the mean.</param>
/// <param name="Deviation">Standard deviation of a single grade.</param>
public sealed record Grader(string Initials, double Bias, double Deviation)
{
    /// <summary>The three of Gannet Row.</summary>
    public static IReadOnlyList<Grader> All { get; } = [new("KL", 0.0, 0.2), new("MB", 0.15, 0.25), new("TS", 0.45, 0.45)];

    /// <summary>Their grade, to half levels from 1 to 5.</summary>
    public double Grade(double level, double standardNormal)
        => Math.Clamp(Math.Round((level + Bias + (Deviation * standardNormal)) * 2, MidpointRounding.AwayFromZero) / 2, 1, 5);
}
