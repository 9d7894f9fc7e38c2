using System.Text.Json;
using ClimateLens.Cli.Commands;
using ClimateLens.Nursery.Problems;
using ClimateLens.Reports;
using ClimateLens.Reports.Formats;
using MimeKit;

namespace ClimateLens.Cli.Mail;

/// <summary>
/// The newest week of each house that a run made, to be sent. What could not be sent is noted beside the site and tried again by the next run with
/// <c>--mail</c>; a run that sends nothing new sends nothing twice. Pages are published before any mail goes out.
/// </summary>
internal static class Outbox
{
    /// <summary>File beside the site's pages that names what is still to be sent.</summary>
    public const string NoteName = ".mail.json";

    /// <summary>Sends the letters of a run.</summary>
    /// <param name="session">The run.</param>
    /// <param name="to">Whom to.</param>
    /// <param name="renewed">Pages that the run made.</param>
    /// <param name="variable">Value of an environment variable, or null.</param>
    /// <returns>How many letters the server took.</returns>
    public static int Send(Session session, IReadOnlyList<MailboxAddress> to, IEnumerable<HouseWeekSummary> renewed, Func<string, string?> variable)
    {
        MailSettings? settings = null;
        try
        {
            settings = MailSettings.Read(variable); // looked at in every run, not first on the Monday when a letter waits
        }
        catch (MailException fault)
        {
            session.Report([Failed(fault)]);
        }

        string note = Path.Combine(Path.GetDirectoryName(session.SiteIndex)!, NoteName);
        HashSet<string> newest = [.. session.Site.Summaries.DistinctBy(s => s.House).Select(s => s.Page)];
        List<string> pages = [.. Read(note).Concat(renewed.Select(s => s.Page)).Distinct(StringComparer.Ordinal).Where(newest.Contains)];
        if (pages.Count == 0)
        {
            return 0;
        }

        Write(note, pages); // a run killed now sends them next time
        if (settings is null)
        {
            return 0;
        }

        int sent = 0;
        try
        {
            (string Page, WeekLetter Letter)[] letters =
            [
                .. pages.Select(p => (Page: p, Summary: session.Site.Summaries.First(s => s.Page == p)))
                    .Select(p => (p.Page, Letter: session.Site.LetterOf(p.Summary.House, p.Summary.Period)))
                    .Where(p => p.Letter is not null).Select(p => (p.Page, p.Letter!)),
            ];
            IReadOnlyList<string> refused = Postman.Send(settings, to, letters.Select(l => l.Letter), letter =>
            {
                sent++;
                pages.Remove(letters.First(l => ReferenceEquals(l.Letter, letter)).Page);
            });
            pages.Clear();
            if (refused.Count > 0)
            {
                session.Report([new Problem("mail.failed", Severity.Warning, null, null, null, $"The server refused {string.Join("; ", refused)}; the others have the letter", "", "Correct the addresses after --mail; this letter is not sent again.")]);
            }
        }
        catch (MailException fault)
        {
            session.Report([Failed(fault)]);
        }

        if (pages.Count == 0)
        {
            File.Delete(note);
        }
        else
        {
            Write(note, pages);
        }

        return sent;
    }

    private static Problem Failed(MailException fault)
        => new("mail.failed", Severity.Warning, null, null, null, $"The mail was not sent: {fault.Message.TrimEnd('.')}", "", "The pages are published. Mend what is named; the next run with --mail tries again.");

    private static void Write(string note, List<string> pages) => File.WriteAllBytes(note, JsonSerializer.SerializeToUtf8Bytes(pages.ToArray(), MailJson.Default.StringArray));

    private static string[] Read(string note)
    {
        try
        {
            return File.Exists(note) ? JsonSerializer.Deserialize(File.ReadAllBytes(note), MailJson.Default.StringArray) ?? [] : [];
        }
        catch (JsonException)
        {
            return []; // cut off while it was written: the pages stand, and the next new week is sent
        }
    }
}

[System.Text.Json.Serialization.JsonSerializable(typeof(string[]))]
internal sealed partial class MailJson : System.Text.Json.Serialization.JsonSerializerContext;
