using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace ClimateLens.EndToEnd.Tests.Program;

/// <summary>An authority of our own and the certificates that it gives to mail servers.</summary>
internal sealed class Certificates : IDisposable
{
    private static readonly DateTimeOffset Long = DateTimeOffset.UtcNow.AddDays(-60);
    private readonly X509Certificate2 _authority;

    public Certificates()
    {
        using ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        CertificateRequest request = new("CN=An authority for tests", key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, false, 0, true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.KeyCertSign | X509KeyUsageFlags.CrlSign, true));
        _authority = request.CreateSelfSigned(Long, DateTimeOffset.UtcNow.AddDays(60));
        OfThisMachine = Give("localhost", IPAddress.Loopback, DateTimeOffset.UtcNow.AddDays(30));
        OfAnother = Give("mail.example.org", null, DateTimeOffset.UtcNow.AddDays(30));
        Expired = Give("localhost", IPAddress.Loopback, DateTimeOffset.UtcNow.AddDays(-30));
    }

    /// <summary>The authority, as a file that OpenSSL trusts.</summary>
    public string AuthorityPem => _authority.ExportCertificatePem();

    public X509Certificate2 OfThisMachine { get; }

    public X509Certificate2 OfAnother { get; }

    public X509Certificate2 Expired { get; }

    public void Dispose()
    {
        OfThisMachine.Dispose();
        OfAnother.Dispose();
        Expired.Dispose();
        _authority.Dispose();
    }

    private X509Certificate2 Give(string name, IPAddress? address, DateTimeOffset until)
    {
        using ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        CertificateRequest request = new($"CN={name}", key, HashAlgorithmName.SHA256);
        SubjectAlternativeNameBuilder names = new();
        names.AddDnsName(name);
        if (address is not null)
        {
            names.AddIpAddress(address);
        }

        request.CertificateExtensions.Add(names.Build());
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid("1.3.6.1.5.5.7.3.1")], false)); // a server
        using X509Certificate2 given = request.Create(_authority, Long, until, RandomNumberGenerator.GetBytes(8));
        using X509Certificate2 withKey = given.CopyWithPrivateKey(key);
        return X509CertificateLoader.LoadPkcs12(withKey.Export(X509ContentType.Pfx), null);
    }
}
