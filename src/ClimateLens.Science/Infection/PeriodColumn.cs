namespace ClimateLens.Science.Infection;

/// <summary>Lays what is known of wet periods over the steps that belong to them.</summary>
public static class PeriodColumn
{
    /// <summary>Writes each period's value into its steps, dry breaks included, and zero elsewhere.</summary>
    /// <param name="periods">Periods in order.</param>
    /// <param name="values">A value for each period.</param>
    /// <param name="column">Receives the values.</param>
    /// <exception cref="ArgumentException">Periods and values differ in number.</exception>
    public static void Spread(ReadOnlySpan<WetPeriod> periods, ReadOnlySpan<double> values, Span<double> column)
    {
        Guard.SameLength(periods.Length, values.Length);
        column.Clear();
        for (int i = 0; i < periods.Length; i++)
        {
            column[periods[i].Start..periods[i].End].Fill(values[i]);
        }
    }
}
