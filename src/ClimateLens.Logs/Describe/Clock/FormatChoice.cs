using System.Globalization;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>Chooses between the formats of one place by how many rows of the whole file they read and by the order of time.</summary>
internal static class FormatChoice
{
    private const double NearlyAll = 0.98;
    private const double FewRows = 0.002;
    private const int MostMixed = 4;

    /// <summary>The choice; null when no format reads most of the rows.</summary>
    /// <param name="tallies">All formats of the place, tried on every row.</param>
    /// <param name="mixed">Pairs of formats, each row read by what keeps time moving.</param>
    /// <param name="dayFirst">What other marks of the file say of the order of day and month, or null.</param>
    public static TimeGuess? Of(IReadOnlyList<StampTally> tallies, IReadOnlyList<MixedTally> mixed, string? dayFirst)
    {
        StampTally[] ranked = [.. tallies.OrderByDescending(t => t.Score).ThenByDescending(t => t.Read).ThenBy(t => t.Format.Text == "iso" ? 0 : t.Format.Order == "ydM" ? 2 : 1)];
        if (ranked.Length == 0 || ranked[0].Rows == 0)
        {
            return null;
        }

        StampTally best = ranked[0];
        MixedTally? pair = mixed.OrderByDescending(m => m.Score).FirstOrDefault();
        if (pair is not null && IsMixed(pair, best))
        {
            return Mixed(pair, best);
        }

        if (Bare(tallies, best) is { } bare && Alone(best, Rival(ranked, best), dayFirst) is { Sureness: not Sureness.Unsure } guess)
        {
            string evidence = string.Create(CultureInfo.InvariantCulture, $"{guess.Evidence}; {bare.Read} have the date alone, which is midnight: no row has it with a time");
            return guess with { Formats = [best.Format, bare.Format], Evidence = evidence, Share = (best.Read + bare.Read) / (double)best.Rows };
        }

        if (best.Read < NearlyAll * best.Rows)
        {
            return Several(ranked, best);
        }

        return Alone(best, Rival(ranked, best), dayFirst);
    }

    private static StampTally? Rival(StampTally[] ranked, StampTally best) => ranked.Skip(1).FirstOrDefault(t => t.Format.Order != best.Format.Order);

    /// <summary>The date of a format alone, where rows have that in place of midnight, as spreadsheets write it.</summary>
    private static StampTally? Bare(IReadOnlyList<StampTally> tallies, StampTally best)
        => best.Format.Holds != StampHolds.Both || best.Midnights > 0 ? null
            : tallies.FirstOrDefault(t => t.Format.Holds == StampHolds.Date && t.Read > 0 && t.Read <= best.Rows - best.Read && Loose(best.Format.Text).StartsWith(Loose(t.Format.Text), StringComparison.Ordinal));

    /// <summary>A format whatever its first zeros: few dates alone may have none.</summary>
    private static string Loose(string format) => format.Replace("MM", "M", StringComparison.Ordinal).Replace("dd", "d", StringComparison.Ordinal);

    private static TimeGuess Alone(StampTally best, StampTally? rival, string? dayFirst)
    {
        string reads = string.Create(CultureInfo.InvariantCulture, $"reads {best.Read} of {best.Rows} rows");
        if (rival is null || rival.Read == 0)
        {
            return One(best, Sureness.Sure, reads);
        }

        if (best.Format.Order == "yMd" && rival.Format.Order == "ydM")
        {
            return One(best, Sureness.Sure, reads); // nobody writes year, day, month by habit
        }

        int lead = best.Score - rival.Score;
        string other = string.Create(CultureInfo.InvariantCulture, $"{rival.Format.Text} reads {rival.Read}");
        if (rival.Read < best.Read && lead > 0)
        {
            return One(best, lead >= Math.Max(2, FewRows * best.Rows) ? Sureness.Sure : Sureness.Likely, $"{reads}, {other}");
        }

        string order = string.Create(CultureInfo.InvariantCulture, $"by the order of time: {rival.Format.Text} would step back or leap {rival.Order.Oddities()} times, this {best.Order.Oddities()}");
        if (lead >= 2 && best.Order.Oddities() * 2 < rival.Order.Oddities())
        {
            return One(best, Sureness.Sure, $"{reads}; {order}");
        }

        if (lead >= 1 && best.Order.Oddities() == 0)
        {
            return One(best, Sureness.Likely, $"{reads}; {order}");
        }

        StampTally[] both = [.. new[] { best, rival }.OrderBy(t => IsDayFirst(t.Format) ? 0 : 1)];
        if (both[0].Format is { Order: "dMy" } day && both[1].Format.Order == "Mdy" && day.Text.IndexOf('.', StringComparison.Ordinal) is 1 or 2)
        {
            return One(both[0], Sureness.Likely, $"{reads}; with points the day stands first");
        }

        string hint = dayFirst is null ? "" : $"; {dayFirst}";
        return One(best, Sureness.Unsure, $"{both[0].Format.Text} and {both[1].Format.Text} both read every row, and the order of time does not tell{hint}") with { Formats = [both[0].Format, both[1].Format] };
    }

    private static bool IsDayFirst(StampFormat format) => format.Order == "dMy";

    private static TimeGuess One(StampTally tally, Sureness sureness, string evidence)
        => new(tally.Source, [tally.Format], sureness, evidence, tally) { Share = tally.Rows == 0 ? 0 : tally.Read / (double)tally.Rows };

    private static bool IsMixed(MixedTally pair, StampTally best)
    {
        int fewer = pair.Taken.Min();
        if (pair.Order.IsWithoutGap && (best.Order.Oddities() > 0 || pair.Order.Count > best.Read) && fewer > 0)
        {
            return true; // chance does not put days together without a gap, nor even one row onto the very next step
        }

        return fewer > FewRows * best.Rows && pair.Score - best.Score >= 2 && pair.Order.Oddities() * 3 <= best.Order.Oddities() + (best.Rows - best.Read);
    }

    private static TimeGuess Mixed(MixedTally pair, StampTally best)
    {
        string evidence = string.Create(CultureInfo.InvariantCulture, $"the file mixes both: alone {best.Format.Text} reads {best.Read} of {best.Rows} rows with {best.Order.Oddities()} steps back or leaps, together there are {pair.Order.Oddities()}");
        return new TimeGuess(best.Source, [.. pair.Formats], Sureness.Likely, evidence, best) { Share = pair.Order.Count / (double)best.Rows, Order = pair.Order };
    }

    /// <summary>A file whose format changes: formats that read different rows.</summary>
    private static TimeGuess? Several(StampTally[] ranked, StampTally best)
    {
        var chosen = new List<StampTally>();
        foreach (StampTally tally in ranked.Where(t => t.Read > 0).OrderByDescending(t => t.Format.Order == best.Format.Order).DistinctBy(t => (t.Format.Order, t.Read, t.FirstFailure)))
        {
            if (chosen.Count < MostMixed && chosen.All(c => c.Format.Order == tally.Format.Order || c.Read != tally.Read) && chosen.Sum(c => c.Read) + tally.Read <= tally.Rows)
            {
                chosen.Add(tally);
            }
        }

        int read = chosen.Sum(t => t.Read);
        if (chosen.Count > 1 && read > NearlyAll * best.Rows)
        {
            string parts = string.Join(", ", chosen.Select(t => string.Create(CultureInfo.InvariantCulture, $"{t.Format.Text} reads {t.Read}")));
            return new TimeGuess(best.Source, [.. chosen.Select(t => t.Format)], Sureness.Likely, $"the format changes within the file: {parts} of {best.Rows} rows", best) { Share = read / (double)best.Rows };
        }

        if (best.Read < 0.5 * best.Rows)
        {
            return null;
        }

        TimeGuess alone = Alone(best, Rival(ranked, best), null);
        return alone.Sureness == Sureness.Unsure ? alone : alone with { Sureness = Sureness.Likely };
    }
}
