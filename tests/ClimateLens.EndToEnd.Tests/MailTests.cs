using System.Net.Sockets;
using System.Text;
using ClimateLens.EndToEnd.Tests.Program;
using MimeKit;

namespace ClimateLens.EndToEnd.Tests;

/// <summary><c>run --mail</c> against a mail server on this machine.</summary>
public sealed class MailTests : IDisposable
{
    private readonly SmallNursery _nursery = new();

    [Fact]
    public void Run_WithMail_SendsTheNewestWeekWithItsPageAttached_AndOnlyOnce()
    {
        using MailServer server = new();
        ProgramRun run = Run(server);
        Assert.True(run.ExitCode == 0, run.ToString());
        (string from, List<string> to, MimeMessage message) = Assert.Single(server.Taken);
        Assert.Equal("house@example.org", from);
        Assert.Equal(["grower@example.org", "second@example.org"], to);
        Assert.StartsWith("House 1, week 42 of 2025: ", message.Subject, StringComparison.Ordinal);
        Assert.Contains("Risk hours: ", message.TextBody, StringComparison.Ordinal);
        Assert.Contains("What to change", message.TextBody, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", message.HtmlBody, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("http", message.HtmlBody, StringComparison.OrdinalIgnoreCase);
        MimePart page = Assert.IsType<MimePart>(Assert.Single(message.Attachments), exactMatch: false);
        Assert.Equal("house-1-2025-W42.html", page.FileName);
        using MemoryStream bytes = new();
        page.Content!.DecodeTo(bytes);
        Assert.Contains("<section id=\"calendar\"", Encoding.UTF8.GetString(bytes.ToArray()), StringComparison.Ordinal);
        Assert.Contains("1 letter was sent.", run.Output, StringComparison.Ordinal);

        Assert.Equal(0, Run(server).ExitCode);
        Assert.Single(server.Taken);
        Assert.False(File.Exists(_nursery.PathOf("site/.mail.json")));
    }

    [Fact]
    public void Run_TheServerRefuses_PagesStand_Is1_AndTheNextRunSends()
    {
        using MailServer server = new() { Refuses = "452 4.3.1 the disk is full" };
        ProgramRun run = Run(server);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("the disk is full", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("may have all the same", run.Error, StringComparison.Ordinal); // it said no
        Assert.True(File.Exists(_nursery.PathOf("site/house-1/2025-W42/index.html")));
        Assert.True(File.Exists(_nursery.PathOf("site/index.html")));
        server.Refuses = null;
        ProgramRun next = Run(server);
        Assert.True(next.ExitCode == 0, next.ToString());
        Assert.Single(server.Taken);
    }

    [Fact]
    public void Run_OneAddressRefused_TheOthersHaveTheLetter_AndQuietNamesTheOne()
    {
        using MailServer server = new() { RefusesAddress = "second@example.org" };
        ProgramRun run = ClimateLensProgram.RunWith(Settings(server.Address), [.. Arguments, "--quiet"]);
        Assert.Equal(1, run.ExitCode);
        Assert.Equal(["grower@example.org"], Assert.Single(server.Taken).To);
        Assert.Contains("The server refused second@example.org (", run.Error, StringComparison.Ordinal);
        Assert.Contains("no such user", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(_nursery.PathOf("site/.mail.json")));

        server.RefusesAddress = "example.org"; // all of them
        File.Delete(_nursery.PathOf("site/house-1/2025-W42/index.html"));
        ProgramRun none = ClimateLensProgram.RunWith(Settings(server.Address), Arguments);
        Assert.Equal(1, none.ExitCode);
        Assert.Contains("no address was taken", none.Error, StringComparison.Ordinal);
        Assert.Single(server.Taken);
        Assert.True(File.Exists(_nursery.PathOf("site/.mail.json")));
    }

    /// <summary>Wherever a run is cut off, before its page, after it or within the letter: the next one sends what is owed.</summary>
    [Theory]
    [InlineData(".mail.json")]
    [InlineData("house-1/2025-W42/index.html")]
    [InlineData("house-1/2025-W42/.entry.json")]
    public void Run_KilledBeforeItSends_LeavesTheLetterToTheNext(string seen)
    {
        using MailServer server = new();
        using (System.Diagnostics.Process run = ClimateLensProgram.StartWith(Settings(server.Address), Arguments))
        {
            while (!run.HasExited && !File.Exists(_nursery.PathOf($"site/{seen}")))
            {
            }

            run.Kill();
            run.WaitForExit();
        }

        ProgramRun next = Run(server);
        Assert.True(next.ExitCode == 0, next.ToString());
        Assert.NotEmpty(server.Taken);
        Assert.False(File.Exists(_nursery.PathOf("site/.mail.json")));
    }

    /// <summary>The server has the letter, and then is gone without a word.</summary>
    [Fact]
    public void Run_NoAnswerToAWholeLetter_SaysThatTheServerMayHaveIt()
    {
        using MailServer server = new() { HangsUpAfterTheLetter = true };
        ProgramRun run = Run(server);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("which the server may have all the same", run.Error, StringComparison.Ordinal);
        Assert.True(File.Exists(_nursery.PathOf("site/.mail.json")));
    }

    [Fact]
    public void Run_SettingsAreLookedAt_WhereNothingIsToBeSent()
    {
        Assert.Equal(0, ClimateLensProgram.Run("run", _nursery.NurseryFile).ExitCode);
        ProgramRun run = ClimateLensProgram.Run([.. Arguments, "--quiet"]);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("CLIMATELENS_SMTP_SERVER is not set", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_NoServerThere_PagesStandAndItIsSaid()
    {
        using TcpListener closed = new(System.Net.IPAddress.Loopback, 0);
        closed.Start();
        string address = closed.LocalEndpoint.ToString()!;
        closed.Stop();
        ProgramRun run = ClimateLensProgram.RunWith(Settings(address), Arguments);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("The mail was not sent", run.Error, StringComparison.Ordinal);
        Assert.True(File.Exists(_nursery.PathOf("site/index.html")));
    }

    [Fact]
    public void Run_ServerWithoutTls_WhereItIsAskedFor_SendsNothing()
    {
        using MailServer server = new();
        Dictionary<string, string> settings = Settings(server.Address);
        settings.Remove("CLIMATELENS_SMTP_TLS"); // starttls is the usual one
        ProgramRun run = ClimateLensProgram.RunWith(settings, Arguments);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("STARTTLS", run.Error, StringComparison.Ordinal);
        Assert.Empty(server.Taken);
    }

    [Theory]
    [InlineData("starttls")]
    [InlineData("tls")]
    public void Run_WithTls_SendsWhereTheCertificateIsTrusted(string kind)
    {
        using Certificates certificates = new();
        using MailServer server = new() { Certificate = certificates.OfThisMachine, TlsAtOnce = kind == "tls", Account = ("grower", "right-password-42") };
        ProgramRun run = RunWithTls(server, kind, certificates);
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Single(server.Taken);
    }

    [Theory]
    [InlineData("starttls", "authority", "no authority that this machine trusts gave it")]
    [InlineData("tls", "authority", "no authority that this machine trusts gave it")]
    [InlineData("starttls", "name", "it is for another name")]
    [InlineData("starttls", "date", "it is valid from 20")]
    public void Run_WithTls_CertificateNotTrusted_SendsNothing_AndSaysWhy(string kind, string fault, string said)
    {
        using Certificates certificates = new();
        using MailServer server = new()
        {
            Certificate = fault switch { "name" => certificates.OfAnother, "date" => certificates.Expired, _ => certificates.OfThisMachine },
            TlsAtOnce = kind == "tls",
            Account = ("grower", "right-password-42"),
        };
        ProgramRun run = RunWithTls(server, kind, fault == "authority" ? null : certificates);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("the server's certificate is not trusted: " + said, run.Error, StringComparison.Ordinal);
        Assert.Empty(server.Taken);
        Assert.DoesNotContain(server.Lines, l => l.StartsWith("AUTH", StringComparison.Ordinal));
        Assert.True(File.Exists(_nursery.PathOf("site/index.html")));
        Assert.True(File.Exists(_nursery.PathOf("site/.mail.json")));
    }

    [Theory]
    [InlineData("right-password-42", 0)]
    [InlineData("wrong-password-42", 1)]
    public void Run_WithAnAccount_UsesIt_AndNeverShowsThePassword(string password, int exitCode)
    {
        using MailServer server = new() { Account = ("grower", "right-password-42") };
        Dictionary<string, string> settings = Settings(server.Address, password);
        ProgramRun run = ClimateLensProgram.RunWith(settings, [.. Arguments, "--verbose", "--log", _nursery.PathOf("run.log")]);
        Assert.True(run.ExitCode == exitCode, run.ToString());
        Assert.Equal(exitCode == 0 ? 1 : 0, server.Taken.Count);
        Assert.DoesNotContain(password, run.Output + run.Error + File.ReadAllText(_nursery.PathOf("run.log")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("CLIMATELENS_SMTP_SERVER", "", "CLIMATELENS_SMTP_SERVER is not set")]
    [InlineData("CLIMATELENS_MAIL_FROM", "", "CLIMATELENS_MAIL_FROM is not set")]
    [InlineData("CLIMATELENS_SMTP_TLS", "yes", "none of starttls, tls, none")]
    [InlineData("CLIMATELENS_SMTP_USER", "grower", "go together")]
    [InlineData("CLIMATELENS_SMTP_SERVER", "mail.example.org:x", "not host or host:port")]
    public void Run_SettingMissingOrWrong_IsNamed_AndPagesStand(string variable, string value, string said)
    {
        using MailServer server = new();
        Dictionary<string, string> settings = Settings(server.Address);
        settings[variable] = value;
        ProgramRun run = ClimateLensProgram.RunWith(settings, Arguments);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.True(File.Exists(_nursery.PathOf("site/index.html")));
    }

    [Theory]
    [InlineData("grower")]
    [InlineData("a@b.example\r\nBcc: x@y.example")]
    [InlineData("")]
    public void Run_AddressThatIsNone_Is64(string address)
        => Assert.Equal(64, ClimateLensProgram.Run("run", _nursery.NurseryFile, "--mail", address).ExitCode);

    [Fact]
    public void Letter_NameWithLineEndsAndMarkup_StaysOneSubjectAndText()
    {
        _nursery.Write("nursery.toml", SmallNursery.File().Replace("name = \"House 1\"", "name = \"A <b>x</b> \\u202E Bcc: z@z.example\"", StringComparison.Ordinal));
        using MailServer server = new();
        ProgramRun run = Run(server);
        Assert.True(run.ExitCode is 0 or 78, run.ToString());
        if (run.ExitCode == 0)
        {
            MimeMessage message = Assert.Single(server.Taken).Message;
            Assert.Empty(message.Bcc);
            Assert.Contains("&lt;b&gt;x&lt;/b&gt;", message.HtmlBody, StringComparison.Ordinal);
        }
    }

    public void Dispose() => _nursery.Dispose();

    private string[] Arguments => ["run", _nursery.NurseryFile, "--mail", "grower@example.org, second@example.org"];

    private ProgramRun Run(MailServer server) => ClimateLensProgram.RunWith(Settings(server.Address), Arguments);

    /// <summary>A run with an account over TLS, that trusts an authority or only those of the system.</summary>
    private ProgramRun RunWithTls(MailServer server, string kind, Certificates? trusted)
    {
        Dictionary<string, string> settings = Settings(server.Address, "right-password-42");
        settings["CLIMATELENS_SMTP_TLS"] = kind;
        if (trusted is not null)
        {
            _nursery.Write("authority.pem", trusted.AuthorityPem);
            settings["SSL_CERT_FILE"] = _nursery.PathOf("authority.pem"); // OpenSSL's own variable
        }

        return ClimateLensProgram.RunWith(settings, Arguments);
    }

    private static Dictionary<string, string> Settings(string address, string password) => new(Settings(address))
    {
        ["CLIMATELENS_SMTP_USER"] = "grower",
        ["CLIMATELENS_SMTP_PASSWORD"] = password,
    };

    private static Dictionary<string, string> Settings(string address) => new()
    {
        ["CLIMATELENS_SMTP_SERVER"] = address,
        ["CLIMATELENS_SMTP_TLS"] = "none",
        ["CLIMATELENS_MAIL_FROM"] = "house@example.org",
    };
}
