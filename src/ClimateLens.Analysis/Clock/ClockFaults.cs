using ClimateLens.Nursery;
using ClimateLens.Nursery.Clock;
using NodaTime;

namespace ClimateLens.Analysis.Clock;

/// <summary>Whether a clock's fault reaches into the period under review.</summary>
internal static class ClockFaults
{
    /// <summary>First day of the period.</summary>
    public static LocalDate FirstDay(HouseInput input) => input.Period.Start.InZone(input.Nursery.Zone).Date;

    /// <summary>Last day of the period.</summary>
    public static LocalDate LastDay(HouseInput input) => (input.Period.End - Duration.Epsilon).InZone(input.Nursery.Zone).Date;

    /// <summary>
    /// Whether the fault concerns the period. A spell holds up to the first day of the next one: days without light to judge by lie between, and a
    /// last spell goes on.
    /// </summary>
    public static bool Touches(HouseInput input, ClockCheck check)
    {
        if (check.Verdict != ClockVerdict.Wrong)
        {
            return check.IsFault;
        }

        for (int i = 0; i < check.Spells.Length; i++)
        {
            bool ends = i + 1 < check.Spells.Length && check.Spells[i + 1].From <= FirstDay(input);
            if (check.Spells[i].IsFault && !ends && check.Spells[i].From <= LastDay(input))
            {
                return true;
            }
        }

        return false;
    }
}
