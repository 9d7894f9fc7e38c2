using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Matching;

/// <summary>Repeats a comparison with untreated stretches in the place of events.</summary>
internal static class Placebo
{
    private const int Tries = 20;
    private const int SetDraws = 400;

    public static PlaceboTest Of(NearestStretches nearest, Stretches stretches, DayBlocks blocks, List<MatchedEvent> matched, MatchDesign design)
    {
        if (design.PlaceboSets == 0 || matched.Count < MovingBlockBootstrap.FewestValues)
        {
            return PlaceboTest.Untried;
        }

        MatchedEvent[] pseudo = [.. nearest.Candidates.Select(c => nearest.Match(c.Start)).Where(e => e.Outcome == MatchOutcome.Matched)];
        var random = new SeededRandom(design.Seed);
        int tried = 0, rejected = 0;
        double sum = 0;
        for (int set = 0; set < design.PlaceboSets; set++)
        {
            List<MatchedEvent> events = Set(pseudo, matched, design, random);
            if (events.Count >= MovingBlockBootstrap.FewestValues)
            {
                Interval range = blocks.Ranges(events, 1, (start, _) => stretches.Rise(start), SetDraws, random)[0];
                tried++;
                sum += range.Value;
                rejected += range.Low > 0 || range.High < 0 ? 1 : 0;
            }
        }

        return tried == 0 ? PlaceboTest.Untried : new(tried, (double)rejected / tried, sum / tried);
    }

    /// <summary>One pseudo-event for each event, at about its hour of the day, none twice; an event for which none is found has none.</summary>
    private static List<MatchedEvent> Set(MatchedEvent[] pseudo, List<MatchedEvent> matched, MatchDesign design, SeededRandom random)
    {
        List<MatchedEvent> set = [];
        int apart = design.Steps(design.BeforeHours + design.AfterHours), day = design.Steps(24), near = design.Steps(2);
        foreach (MatchedEvent real in matched)
        {
            for (int attempt = 0; attempt < Tries && pseudo.Length > 0; attempt++)
            {
                MatchedEvent drawn = pseudo[(int)(random.NextDouble() * pseudo.Length)];
                int away = Math.Abs(drawn.Start - real.Start) % day;
                if (Math.Min(away, day - away) <= near && set.TrueForAll(e => Math.Abs(e.Start - drawn.Start) >= apart))
                {
                    set.Add(drawn);
                    break;
                }
            }
        }

        return set;
    }
}
