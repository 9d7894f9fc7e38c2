namespace ClimateLens.Science.Canopy;

/// <summary>When a canopy closes (<see cref="GroundCover.Closed"/>), within the days looked at.</summary>
/// <param name="Day">Half of the draws have closed by then; infinite when fewer ever do. [d after the start]</param>
/// <param name="LowDay">5 % of the draws have closed by then; infinite likewise. [d]</param>
/// <param name="HighDay">95 % of the draws have closed by then; infinite likewise. [d]</param>
/// <param name="ShareReached">Share of the draws that close by the last day. [1]</param>
public readonly record struct ClosureForecast(double Day, double LowDay, double HighDay, double ShareReached)
{
    /// <summary>Whether the canopy is expected to close within the days looked at.</summary>
    public bool Reached => double.IsFinite(Day);
}
