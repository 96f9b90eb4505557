using System.Diagnostics;
using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Chat.Servers;

/// <summary>ngIRCd: the old protocol and nothing beyond it, with nicks of nine letters; TLS on a second port.</summary>
internal sealed class Ngircd : IrcServer
{
    /// <summary>Where clients connect over TLS.</summary>
    public int TlsPort { get; } = FreePorts.Next();

    /// <summary>The certificate that it shows, as a PEM file.</summary>
    public string Certificate => Folder.In("certificate.pem");

    /// <summary>The password that all must name; empty for none.</summary>
    public string Password { get; init; } = "";

    protected override Process Launch()
    {
        WriteCertificate();
        var configuration = Folder.In("ngircd.conf");
        File.WriteAllText(configuration, NgircdConfiguration.Text(Port, password: Password, sections: $"""
            [SSL]
            CertFile = {Certificate}
            KeyFile = {Folder.In("key.pem")}
            Ports = {TlsPort}
            """));
        return DebianPackages.Irc.Start("ngircd", "--nodaemon", "--config", configuration);
    }

    private void WriteCertificate()
    {
        using var key = RSA.Create(2048);
        var request = new CertificateRequest("CN=localhost", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        var names = new SubjectAlternativeNameBuilder();
        names.AddDnsName("localhost");
        names.AddIpAddress(IPAddress.Loopback);
        request.CertificateExtensions.Add(names.Build());
        var now = TimeProvider.System.GetUtcNow();
        using var certificate = request.CreateSelfSigned(now.AddDays(-1), now.AddDays(1));
        File.WriteAllText(Certificate, certificate.ExportCertificatePem());
        File.WriteAllText(Folder.In("key.pem"), key.ExportPkcs8PrivateKeyPem());
    }
}
