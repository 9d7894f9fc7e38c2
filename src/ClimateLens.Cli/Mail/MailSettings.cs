using System.Globalization;
using MailKit.Security;

namespace ClimateLens.Cli.Mail;

/// <summary>
/// How mail goes out. Everything about the server comes from the environment, so that no password stands on a command line, in a nursery
/// file or in a log: CLIMATELENS_SMTP_SERVER (host or host:port), CLIMATELENS_SMTP_TLS (<c>starttls</c>, the usual one; <c>tls</c>; <c>none</c>),
/// CLIMATELENS_SMTP_USER and CLIMATELENS_SMTP_PASSWORD (both or neither), CLIMATELENS_MAIL_FROM.
/// </summary>
/// <param name="Host">Server.</param>
/// <param name="Port">Its port.</param>
/// <param name="Security">How the connection is kept private.</param>
/// <param name="User">User, or null.</param>
/// <param name="Password">Password, or null.</param>
/// <param name="From">Sender.</param>
internal sealed record MailSettings(string Host, int Port, SecureSocketOptions Security, string? User, string? Password, string From)
{
    private const string Server = "CLIMATELENS_SMTP_SERVER", Tls = "CLIMATELENS_SMTP_TLS", UserName = "CLIMATELENS_SMTP_USER", PasswordName = "CLIMATELENS_SMTP_PASSWORD", FromName = "CLIMATELENS_MAIL_FROM";

    /// <summary>Reads the environment; what is wrong with it is said without any value of it.</summary>
    /// <param name="variable">Value of a variable, or null.</param>
    /// <exception cref="MailException">Something is missing or wrong.</exception>
    public static MailSettings Read(Func<string, string?> variable)
    {
        string server = Given(variable, Server) ?? throw new MailException($"{Server} is not set; it names the mail server, for example mail.example.org:587.");
        string from = Given(variable, FromName) ?? throw new MailException($"{FromName} is not set; it is the address that mail comes from.");
        string tls = Given(variable, Tls) ?? "starttls";
        SecureSocketOptions security = tls switch
        {
            "starttls" => SecureSocketOptions.StartTls,
            "tls" => SecureSocketOptions.SslOnConnect,
            "none" => SecureSocketOptions.None,
            _ => throw new MailException($"{Tls} is none of starttls, tls, none."),
        };
        string? user = Given(variable, UserName), password = Given(variable, PasswordName);
        if ((user is null) != (password is null))
        {
            throw new MailException($"{UserName} and {PasswordName} go together; one of them is not set.");
        }

        if (user is not null && security == SecureSocketOptions.None && !IsThisMachine(server))
        {
            throw new MailException($"{Tls}=none would send the password in the clear; use starttls or tls.");
        }

        string[] parts = server.Split(':');
        int port = security == SecureSocketOptions.SslOnConnect ? 465 : 587;
        return parts.Length > 2 || (parts.Length == 2 && !(int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out port) && port is > 0 and < 65536))
            ? throw new MailException($"{Server} is not host or host:port.")
            : new MailSettings(parts[0], port, security, user, password, from);
    }

    private static bool IsThisMachine(string server) => server.Split(':')[0] is "localhost" or "127.0.0.1";

    private static string? Given(Func<string, string?> variable, string name) => variable(name) is { Length: > 0 } value ? value : null;

    /// <summary>The server; never user or password.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Host}:{Port}");
}

/// <summary>Mail could not be sent; the pages stand.</summary>
/// <param name="message">Why, without any secret.</param>
/// <param name="cause">The error below, or null.</param>
internal sealed class MailException(string message, Exception? cause = null) : Exception(message, cause);
