using ClimateLens.Cli.Output;
using ClimateLens.Logs.Health;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.Reports;
using NodaTime;

namespace ClimateLens.Cli.Commands;

/// <summary>For the doctor: whether what was imported led to pages, whether they can be written again, whether the newest readings hold temperature and humidity, and whether a letter waits.</summary>
internal static class PagesCheck
{
    private static readonly string[] Needed = ["airTemperature", "relativeHumidity"];

    /// <summary>A line for each house, and one for the mail where letters wait.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="site">Folder of the site, full path.</param>
    /// <param name="staleDays">Days without temperature and humidity after which a house is told of. [d]</param>
    public static IEnumerable<CheckupLine> Of(Request request, string site, int staleDays)
    {
        List<CheckupLine> lines = [];
        try
        {
            using Session session = Session.OpenToRead(request, new Messages(TextWriter.Null, request));
            foreach (HouseSettings house in session.Nursery.Houses)
            {
                if (session.Store.Extent(house.Id) is { } extent)
                {
                    lines.AddRange(OfHouse(session, house, extent, site, staleDays));
                }
            }
        }
        catch (NoDataException)
        {
            // nothing was imported: told by the look at the ledger
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            lines.Add(new CheckupLine("site.page", true, $"The pages were not looked at: {fault.Message}", ""));
        }

        if (File.Exists(Path.Combine(site, Mail.Outbox.NoteName)))
        {
            lines.Add(new CheckupLine("mail.waiting", false, "A letter could not be sent and waits.", "The next run with --mail tries again; run it now with --verbose to see why."));
        }

        return lines;
    }

    private static IEnumerable<CheckupLine> OfHouse(Session session, HouseSettings house, Interval extent, string site, int staleDays)
    {
        if (RunCommand.WeeksOf(session, house) is [.., IsoWeek newest] && WorkLeft.HasReadings(session, house, newest))
        {
            yield return OfPage(house, newest, Path.Combine(site, SitePublisher.PlaceOf(house.Id, newest.ToString())));
        }

        HouseInput last = session.Load(house, new Interval(extent.End - Duration.FromDays(staleDays), extent.End), Duration.Zero);
        foreach (string channel in Needed.Where(channel => LogsIt(session, house, channel) && !HasValues(last, house, channel)))
        {
            yield return new CheckupLine("data.empty", false, $"{house.Name}: rows come in, but hold no value of {channel} for {staleDays} days.", "Look at the sensor and at its column; missing codes count as no value.");
        }
    }

    private static CheckupLine OfPage(HouseSettings house, IsoWeek week, string page)
    {
        string folder = Path.GetDirectoryName(page)!;
        if (!File.Exists(page))
        {
            return new CheckupLine("site.page", false, $"{house.Name} has readings of {week}, but no page of it.", "Run climatelens run and read what it says: the last run did not come to its end, or its review failed.");
        }

        if (!IsWhole(page))
        {
            return new CheckupLine("site.page", false, $"{house.Name}: the page of {week} is damaged or cut off.", $"Delete {folder}; the next run makes it again. Look at the disk.");
        }

        string? fault = FolderCheck.FaultOfWriting(folder);
        return fault is null
            ? new CheckupLine("site.page", true, $"{house.Name}: the page of {week} is there.", "")
            : new CheckupLine("site.page", false, $"The folder {folder} cannot be written: {fault}", "Give it to the user of the scheduled run; someone else may have run the program once.");
    }

    private static bool IsWhole(string page)
    {
        using FileStream file = new(page, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        Span<byte> end = stackalloc byte[16];
        file.Seek(-Math.Min(end.Length, file.Length), SeekOrigin.End);
        return end[..file.ReadAtLeast(end, end.Length, throwOnEndOfStream: false)].TrimEnd("\r\n "u8).EndsWith("</html>"u8);
    }

    private static bool LogsIt(Session session, HouseSettings house, string channel)
        => session.Nursery.Exports.Any(export => export.House == house.Id && export.Columns.Any(column => column.Channel == channel));

    private static bool HasValues(HouseInput input, HouseSettings house, string channel)
        => input.Batches.Where(batch => batch.House == house.Id).SelectMany(batch => batch.Columns).Any(column => IsOf(column.Key, channel) && column.Value.Any(double.IsFinite));

    private static bool IsOf(string column, string channel)
        => column.StartsWith(channel, StringComparison.Ordinal) && (column.Length == channel.Length || !char.IsAsciiLetter(column[channel.Length]));
}
