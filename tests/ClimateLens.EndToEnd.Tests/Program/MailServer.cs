using System.Net;
using System.Net.Sockets;
using System.Text;
using MimeKit;

namespace ClimateLens.EndToEnd.Tests.Program;

/// <summary>A mail server on this machine (RFC 5321, with AUTH PLAIN) that keeps what it is given, or refuses as told.</summary>
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

    /// <summary>User and password that AUTH takes; null where it offers none.</summary>
    public (string User, string Password)? Account { get; init; }

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
                await Talk(client.GetStream());
            }
        }
        catch (Exception end) when (end is OperationCanceledException or SocketException or IOException or ObjectDisposedException)
        {
            // stopped
        }
    }

    private async Task Talk(NetworkStream stream)
    {
        using StreamReader reader = new(stream, Encoding.Latin1);
        async Task Say(string line) => await stream.WriteAsync(Encoding.ASCII.GetBytes(line + "\r\n"));
        string from = "";
        List<string> to = [];
        await Say("220 here");
        while (await reader.ReadLineAsync() is { } line)
        {
            Lines.Add(line);
            switch (line.Split(' ')[0].ToUpperInvariant())
            {
                case "EHLO":
                    await Say(Account is null ? "250 here" : "250-here\r\n250 AUTH PLAIN");
                    break;
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
