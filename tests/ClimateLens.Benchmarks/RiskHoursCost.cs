using System.Globalization;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Benchmarks;

/// <summary>What the risk hours cost by the number of weeks: leaf, film, margin and hours 200 times over, after warm-up; docs/performance.md quotes it.</summary>
internal static class RiskHoursCost
{
    private const int RunInDays = 9, Repeats = 9, WarmUps = 20;

    /// <summary><c>risk-hours</c>: processor time of periods of 1, 4 and 16 weeks, medians.</summary>
    public static int Run()
    {
        HousePeriod first = Leaves(1);
        for (int i = 0; i < WarmUps; i++)
        {
            _ = Measure(first); // the compiler's work, in its steps, and the first touch of the memory
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Risk hours with 200 draws, {RunInDays} days of run-in, steps of 5 min; medians of {Repeats}"));
        Console.WriteLine("| weeks | processor time, ms | for seven days of period or run-in, ms |");
        Console.WriteLine("|---|---|---|");
        foreach (int weeks in (int[])[1, 4, 16])
        {
            HousePeriod period = Leaves(weeks);
            double[] times = [.. Enumerable.Range(0, Repeats).Select(_ => Measure(period)).Order()];
            double milliseconds = times[Repeats / 2];
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {weeks} | {milliseconds:0} | {milliseconds * 7 / ((7 * weeks) + RunInDays):0} |"));
        }

        return 0;
    }

    private static double Measure(HousePeriod period) => ProcessorTime.MillisecondsOf(() => _ = RiskHours.Find(period));

    /// <summary>A house with sun, cold nights and a boom every other afternoon, come to the weather of its leaves.</summary>
    private static HousePeriod Leaves(int weeks)
    {
        Instant start = Instant.FromUtc(2025, 7, 7, 0, 0);
        SyntheticHouse house = SyntheticHouse.Between(new(start, start + Duration.FromDays(7 * weeks)), "Etc/UTC", runInDays: RunInDays)
            .WithAir(SyntheticHouse.ChangingAir)
            .WithSource("weather", 10, [("outsideTemperature", t => SyntheticHouse.AutumnAir(t).TemperatureC - 10), ("globalRadiation", Sun)], house: ReadingBatch.WholeNursery)
            .WithWateringLog();
        for (int day = 0; day < 7 * weeks; day += 2)
        {
            house = house.WithWatering(start.InUtc().LocalDateTime.PlusDays(day).PlusHours(15), ("method", "overheadBoom"), ("minutes", "20"));
        }

        return LeafState.Add(CanopyCover.Add(AirStates.Add(Quality.Check(Clocks.Check(Alignment.Align(house.Input))))));
    }

    private static double Sun(Instant at) => Math.Max(0, 400 * Math.Sin((at.ToUnixTimeSeconds() % 86400 - 21600) * Math.PI / 43200));
}
