using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Science.Pots;
using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>Whether the weather in the pots favoured root rot: a plain signal with its reasons, and no probability of disease.</summary>
/// <remarks>
/// <b>Rule:</b> <c>act</c> for two or more of long saturation, a dry-down followed by saturation, and a warm or a cool wet medium; <c>watch</c> for one; else <c>quiet</c>. Water that is used
/// again is told and does not count by itself. Limits and their sources: <see cref="RootWeather"/>; the counting is a choice of this project.
/// </remarks>
internal static class RootSignals
{
    /// <summary>Pot checks, or hours of a sensor, in which the medium must lie beyond a limit. Choice of this project.</summary>
    public const int Several = 3;

    /// <summary>The signal of the period.</summary>
    /// <param name="data">What was seen.</param>
    /// <param name="dryDowns">Dry-downs of the period.</param>
    public static RootReport Of(PotData data, ImmutableArray<DryDown> dryDowns)
    {
        RootReason[] counted = [.. new[] { LongSaturation(data), DryThenSaturated(dryDowns), Warm(data) ?? CoolWet(data) }.OfType<RootReason>()];
        string signal = counted.Length switch { 0 => "quiet", 1 => "watch", _ => "act" };
        return new(signal, [.. counted, .. new[] { Recirculated(data) }.OfType<RootReason>()]);
    }

    private static RootReason? LongSaturation(PotData data)
    {
        (string Bench, double Hours)[] soaked =
        [
            .. data.Visits.Keys.Select(bench => (bench, Hours: LongestSaturation(data, bench))).Where(b => b.Hours >= RootWeather.LongSaturationH).OrderByDescending(b => b.Hours),
        ];
        return soaked.Length == 0 ? null : new(
            "longSaturation",
            $"{Say.List([.. soaked.Select(b => Phrase.Of($"{BenchName(b.Bench)} was seen saturated at every visit over {Say.Number(b.Hours, 0)} h"))])}.",
            Phrase.Of("48 h of flooding opened a resistant rhododendron to a related water mould (Blaker and MacDonald 1981, abstract); applied to pots by this project"));
    }

    /// <summary>The longest run of visits at or near saturation that reaches into the period. [h]</summary>
    private static double LongestSaturation(PotData data, string bench)
    {
        double longest = 0;
        Instant? first = null;
        foreach (BenchVisit visit in data.Visits[bench])
        {
            first = visit.Level >= RootWeather.SaturatedLevel ? first ?? visit.At : null;
            if (first is Instant start && visit.At >= data.House.Input.Period.Start)
            {
                longest = Math.Max(longest, (visit.At - start).TotalHours);
            }
        }

        return longest;
    }

    private static RootReason? DryThenSaturated(ImmutableArray<DryDown> dryDowns)
    {
        DryDown[] soaked = [.. dryDowns.Where(d => d.SaturatedAfter == true)];
        return soaked.Length == 0 ? null : new(
            "dryThenSaturated",
            Phrase.Of($"A pot went dry and was seen saturated within a day {Say.Count(soaked.Length, "time")} ({Say.List([.. soaked.Select(d => BenchName(d.Bench)).Distinct()])})."),
            Phrase.Of("roots damaged by drying or flooding are open to infection (Pacific Northwest handbook); the day is this project's"));
    }

    private static RootReason? Warm(PotData data)
    {
        int checks = data.Own.Count(c => c.MediumC > RootWeather.WarmC), hours = Logged(data, RootWeather.WarmC);
        return checks < Several && hours < Several ? null : new(
            "warmMedium",
            Phrase.Of($"The medium was over {Say.Number(RootWeather.WarmC)} °C in {Where(checks, hours)}: weather for the water mould of warm houses."),
            Phrase.Of("trade page, and Gold and Stanghellini 1985 (abstract; spinach); the line is this project's"));
    }

    private static RootReason? CoolWet(PotData data)
    {
        int checks = data.Own.Count(c => c.MediumC < RootWeather.CoolC && c.Moisture >= MoistureScale.Container);
        return checks < Several ? null : new(
            "coolWetMedium",
            Phrase.Of($"The medium was under {Say.Number(RootWeather.CoolC)} °C and wet (level 4 or more) in {Say.Count(checks, "pot check")}: weather for the water mould of cool houses."),
            Phrase.Of("University of Massachusetts Extension 2015 (poinsettia); the line is this project's"));
    }

    private static RootReason? Recirculated(PotData data)
    {
        Interval period = data.House.Input.Period;
        int floods = data.House.Events.Count(e => period.Contains(e.Start) && e.IsFlood);
        return floods == 0 ? null : new("recirculatedWater", Phrase.Of($"Water may be used again in {Say.Count(floods, "flood")} of benches or floors: what swims reaches every pot."), Phrase.Of("common practice, no source"));
    }

    /// <summary>Hours of the period in which a sensor in the medium was above a limit. [h]</summary>
    private static int Logged(PotData data, double limitC)
    {
        var frame = data.House.Frame;
        double most = frame.Of("mediumTemperature").Select(key => Quality.Used(frame, key).Skip(data.House.FirstStep).Count(t => t > limitC)).DefaultIfEmpty(0).Max();
        return (int)(most / data.House.StepsPerHour);
    }

    private static string Where(int checks, int hours)
        => Say.List([.. new[] { checks > 0 ? Say.Count(checks, "pot check") : "", hours > 0 ? Phrase.Of($"{hours} h of the sensor") : "" }.Where(t => t.Length > 0)]);

    /// <summary>A bench inside or at the start of a sentence.</summary>
    internal static string BenchName(string bench) => bench.Length == 0 ? Phrase.Of("The house") : bench.StartsWith("bench", StringComparison.OrdinalIgnoreCase) ? bench : Phrase.Of($"Bench {bench}");
}
