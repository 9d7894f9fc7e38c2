namespace ClimateLens.Science.Balance;

/// <summary>Waterings as the share of the house that they wet in each step.</summary>
public static class WettedShare
{
    /// <summary>Adds a watering to a column.</summary>
    /// <param name="column">One value a step; what does not fit is left out. [1]</param>
    /// <param name="start">Start in steps from that of the column; may lie within a step. [steps]</param>
    /// <param name="end">End, not before the start; a watering without length counts at its start. [steps]</param>
    /// <param name="share">Share of the house that it wets, 0 to 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">Share or end is impossible.</exception>
    public static void Add(Span<double> column, double start, double end, double share)
    {
        Guard.Within(Guard.Finite(share), 0, 1, "(share)");
        Guard.Within(Guard.Finite(end), Guard.Finite(start), double.MaxValue, "(not before the start)");
        double length = end - start;
        int first = (int)Math.Floor(Math.Clamp(start, -1, column.Length)), last = (int)Math.Floor(Math.Clamp(end, -1, column.Length));
        for (int step = Math.Max(0, first); step <= Math.Min(last, column.Length - 1); step++)
        {
            double within = Math.Min(end, step + 1) - Math.Max(start, step);
            column[step] += length > 0 ? share * within / length : share;
        }
    }
}
