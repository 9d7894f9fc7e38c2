using System.Text.Json;
using ClimateLens.Cli.Commands;
using ClimateLens.Nursery.Problems;
using ClimateLens.Reports;
using ClimateLens.Reports.Formats;
using MimeKit;

namespace ClimateLens.Cli.Mail;

/// <summary>
/// The newest week of each house that a run made, to be sent. What is to be sent is noted beside the site before its page is made, and stays there until the
/// server took it: a run that is cut off, or finds no server, leaves it to the next one with <c>--mail</c>. Pages are published before any mail goes out.
/// </summary>
internal sealed class Outbox
{
    /// <summary>File beside the site's pages that names what is still to be sent.</summary>
    public const string NoteName = ".mail.json";

    private readonly Session _session;
    private readonly string _note;
    private readonly string[] _before; // left by runs before
    private readonly List<string> _owed = [];

    /// <summary>Opens the outbox of a run.</summary>
    /// <param name="session">The run.</param>
    public Outbox(Session session)
    {
        _session = session;
        _note = Path.Combine(Path.GetDirectoryName(session.SiteIndex)!, NoteName);
        _before = Read(_note);
    }

    /// <summary>Notes that a page is about to be made that is to be sent.</summary>
    /// <param name="page">Its place in the site.</param>
    public void Owe(string page)
    {
        if (!_owed.Contains(page))
        {
            _owed.Add(page);
            Write([.. _before.Union(_owed)]);
        }
    }

    /// <summary>Sends the letters of a run.</summary>
    /// <param name="to">Whom to.</param>
    /// <param name="renewed">Pages that the run made.</param>
    /// <param name="variable">Value of an environment variable, or null.</param>
    /// <returns>How many letters the server took.</returns>
    public int Send(IReadOnlyList<MailboxAddress> to, IReadOnlySet<string> renewed, Func<string, string?> variable)
    {
        MailSettings? settings = null;
        try
        {
            settings = MailSettings.Read(variable); // looked at in every run, not first on the Monday when a letter waits
        }
        catch (MailException fault)
        {
            _session.Report([Failed(fault)]);
        }

        HouseWeekSummary[] due = [.. _session.Site.Summaries.DistinctBy(s => s.House).Where(s => renewed.Contains(s.Page) || _before.Contains(s.Page))];
        List<string> pages = [.. due.Select(s => s.Page)];
        Write(pages); // without those whose review failed
        if (pages.Count == 0 || settings is null)
        {
            return 0;
        }

        int sent = 0;
        try
        {
            (string Page, WeekLetter Letter)[] letters =
            [
                .. due.Select(s => (s.Page, Letter: _session.Site.LetterOf(s.House, s.Period))).Where(p => p.Letter is not null).Select(p => (p.Page, p.Letter!)),
            ];
            IReadOnlyList<string> refused = Postman.Send(settings, to, letters.Select(l => l.Letter), letter =>
            {
                sent++;
                pages.Remove(letters.First(l => ReferenceEquals(l.Letter, letter)).Page);
            });
            pages.Clear();
            if (refused.Count > 0)
            {
                _session.Report([new Problem("mail.failed", Severity.Warning, null, null, null, $"The server refused {string.Join("; ", refused)}; the others have the letter", "", "Correct the addresses after --mail; this letter is not sent again.")]);
            }
        }
        catch (MailException fault)
        {
            _session.Report([Failed(fault)]);
        }

        Write(pages);
        return sent;
    }

    private static Problem Failed(MailException fault)
        => new("mail.failed", Severity.Warning, null, null, null, $"The mail was not sent: {fault.Message.TrimEnd('.')}", "", "The pages are published. Mend what is named; the next run with --mail tries again.");

    private void Write(List<string> pages)
    {
        try
        {
            if (pages.Count == 0)
            {
                File.Delete(_note);
            }
            else
            {
                File.WriteAllBytes(_note, JsonSerializer.SerializeToUtf8Bytes(pages.ToArray(), MailJson.Default.StringArray));
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // No reason to leave pages unmade.
            _session.Report([new Problem("mail.failed", Severity.Warning, null, null, null, $"The note of letters to be sent cannot be written: {fault.Message}", "", "Look at the disk. Until then a letter may be sent twice, or not at all where a run is cut off.")]);
        }
    }

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
