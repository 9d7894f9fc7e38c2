using System.Collections.Immutable;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>A place where the time may stand, with the formats to try on every row.</summary>
/// <param name="Source">The place.</param>
/// <param name="Formats">The formats.</param>
internal sealed record TimePlan(TimeSource Source, ImmutableArray<StampFormat> Formats)
{
    private const int MostFormats = 10;

    /// <summary>Plans a place from the rows of a sample; null when no format reads any.</summary>
    public static TimePlan? Of(TimeSource source, IReadOnlyList<string[]> rows, Func<StampHolds, bool> wanted)
    {
        string[] stamps = [.. rows.Select(source.Text).Where(text => text.Length > 0)];
        var shapes = new ShapeTally();
        foreach (string stamp in stamps)
        {
            shapes.Add(stamp);
        }

        return Of(source, shapes.Formats().Where(f => wanted(f.Holds)), stamps);
    }

    /// <summary>Plans a place with given formats.</summary>
    public static TimePlan? Of(TimeSource source, IEnumerable<StampFormat> formats, IReadOnlyList<string> stamps)
    {
        var tallies = new List<StampTally>();
        foreach (StampFormat format in formats.DistinctBy(f => f.Text))
        {
            if (StampTally.TryCreate(source, format) is { } tally)
            {
                foreach (string stamp in stamps)
                {
                    tally.Add(stamp);
                }

                tallies.Add(tally);
            }
        }

        ImmutableArray<StampFormat> kept = [.. tallies.Where(t => t.Read > 0).OrderByDescending(t => t.Read).ThenByDescending(t => t.Score).Take(MostFormats).Select(t => t.Format)];
        return kept.IsEmpty ? null : new TimePlan(source, kept);
    }
}
