using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using NodaTime;

namespace ClimateLens.Logs.Records;

/// <summary>What makes a pot check impossible in its house: such a row is set aside, since its level would be counted for another bench or crop.</summary>
internal static class PotCheckRules
{
    /// <summary>A row's fault: which one, in which field, what was found and what was expected.</summary>
    public readonly record struct Fault(ProblemCode Code, string Field, byte[] Found, string Expected);

    /// <summary>The first fault of a pot check, or null.</summary>
    /// <param name="house">Its house; null for the whole nursery, which has no benches and crops of its own.</param>
    /// <param name="zone">Zone of the nursery.</param>
    /// <param name="utc">When. [µs since 1970-01-01T00:00Z]</param>
    /// <param name="fields">The row's fields.</param>
    public static Fault? Of(HouseSettings? house, DateTimeZone zone, long utc, ImmutableSortedDictionary<string, string> fields)
        => house is null ? null : Bench(house, fields) ?? Weight(house, fields) ?? Time(house, zone, utc);

    private static Fault? Bench(HouseSettings house, ImmutableSortedDictionary<string, string> fields)
    {
        if (house.Benches.IsEmpty || !fields.TryGetValue("bench", out string? bench) || house.Benches.Contains(bench, StringComparer.OrdinalIgnoreCase))
        {
            return null;
        }

        string all = "one of " + string.Join(", ", house.Benches.Select(SafeText.Quote));
        return new(ProblemCodes.Bench, "bench", Encoding.UTF8.GetBytes(bench), NearestName.Of(bench, house.Benches) is string near ? $"{all}; did you mean {SafeText.Quote(near)}?" : all);
    }

    private static Fault? Weight(HouseSettings house, ImmutableSortedDictionary<string, string> fields)
        => house.Pots.DryWeightG is double dry && fields.TryGetValue("weight", out string? weight) && double.Parse(weight, NumberStyles.Float, CultureInfo.InvariantCulture) < dry
            ? new(ProblemCodes.WeightBelowDry, "weight", Encoding.UTF8.GetBytes(weight + " g"), string.Create(CultureInfo.InvariantCulture, $"{dry} g (the dry pot) or more"))
            : null;

    private static Fault? Time(HouseSettings house, DateTimeZone zone, long utc)
    {
        if (house.Crops.IsEmpty || house.Crops.Any(c => c.Potted is null))
        {
            return null;
        }

        LocalDate day = Micros.ToInstant(utc).InZone(zone).Date;
        return house.Crops.Any(c => day >= c.Potted && !(day > c.Sale))
            ? null
            : new(ProblemCodes.OutsideCrop, "", Encoding.UTF8.GetBytes(Micros.ToIso(utc)), "a time of " + string.Join(", or of ", house.Crops.Select(Standing)));
    }

    private static string Standing(CropSettings crop)
        => string.Create(CultureInfo.InvariantCulture, $"{crop.Species} ({crop.Potted:uuuu-MM-dd} to {(crop.Sale is LocalDate sale ? sale.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) : "now")})");
}
