using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Companion.Server.Data;
using Companion.Server.Settings;

namespace Companion.Server.Access;

/// <summary>The certificate that the settings name, looked at before anybody relies on it.</summary>
/// <param name="folder">Where paths begin that are not absolute.</param>
/// <param name="settings">What names it.</param>
internal sealed class ServerCertificate(DataFolder folder, ServerSettings settings)
{
    private readonly TlsSettings _tls = settings.Tls;

    /// <summary>Reads the certificate with its private key, and what stands between it and its issuer.</summary>
    /// <param name="now">The time, by which it must be good.</param>
    /// <exception cref="PlainException">It cannot be read or used.</exception>
    public (X509Certificate2 Certificate, X509Certificate2Collection Chain) Load(DateTimeOffset now)
    {
        var (certificate, chain) = Read();
        if (WhyUseless(certificate, now) is not { } reason)
            return (certificate, chain);
        certificate.Dispose();
        throw new PlainException($"The certificate {_tls.Certificate} {reason}");
    }

    private string? WhyUseless(X509Certificate2 certificate, DateTimeOffset now)
    {
        if (!certificate.HasPrivateKey)
            return "has no private key: name the key's file under tls.";
        if (now < certificate.NotBefore)
            return $"is good from {Day(certificate.NotBefore)} only: wait, or name another.";
        if (now > certificate.NotAfter)
            return $"was good until {Day(certificate.NotAfter)}: renew it.";
        // Whoever has learned to click a browser's warning away clicks a real one away too.
        return certificate.MatchesHostname(settings.HostForOthers, allowWildcards: true, allowCommonName: false)
            ? null
            : $"does not name {settings.HostForOthers}: name another one, or put a name that it has first among hosts.";
    }

    private (X509Certificate2 Certificate, X509Certificate2Collection Chain) Read()
    {
        var path = At(_tls.Certificate);
        try
        {
            var password = Password();
            return Path.GetExtension(path).ToUpperInvariant() is ".PFX" or ".P12" ? ReadPkcs12(path, password) : ReadPem(path, password);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or CryptographicException or ArgumentException)
        {
            throw new PlainException(
                $"The certificate {path} cannot be read with its key: {fault.Message} Look at tls in companion.json.", fault);
        }
    }

    private static (X509Certificate2 Certificate, X509Certificate2Collection Chain) ReadPkcs12(string path, string? password)
    {
        var all = X509CertificateLoader.LoadPkcs12CollectionFromFile(path, password);
        var own = all.FirstOrDefault(each => each.HasPrivateKey) ?? throw new CryptographicException("It holds no private key.");
        all.Remove(own);
        return (own, all);
    }

    private (X509Certificate2 Certificate, X509Certificate2Collection Chain) ReadPem(string path, string? password)
    {
        var key = Closed(_tls.Key.Length > 0 ? _tls.Key : _tls.Certificate);
        using var read = password is null
            ? X509Certificate2.CreateFromPemFile(path, key)
            : X509Certificate2.CreateFromEncryptedPemFile(path, password, key);
        var chain = new X509Certificate2Collection();
        chain.ImportFromPemFile(path);
        chain.RemoveAt(0);
        // Windows takes part in TLS only with keys that it has in a store of its own, which a detour through PKCS #12 brings about.
        return (X509CertificateLoader.LoadPkcs12(read.Export(X509ContentType.Pkcs12), null), chain);
    }

    private string? Password()
    {
        if (_tls.PasswordFile.Length > 0)
            return File.ReadLines(Closed(_tls.PasswordFile)).FirstOrDefault();
        return Environment.GetEnvironmentVariable(TlsSettings.PasswordVariable) is { Length: > 0 } password ? password : null;
    }

    private string Closed(string name)
    {
        var path = At(name);
        return !File.Exists(path) || !OwnerOnly.IsOpenToOthers(path)
            ? path
            : throw new PlainException($"Other users of this machine can read {path}, which is a secret: close it to them (chmod 600).");
    }

    private string At(string name) => Path.GetFullPath(name, folder.Path);

    private static string Day(DateTime time) => time.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
