using ClimateLens.Nursery;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Clock;

/// <summary>
/// What the sheets of whole files know of a clock beyond the two weeks of a review: since when it runs wrong, and dates or halves of the day
/// that only show over more days.
/// </summary>
internal static class FileClocks
{
    /// <summary>Two figures for one clock agree within this, or within their errors. [min]</summary>
    private const double AgreeMin = 15;

    /// <summary>The check of a file where it tells more than that of the period; with the file's name, else empty.</summary>
    public static (ClockCheck Check, string File) Prefer(HouseInput input, ReadingBatch batch, ClockCheck seen)
    {
        foreach (ImportSheet sheet in input.Files.Where(f => f.House == batch.House && f.Source == batch.Source && Overlaps(f, input)).OrderByDescending(f => f.Last))
        {
            if (sheet.Details?.Clock is ClockCheck whole && TellsMore(input, whole, seen))
            {
                return (whole, sheet.File);
            }
        }

        return (seen, "");
    }

    private static bool Overlaps(ImportSheet sheet, HouseInput input)
        => sheet.First is { } first && sheet.Last is { } last && first < input.Period.End && last >= input.Period.Start;

    private static bool TellsMore(HouseInput input, ClockCheck whole, ClockCheck seen) => whole.Verdict switch
    {
        ClockVerdict.SwappedDates or ClockVerdict.HalfDay => true,
        ClockVerdict.Wrong when seen.Verdict == ClockVerdict.NotKnown => ClockFaults.Touches(input, whole),
        ClockVerdict.Wrong when seen is { Verdict: ClockVerdict.Wrong, Spells.Length: 1 } => Agrees(input, whole, seen.Spells[0]),
        ClockVerdict.Right or ClockVerdict.DayLength => seen.Verdict == ClockVerdict.NotKnown,
        _ => false,
    };

    /// <summary>Whether a file knows the very fault that the period shows, and that it began earlier.</summary>
    private static bool Agrees(HouseInput input, ClockCheck whole, ClockSpell seen)
        => whole.Spells.Any(s => s.IsFault && s.From <= seen.From && s.To >= ClockFaults.FirstDay(input)
            && Math.Abs(s.OffsetMin - seen.OffsetMin) <= Math.Max(AgreeMin, Math.Min(s.ErrorMin, seen.ErrorMin)));
}
