using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using ClimateLens.Science.Balance;
using NodaTime;

namespace ClimateLens.Analysis.Outlook;

/// <summary>A house hour by hour over the weeks before a period and the period itself, from the readings as they are; NaN where not known.</summary>
internal sealed class HourlyHouse
{
    private readonly List<double>[] _columns = [.. Enumerable.Range(0, Enum.GetValues<HourlyColumn>().Length).Select(_ => new List<double>())];

    private HourlyHouse(Instant start) => Start = start;

    /// <summary>Start of the first hour.</summary>
    public Instant Start { get; }

    /// <summary>Start of the hour after the last.</summary>
    public Instant End => Start + Duration.FromHours(_columns[0].Count);

    /// <summary>Joins the weeks before and the period, both with air and cover.</summary>
    /// <param name="past">The weeks before, a whole number of hours.</param>
    /// <param name="house">The period.</param>
    public static HourlyHouse Of(HousePeriod past, HousePeriod house)
    {
        HourlyHouse hourly = new(past.Frame.Axis.StartOf(past.FirstStep));
        hourly.Add(past);
        hourly.Add(house);
        return hourly;
    }

    /// <summary>Mean of a column over the hours that begin in [from, to); NaN with less than nine in ten of them known, or outside.</summary>
    public double Mean(HourlyColumn column, Instant from, Instant to)
    {
        (double sum, int known, int all) = Over(column, from, to);
        return all > 0 && 10 * known >= 9 * all ? sum / known : double.NaN;
    }

    /// <summary>Sum of a column over the hours that begin in [from, to), for all of them where a few are not known; NaN where the mean is.</summary>
    public double Sum(HourlyColumn column, Instant from, Instant to)
        => Mean(column, from, to) * Over(column, from, to).All;

    private (double Sum, int Known, int All) Over(HourlyColumn column, Instant from, Instant to)
    {
        List<double> values = _columns[(int)column];
        int first = (int)Math.Ceiling((from - Start).TotalHours), end = (int)Math.Ceiling((to - Start).TotalHours), known = 0;
        double sum = 0;
        for (int h = Math.Max(0, first); h < Math.Min(values.Count, end); h++)
        {
            (sum, known) = double.IsNaN(values[h]) ? (sum, known) : (sum + values[h], known + 1);
        }

        return (sum, known, Math.Max(0, end - first));
    }

    private void Add(HousePeriod part)
    {
        HousePeriod house = LeafState.Add(CoarserPeriod.Of(part));
        HourTable hours = HourTable.Of(house);
        FoliageHours foliage = new(house, hours);
        foliage.WithoutError();
        BalanceInputs drivers = BalanceColumns.Of(house, house.FirstStep);
        double[]? outside = UsedSeries.Of(house, "outsideTemperature");
        for (int h = hours.FirstOfPeriod; h < hours.Count; h++)
        {
            int at = (h - hours.FirstOfPeriod) * house.StepsPerHour;
            Put(HourlyColumn.Risk, double.IsNaN(foliage.MarginK[h]) ? double.NaN : foliage.Risk[h] ? 1 : 0);
            Put(HourlyColumn.MarginK, foliage.MarginK[h]);
            Put(HourlyColumn.HumidityGm3, hours.AbsoluteHumidityGm3[h]);
            Put(HourlyColumn.OutsideGm3, Mean(drivers.OutsideGm3.Span, at, house.StepsPerHour));
            Put(HourlyColumn.OutsideC, Mean(outside, at + house.FirstStep, house.StepsPerHour));
            Put(HourlyColumn.SunWm2, Mean(drivers.SunWm2.Span, at, house.StepsPerHour));
            Put(HourlyColumn.Cover, Mean(drivers.Cover.Span, at, house.StepsPerHour));
            Put(HourlyColumn.LeafWetted, Mean(drivers.LeafWetted.Span, at, house.StepsPerHour));
        }
    }

    private void Put(HourlyColumn column, double value) => _columns[(int)column].Add(value);

    private static double Mean(ReadOnlySpan<double> values, int from, int steps)
    {
        double sum = 0;
        int known = 0;
        for (int i = from; i < Math.Min(values.Length, from + steps); i++)
        {
            (sum, known) = double.IsNaN(values[i]) ? (sum, known) : (sum + values[i], known + 1);
        }

        return sum / known;
    }
}
