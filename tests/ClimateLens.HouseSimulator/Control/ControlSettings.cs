namespace ClimateLens.HouseSimulator.Control;

/// <summary>What the grower set on the climate computer.</summary>
/// <param name="NightC">Heating set point at night. [°C]</param>
/// <param name="DayC">Heating set point by day. [°C]</param>
/// <param name="VentAboveK">Vents open this far above the heating set point. [K]</param>
/// <param name="ReliefPct">Vents also open above this humidity. [%]</param>
/// <param name="ReliefPctPerPct">Opening for each percent above it. [%/%]</param>
/// <param name="ReliefLimitPct">Largest opening for humidity alone. [%]</param>
/// <param name="MinimumPipeC">Pipe temperature held while the air is more humid than <paramref name="ReliefPct"/>; 0: none. [°C]</param>
/// <param name="NightScreenPct">How far the screen closes at night. [%]</param>
/// <param name="ScreenGapPct">How far it opens again while the air is more humid than <paramref name="ReliefPct"/>. [%]</param>
public sealed record ControlSettings(
    double NightC,
    double DayC,
    double VentAboveK,
    double ReliefPct,
    double ReliefPctPerPct,
    double ReliefLimitPct,
    double MinimumPipeC,
    double NightScreenPct,
    double ScreenGapPct);
