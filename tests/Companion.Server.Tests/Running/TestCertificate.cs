using System.Net;
using System.Net.Security;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Companion.Server.Tests.Running;

/// <summary>A certificate that a test signs itself, for a name and for 127.0.0.2, an address of this machine that is not localhost.</summary>
internal sealed class TestCertificate : IDisposable
{
    public const string Name = "studio.example";

    public static readonly IPAddress Address = IPAddress.Parse("127.0.0.2");

    private readonly X509Certificate2 _certificate;
    private readonly ECDsa _key = ECDsa.Create(ECCurve.NamedCurves.nistP256);

    /// <summary>Signs one that begins a day ago and lasts this many days from then.</summary>
    public TestCertificate(int days = 30)
    {
        var request = new CertificateRequest($"CN={Name}", _key, HashAlgorithmName.SHA256);
        var names = new SubjectAlternativeNameBuilder();
        names.AddDnsName(Name);
        names.AddIpAddress(Address);
        request.CertificateExtensions.Add(names.Build());
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, false, 0, true));
        var begin = TimeProvider.System.GetUtcNow().AddDays(-1);
        _certificate = request.CreateSelfSigned(begin, begin.AddDays(days));
    }

    public string Pem => _certificate.ExportCertificatePem();

    public string KeyPem => _key.ExportPkcs8PrivateKeyPem();

    public byte[] Pkcs12(string? password) => _certificate.Export(X509ContentType.Pkcs12, password);

    public string EncryptedKeyPem(string password) => _key.ExportEncryptedPkcs8PrivateKeyPem(
        password, new(PbeEncryptionAlgorithm.Aes256Cbc, HashAlgorithmName.SHA256, iterationCount: 1000));

    /// <summary>A handler for a caller that trusts this certificate and no other, and finds the name at the address.</summary>
    /// <param name="port">The port there, whatever port the caller names.</param>
    /// <param name="isCareless">Whether the caller goes on where the certificate does not name the host asked for.</param>
    public SocketsHttpHandler Trusting(int port, bool isCareless = false) => new()
    {
        SslOptions =
        {
            CertificateChainPolicy = new()
            {
                TrustMode = X509ChainTrustMode.CustomRootTrust,
                CustomTrustStore = { _certificate },
                RevocationMode = X509RevocationMode.NoCheck,
            },
            RemoteCertificateValidationCallback = (_, _, _, faults) =>
                (isCareless ? faults & ~SslPolicyErrors.RemoteCertificateNameMismatch : faults) == SslPolicyErrors.None,
        },
        ConnectCallback = async (_, stop) =>
        {
            var socket = new System.Net.Sockets.Socket(System.Net.Sockets.SocketType.Stream, System.Net.Sockets.ProtocolType.Tcp);
            await socket.ConnectAsync(Address, port, stop);
            return new System.Net.Sockets.NetworkStream(socket, ownsSocket: true);
        },
    };

    public void Dispose()
    {
        _certificate.Dispose();
        _key.Dispose();
    }
}
