using System.Text;
using ClimateLens.Reports.Formats;
using MailKit;
using MailKit.Net.Smtp;
using MimeKit;
using MimeKit.Text;

namespace ClimateLens.Cli.Mail;

/// <summary>Sends letters over one connection.</summary>
internal static class Postman
{
    private const int TimeoutMilliseconds = 30_000;

    /// <summary>RFC 5321, section 4.5.3.2.6: a server may look at a letter for ten minutes before it says that it has it; a client that gives up sooner sends it twice.</summary>
    private const int LetterTimeoutMilliseconds = 600_000;

    /// <summary>The addresses of a list; what is none is told.</summary>
    /// <param name="list">Addresses parted by commas.</param>
    /// <param name="addresses">They.</param>
    /// <returns>What is wrong, or null.</returns>
    public static string? Parse(string list, out IReadOnlyList<MailboxAddress> addresses)
    {
        bool read = InternetAddressList.TryParse(list, out InternetAddressList? all);
        addresses = read ? [.. all!.Mailboxes] : [];
        return !read || addresses.Count == 0 || addresses.Count != all!.Count || addresses.Any(a => !a.Address.Contains('@', StringComparison.Ordinal)) || list.Any(char.IsControl)
            ? "--mail takes addresses such as grower@example.org, parted by commas."
            : null;
    }

    /// <summary>Sends one letter after the other.</summary>
    /// <param name="settings">Server and sender.</param>
    /// <param name="to">Whom to.</param>
    /// <param name="letters">The letters.</param>
    /// <param name="sent">Told each letter that the server took.</param>
    /// <returns>Addresses that the server refused while it took others, each with its words.</returns>
    /// <exception cref="MailException">The server cannot be reached, or does not take one; letters before it are sent.</exception>
    public static IReadOnlyList<string> Send(MailSettings settings, IReadOnlyList<MailboxAddress> to, IEnumerable<WeekLetter> letters, Action<WeekLetter> sent)
    {
        ServerTrust trust = new();
        bool sending = false;
        try
        {
            using TolerantClient client = new(settings) { Timeout = TimeoutMilliseconds, CheckCertificateRevocation = false, ServerCertificateValidationCallback = trust.Takes };
            client.Connect(settings.Host, settings.Port, settings.Security);
            if (settings is { User: { } user, Password: { } password })
            {
                client.Authenticate(user, password);
            }

            client.Timeout = LetterTimeoutMilliseconds;
            foreach (WeekLetter letter in letters)
            {
                sending = true;
                client.Send(Message(settings, to, letter));
                sending = false;
                sent(letter);
            }

            client.Timeout = TimeoutMilliseconds;
            client.Disconnect(quit: true);
            return [.. client.Refused.Distinct()];
        }
        catch (Exception fault) when (fault is IOException or System.Net.Sockets.SocketException or ProtocolException or CommandException or ServiceNotAuthenticatedException or ServiceNotConnectedException
            or MailKit.Security.SslHandshakeException or MailKit.Security.AuthenticationException or NotSupportedException or TimeoutException or OperationCanceledException or ParseException)
        {
            bool open = sending && fault is not (CommandException or ParseException); // no answer, or none that is one
            throw new MailException($"{settings}: {trust.Fault ?? Words(fault, settings)}{(open ? ". It broke off within a letter, which the server may have all the same" : "")}", fault);
        }
    }

    /// <summary>The message with both bodies and the page attached.</summary>
    internal static MimeMessage Message(MailSettings settings, IReadOnlyList<MailboxAddress> to, WeekLetter letter)
    {
        MimeMessage message = new() { Subject = letter.Subject };
        message.From.Add(MailboxAddress.Parse(settings.From));
        message.To.AddRange(to);
        MultipartAlternative bodies = [new TextPart(TextFormat.Plain) { Text = letter.PlainBody }, new TextPart(TextFormat.Html) { Text = letter.HtmlBody }];
        MimePart page = new("text", "html")
        {
            Content = new MimeContent(new MemoryStream(letter.Page)),
            ContentDisposition = new ContentDisposition(ContentDisposition.Attachment),
            ContentTransferEncoding = ContentEncoding.Base64,
            FileName = letter.FileName,
        };
        page.ContentType.Charset = "utf-8";
        message.Body = new Multipart("mixed") { bodies, page };
        return message;
    }

    private static string Words(Exception fault, MailSettings settings)
    {
        string words = fault is MailKit.Security.AuthenticationException ? "the server did not take user and password" : fault.Message.Split('\n')[0].Trim();
        return WithoutSecrets(words, settings).TrimEnd('.');
    }

    /// <summary>What a server says, without user and password, plain or as they go over the wire.</summary>
    private static string WithoutSecrets(string words, MailSettings settings)
    {
        string user = settings.User ?? "", password = settings.Password ?? "";
        foreach (string plain in (string[])[$"\0{user}\0{password}", $"{user}\0{user}\0{password}", password, user])
        {
            if (plain.Trim('\0').Length > 2)
            {
                words = words.Replace(Convert.ToBase64String(Encoding.UTF8.GetBytes(plain)), "(secret)", StringComparison.Ordinal).Replace(plain, "(secret)", StringComparison.Ordinal);
            }
        }

        return words;
    }

    /// <summary>Goes on with those whom the server takes, and remembers the others.</summary>
    private sealed class TolerantClient(MailSettings settings) : SmtpClient
    {
        public List<string> Refused { get; } = [];

        protected override void OnRecipientNotAccepted(MimeMessage message, MailboxAddress mailbox, SmtpResponse response)
            => Refused.Add($"{mailbox.Address} ({WithoutSecrets(response.Response.Split('\n')[0].Trim(), settings)})");

        protected override void OnNoRecipientsAccepted(MimeMessage message) => throw new SmtpCommandException(SmtpErrorCode.RecipientNotAccepted, SmtpStatusCode.MailboxUnavailable, $"no address was taken: {string.Join("; ", Refused)}");
    }
}
