using System.Globalization;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>The unit of a column whose channel is known: as the header says if the values bear it out, else by the values.</summary>
/// <param name="scale">Scale of temperatures that name no unit.</param>
/// <param name="context">The file.</param>
/// <param name="deficitUnit">The unit in which a deficit agrees with temperature and humidity of the file, or null.</param>
internal sealed class UnitRules(TemperatureScale scale, FileContext context, Func<ColumnFacts, string?> deficitUnit)
{
    private const double MostlyPossible = 0.7;
    private const double HighestShare = 1.1;
    private const double MostPercent = 105;
    private const int FewTorn = 2;
    private const int ManyOf = 20;

    /// <summary>The unit; null for a channel that needs none.</summary>
    public UnitGuess? Of(Channel channel, ColumnFacts facts)
    {
        if (channel.Quantity == Quantity.OnOff)
        {
            return null;
        }

        return facts.Header.Unit is { } written && written.Measures(channel.Quantity) ? Written(channel, facts, written.Code, written.Written, written.Place)
            : facts.Header.Unit is { Quantities.Count: > 0 } other ? UnitGuess.Ask($"the file says {other.Written}, which is no unit of this channel", Kinds(channel))
            : facts.Count == 0 ? UnitGuess.Ask("no value to judge by", Kinds(channel))
            : ByValues(channel, facts);
    }

    private UnitGuess Written(Channel channel, ColumnFacts facts, string code, string written, string place)
    {
        if (facts.Count == 0)
        {
            return UnitGuess.Is(code, Sureness.Likely, $"\"{written}\" {place}; no value so far");
        }

        if (channel.Quantity == Quantity.RelativeHumidity && IsShare(facts) && code == "%")
        {
            return facts.Median > 0.1 ? UnitGuess.Is("1", Sureness.Likely, $"the header says {written}, but the values go from 0 to 1") : UnitGuess.Ask($"the header says {written}, but no value is above 1", "%", "1");
        }

        if (channel.Name == "vapourPressureDeficit" && deficitUnit(facts) is { } agreed && !SameSize(agreed, code))
        {
            return UnitGuess.Ask($"the header says {written}, but with temperature and humidity of the file it agrees in {agreed}", code, agreed);
        }

        return Possible(channel, facts, code) >= MostlyPossible
            ? UnitGuess.Is(code, Sureness.Sure, $"\"{written}\" {place}, {Span(facts)}")
            : UnitGuess.Ask($"the header says {written}, but {Span(facts)}", [code, .. Others(channel, facts, code)]);
    }

    private UnitGuess ByValues(Channel channel, ColumnFacts facts) => channel.Quantity switch
    {
        Quantity.Temperature => Temperature(channel, facts),
        Quantity.RelativeHumidity => Share(facts, atLeast: 0.1),
        Quantity.Percent => Share(facts, atLeast: 0),
        Quantity.Pressure when channel.Name == "airPressure" => PressureUnits.Of(facts) is { } code ? UnitGuess.Is(code, Sureness.Sure, $"{Span(facts)}, as the air has") : UnitGuess.Ask(Span(facts), "hPa", "kPa"),
        Quantity.Pressure => Deficit(facts),
        Quantity.VapourDensity => deficitUnit(facts) == "g/m3" ? UnitGuess.Is("g/m3", Sureness.Sure, "agrees with temperature and humidity of the file") : UnitGuess.Ask($"no unit in the file, {Span(facts)}", "g/m3"),
        Quantity.CarbonDioxide => facts.Median is > 150 and < 6000 ? UnitGuess.Is("[ppm]", Sureness.Likely, $"no unit in the file, {Span(facts)}") : UnitGuess.Ask($"no unit in the file, {Span(facts)}", "[ppm]"),
        Quantity.Irradiance => Irradiance(facts),
        Quantity.PhotonFlux => facts.Max is > 30 and < 3000 ? UnitGuess.Is("umol/m2/s", Sureness.Likely, $"no unit in the file, {Span(facts)}") : UnitGuess.Ask($"no unit in the file, {Span(facts)}", "umol/m2/s"),
        Quantity.Illuminance => facts.Max > 3500 ? UnitGuess.Is("lx", Sureness.Likely, $"no unit in the file, {Span(facts)}") : UnitGuess.Ask($"no unit in the file, {Span(facts)}", "klx", "lx"),
        Quantity.Angle => facts.Max is > 40 and <= 360 && facts.Min >= 0 ? UnitGuess.Is("deg", Sureness.Sure, Span(facts)) : UnitGuess.Ask(Span(facts), "deg"),
        Quantity.WaterDepth => Rain(facts),
        Quantity.Speed => UnitGuess.Ask($"no unit in the file, {Span(facts)}", "m/s", "km/h", "mph"),
        _ => UnitGuess.Ask($"no unit in the file, {Span(facts)}", Kinds(channel)),
    };

    private UnitGuess Temperature(Channel channel, ColumnFacts facts)
    {
        if (scale.Code is null)
        {
            return UnitGuess.Ask($"no unit in the file, {Span(facts)}: {scale.Evidence}", "Cel", "[degF]");
        }

        bool air = channel.Name is "airTemperature" or "outsideTemperature" or "dewPoint" or "canopyTemperature";
        return Possible(channel, facts, scale.Code) >= MostlyPossible
            ? UnitGuess.Is(scale.Code, air ? scale.Sureness : Sureness.Likely, air ? $"no unit in the file; {scale.Evidence}" : "no unit in the file; as the air's")
            : UnitGuess.Ask($"no unit in the file, {Span(facts)}", "Cel", "[degF]");
    }

    /// <summary>Gauges in millimetres count tenths; hundredths that never come to 2 may be inches.</summary>
    private UnitGuess Rain(ColumnFacts facts)
    {
        bool hundredths = facts.Max < 2 && facts.Values.Any(v => !double.IsNaN(v) && Math.Abs((v * 10) - Math.Round(v * 10)) > 1e-6);
        return context.IsAmerican || scale.Code == "[degF]" || hundredths
            ? UnitGuess.Ask($"no unit in the file, values up to {facts.Max.ToString("0.###", CultureInfo.InvariantCulture)}", "mm", "in")
            : UnitGuess.Is("mm", Sureness.Likely, $"no unit in the file, values up to {facts.Max.ToString("0.###", CultureInfo.InvariantCulture)}");
    }

    /// <summary>Whether values go from 0 to 1; a torn row or two may have another.</summary>
    private static bool IsShare(ColumnFacts facts)
    {
        int beyond = facts.Values.Count(v => v > HighestShare);
        return beyond == 0 || (beyond <= FewTorn && facts.Values.Count(v => v is > 0 and < 1) > ManyOf * beyond);
    }

    private static UnitGuess Share(ColumnFacts facts, double atLeast)
    {
        if (facts.Median > MostPercent)
        {
            return UnitGuess.Ask($"{Span(facts)}, more than a percentage can be; tenths of it?", "%");
        }

        if (!IsShare(facts))
        {
            return UnitGuess.Is("%", facts.Max > 5 ? Sureness.Sure : Sureness.Likely, Span(facts));
        }

        if (facts.Max == 0)
        {
            return UnitGuess.Is("%", Sureness.Likely, "always 0 so far");
        }

        return facts.Median >= atLeast && facts.Min >= 0
            ? UnitGuess.Is("1", facts.IsZeroOne || atLeast == 0 ? Sureness.Likely : Sureness.Sure, $"{Span(facts)}: a share of 1")
            : UnitGuess.Ask(Span(facts), "%", "1");
    }

    private UnitGuess Deficit(ColumnFacts facts) => deficitUnit(facts) switch
    {
        "g/m3" => UnitGuess.Ask("agrees with temperature and humidity of the file as a humidity deficit in g/m3: channel = \"humidityDeficit\"", "kPa", "hPa"),
        { } code => UnitGuess.Is(code, Sureness.Sure, $"no unit in the file; in {code} it agrees with the VPD worked out from temperature and humidity of the file"),
        null => UnitGuess.Ask($"no unit in the file, {Span(facts)}", "kPa", "hPa"),
    };

    /// <summary>J/cm² an hour reach a third of the figure in W/m²; five-minute sums a thirtieth.</summary>
    private UnitGuess Irradiance(ColumnFacts facts)
    {
        bool watts = facts.Max <= 1500 && facts.Max > (context.StepMinutes is > 0 and <= 15 ? 120 : 400);
        return watts ? UnitGuess.Is("W/m2", Sureness.Likely, $"no unit in the file, {Span(facts)}") : UnitGuess.Ask($"no unit in the file, {Span(facts)}", "W/m2");
    }

    private static string[] Kinds(Channel channel) => [.. UnitCatalogue.KindsOf(channel.Quantity).Select(u => u.Code).Take(4)];

    private static bool SameSize(string one, string other)
        => UnitCatalogue.TryGet(Quantity.Pressure, one, out Unit? a) && UnitCatalogue.TryGet(Quantity.Pressure, other, out Unit? b) && a.Factor == b.Factor;

    private static double Possible(Channel channel, ColumnFacts facts, string code)
        => !UnitCatalogue.TryGet(channel.Quantity, code, out Unit? unit) ? 0
        : facts.Values.Count(v => !double.IsNaN(v) && unit.ToSi(v) >= channel.SuspectLow - Slack(channel) && unit.ToSi(v) <= channel.SuspectHigh + Slack(channel)) / (double)Math.Max(1, facts.Count);

    /// <summary>A cold house or a hot spell is no wrong unit.</summary>
    private static double Slack(Channel channel) => 0.1 * (channel.SuspectHigh - channel.SuspectLow);

    private static IEnumerable<string> Others(Channel channel, ColumnFacts facts, string code)
        => UnitCatalogue.All.Where(u => u.Quantity == channel.Quantity && u.Code.Length > 0).DistinctBy(u => (u.Factor, u.Offset)).Select(u => u.Code).Where(c => c != code && Possible(channel, facts, c) >= MostlyPossible).Take(3);

    private static string Span(ColumnFacts facts) => string.Create(CultureInfo.InvariantCulture, $"values {facts.At(0.02):0.###} to {facts.At(0.98):0.###}");
}
