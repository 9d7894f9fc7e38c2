using NodaTime;

namespace ClimateLens.HouseSimulator.Control;

/// <summary>A minimum of heat and vent in the hours before sunrise of some days. The computer looks once an hour.</summary>
/// <param name="From">First local day.</param>
/// <param name="Until">Day after the last.</param>
/// <param name="FromHour">Full hour on the wall clock from which it holds. [h]</param>
/// <param name="UntilHour">Full hour up to which it holds. [h]</param>
/// <param name="MinimumPipeC">Pipe temperature. [°C]</param>
/// <param name="MinimumLeePct">Opening of the lee vents. [%]</param>
public sealed record DawnControl(LocalDate From, LocalDate Until, int FromHour, int UntilHour, double MinimumPipeC, double MinimumLeePct)
{
    public bool Holds(LocalDateTime at) => at.Date >= From && at.Date < Until && at.Hour >= FromHour && at.Hour < UntilHour;
}
