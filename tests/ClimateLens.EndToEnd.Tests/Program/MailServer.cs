using System.Net;
using System.Net.Security;
using System.Net.Sockets;
using System.Security.Authentication;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using MimeKit;

namespace ClimateLens.EndToEnd.Tests.Program;

/// <summary>A mail server on this machine (RFC 5321, with AUTH PLAIN, and TLS by RFC 3207 or RFC 8314) that keeps what it is given, or refuses as told.</summary>
internal sealed class MailServer : IDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource _stop = new();
    private readonly Task _serving;

    public MailServer()
    {
        _listener.Start();
        _serving = Task.Run(Serve);
    }

    /// <summary>The reply to MAIL FROM; null to take it.</summary>
    public string? Refuses { get; set; }

    /// <summary>An address that RCPT TO does not take; null for none.</summary>
    public string? RefusesAddress { get; set; }

    /// <summary>Whether it ends the connection when it has a letter, without a word.</summary>
    public bool HangsUpAfterTheLetter { get; init; }

    /// <summary>User and password that AUTH takes; null where it offers none.</summary>
    public (string User, string Password)? Account { get; init; }

    /// <summary>What it proves itself with where it speaks TLS; null where it does not.</summary>
    public X509Certificate2? Certificate { get; init; }

    /// <summary>Whether TLS begins with the first byte, in place of STARTTLS.</summary>
    public bool TlsAtOnce { get; init; }

    public string Address => $"127.0.0.1:{((IPEndPoint)_listener.LocalEndpoint).Port}";

    public List<(string From, List<string> To, MimeMessage Message)> Taken { get; } = [];

    public List<string> Lines { get; } = [];

    public void Dispose()
    {
        _stop.Cancel();
        _listener.Stop();
        _serving.Wait(TimeSpan.FromSeconds(5));
        _stop.Dispose();
    }

    private async Task Serve()
    {
        try
        {
            while (true)
            {
                using TcpClient client = await _listener.AcceptTcpClientAsync(_stop.Token);
                try
                {
                    if (TlsAtOnce)
                    {
                        await using SslStream tls = await Secure(client.GetStream());
                        await Talk(tls);
                    }
                    else
                    {
                        await Talk(client.GetStream());
                    }
                }
                catch (Exception end) when (end is IOException or AuthenticationException)
                {
                    Lines.Add("(left)"); // a client that does not trust the certificate leaves in the middle
                }
            }
        }
        catch (Exception end) when (end is OperationCanceledException or SocketException or IOException or ObjectDisposedException)
        {
            // stopped
        }
    }

    private async Task<SslStream> Secure(Stream plain)
    {
        SslStream tls = new(plain);
        await tls.AuthenticateAsServerAsync(new SslServerAuthenticationOptions { ServerCertificate = Certificate }, _stop.Token);
        return tls;
    }

    private async Task Talk(Stream stream)
    {
        using StreamReader reader = new(stream, Encoding.Latin1);
        async Task Say(string line) => await stream.WriteAsync(Encoding.ASCII.GetBytes(line + "\r\n"));
        string from = "";
        List<string> to = [];
        if (stream is not SslStream || TlsAtOnce)
        {
            await Say("220 here");
        }

        while (await reader.ReadLineAsync() is { } line)
        {
            Lines.Add(line);
            switch (line.Split(' ')[0].ToUpperInvariant())
            {
                case "EHLO":
                    string[] can = ["here", .. Account is null ? [] : (string[])["AUTH PLAIN"], .. Certificate is null || stream is SslStream ? [] : (string[])["STARTTLS"]];
                    await Say(string.Join("\r\n", can.Select((c, i) => $"250{(i < can.Length - 1 ? '-' : ' ')}{c}")));
                    break;
                case "STARTTLS":
                    await Say("220 go on");
                    await using (SslStream tls = await Secure(stream))
                    {
                        await Talk(tls);
                    }

                    return;
                case "AUTH":
                    string given = Encoding.UTF8.GetString(Convert.FromBase64String(line.Split(' ')[2]));
                    await Say(Account is { } account && given == $"\0{account.User}\0{account.Password}" ? "235 ok" : $"535 no: {line}");
                    break;
                case "MAIL" when Refuses is { } reply:
                    await Say(reply);
                    break;
                case "MAIL":
                    from = line[(line.IndexOf('<', StringComparison.Ordinal) + 1)..line.IndexOf('>', StringComparison.Ordinal)];
                    to = [];
                    await Say("250 ok");
                    break;
                case "RCPT" when RefusesAddress is { } address && line.Contains(address, StringComparison.Ordinal):
                    await Say("550 5.1.1 no such user");
                    break;
                case "RCPT":
                    to.Add(line[(line.IndexOf('<', StringComparison.Ordinal) + 1)..line.IndexOf('>', StringComparison.Ordinal)]);
                    await Say("250 ok");
                    break;
                case "DATA":
                    await Say("354 go on");
                    StringBuilder data = new();
                    while (await reader.ReadLineAsync() is { } part && part != ".")
                    {
                        data.Append(part.StartsWith('.') ? part[1..] : part).Append("\r\n");
                    }

                    using (MemoryStream bytes = new(Encoding.Latin1.GetBytes(data.ToString())))
                    {
                        Taken.Add((from, to, await MimeMessage.LoadAsync(bytes)));
                    }

                    if (HangsUpAfterTheLetter)
                    {
                        return;
                    }

                    await Say("250 ok");
                    break;
                case "QUIT":
                    await Say("221 bye");
                    return;
                default:
                    await Say("250 ok");
                    break;
            }
        }
    }
}
