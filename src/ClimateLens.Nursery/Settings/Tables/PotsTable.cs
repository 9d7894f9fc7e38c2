using System.Collections.Immutable;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;
using NodaTime.Text;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>[house.pots]: rounds, band and weights of pot checks.</summary>
internal static class PotsTable
{
    public static readonly string[] Keys = ["rounds", "weekendRounds", "bandLow", "bandHigh", "dryWeightG", "soakedWeightG"];

    private const string Example = "[\"06:00-09:30\", \"10:00-12:30\", \"13:00-16:30\"]";
    private const double HeaviestG = 100_000;
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    public static PotRules Read(TableReader house)
    {
        PotRules usual = new();
        if (house.Table("pots", "[house.pots]", Keys) is not { } table)
        {
            return usual;
        }

        ImmutableArray<PotRound> rounds = table.Has("rounds") ? Rounds(table) : usual.Rounds;
        PotRules rules = new()
        {
            Rounds = rounds,
            WeekendRounds = table.Whole("weekendRounds", 0, rounds.Length, "rounds"),
            BandLow = table.Number("bandLow", 1, 5, "(moisture level)") ?? usual.BandLow,
            BandHigh = table.Number("bandHigh", 1, 5, "(moisture level)") ?? usual.BandHigh,
            DryWeightG = table.Number("dryWeightG", 1, HeaviestG, "grams"),
            SoakedWeightG = table.Number("soakedWeightG", 1, HeaviestG, "grams"),
        };
        InOrder(table, "bandLow", rules.BandLow, "bandHigh", rules.BandHigh);
        if (rules.DryWeightG is { } dry && rules.SoakedWeightG is { } soaked)
        {
            InOrder(table, "dryWeightG", dry, "soakedWeightG", soaked);
        }
        else if (table.Has("dryWeightG") != table.Has("soakedWeightG"))
        {
            (string there, string missing) = table.Has("dryWeightG") ? ("dryWeightG", "soakedWeightG") : ("soakedWeightG", "dryWeightG");
            table.Faults.Error(FaultCodes.Order, table.PlaceOf(there), $"{there} stands without {missing}", "both weights", "weigh a pot of level 1 and one that was soaked and has drained.");
        }

        return rules with { SetByUser = [.. Keys.Where(table.Has)] };
    }

    private static void InOrder(TableReader table, string lowKey, double low, string highKey, double high)
    {
        if (low >= high)
        {
            string key = table.Has(highKey) ? highKey : lowKey;
            table.Faults.Error(FaultCodes.Order, table.PlaceOf(key), $"{lowKey} ({NumberKeys.Show(low)}) is not below {highKey} ({NumberKeys.Show(high)})", "", "one left out has its usual value; give both.");
        }
    }

    private static ImmutableArray<PotRound> Rounds(TableReader table)
    {
        List<PotRound> rounds = [];
        foreach (string text in table.Texts("rounds", Example))
        {
            if (RoundOf(text) is not { } round || round.From >= round.To)
            {
                table.Faults.Error(FaultCodes.Format, table.PlaceOf("rounds"), $"{Excerpt.Quoted(text)} is no round", "two times of day, the earlier first", $"write for example rounds = {Example}");
                continue;
            }

            if (rounds.Count > 0 && round.From <= rounds[^1].To)
            {
                table.Faults.Error(FaultCodes.Order, table.PlaceOf("rounds"), $"{Excerpt.Quoted(text)} does not begin after the round before it", "", "write the rounds of a day in their order, none over another.");
            }

            rounds.Add(round);
        }

        return [.. rounds];
    }

    private static PotRound? RoundOf(string text)
    {
        string[] ends = text.Split('-', StringSplitOptions.TrimEntries);
        return ends.Length == 2 && Clock.Parse(ends[0]) is { Success: true } from && Clock.Parse(ends[1]) is { Success: true } to
            ? new PotRound($"{ends[0]} to {ends[1]}", from.Value, to.Value)
            : null;
    }
}
