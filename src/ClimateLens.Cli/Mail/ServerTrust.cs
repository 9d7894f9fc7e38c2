using System.Net.Security;
using System.Security.Cryptography.X509Certificates;

namespace ClimateLens.Cli.Mail;

/// <summary>
/// Whether a mail server is who it says, by the system's own rules (RFC 5280, RFC 6125), and why not. Lists of certificates that were taken
/// back are not looked at: they would have to be fetched, and authorities of a firm's own seldom have one.
/// </summary>
internal sealed class ServerTrust
{
    /// <summary>What is wrong with the server's certificate; null where nothing is, or none was shown.</summary>
    public string? Fault { get; private set; }

    /// <summary>Whether a certificate is taken.</summary>
    public bool Takes(object sender, X509Certificate? certificate, X509Chain? chain, SslPolicyErrors errors)
    {
        Fault = errors == SslPolicyErrors.None ? null : $"the server's certificate is not trusted: {Reason(certificate, chain, errors)}";
        return Fault is null;
    }

    private static string Reason(X509Certificate? certificate, X509Chain? chain, SslPolicyErrors errors)
    {
        X509ChainStatusFlags status = chain?.ChainStatus.Aggregate(X509ChainStatusFlags.NoError, (all, s) => all | s.Status) ?? X509ChainStatusFlags.NoError;
        return certificate is null || errors.HasFlag(SslPolicyErrors.RemoteCertificateNotAvailable) ? "it shows none"
            : errors.HasFlag(SslPolicyErrors.RemoteCertificateNameMismatch) ? "it is for another name; CLIMATELENS_SMTP_SERVER must be a name that stands in it"
            : status.HasFlag(X509ChainStatusFlags.NotTimeValid) ? $"it is valid {Days(certificate)} only; look at the system's clock too"
            : status.HasFlag(X509ChainStatusFlags.UntrustedRoot) || status.HasFlag(X509ChainStatusFlags.PartialChain) ? "no authority that this machine trusts gave it; give the machine the authority's certificate, as its system wants it"
            : $"{status}";
    }

    private static string Days(X509Certificate certificate)
    {
        using X509Certificate2 dated = new(certificate);
        return FormattableString.Invariant($"from {dated.NotBefore:yyyy-MM-dd} to {dated.NotAfter:yyyy-MM-dd}");
    }
}
