using Companion.Server.Access;
using Companion.Server.Data;
using Companion.Server.Settings;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Access;

public sealed class ServerCertificateTests : IDisposable
{
    private const string Password = "a password";

    private readonly TemporaryFolder _folder = new();
    private readonly TestCertificate _certificate = new(days: 30);

    [Fact]
    public async Task A_pem_file_with_its_key_in_another_is_read()
    {
        await CertificateFile.WriteOpen(_folder.In("cert.pem"), _certificate.Pem);
        await CertificateFile.WriteSecret(_folder.In("key.pem"), _certificate.KeyPem);

        Assert.Equal($"CN={TestCertificate.Name}", Load(new() { Certificate = "cert.pem", Key = "key.pem" }));
    }

    [Fact]
    public async Task What_stands_between_it_and_its_issuer_is_sent_with_it()
    {
        using var issuer = new TestCertificate();
        await CertificateFile.WriteOpen(_folder.In("cert.pem"), $"{_certificate.Pem}\n{issuer.Pem}\n");
        await CertificateFile.WriteSecret(_folder.In("key.pem"), _certificate.KeyPem);

        Assert.Equal($"CN={TestCertificate.Name}", Load(new() { Certificate = "cert.pem", Key = "key.pem" }, between: 1));
    }

    [Fact]
    public async Task An_encrypted_key_is_opened_by_the_password_in_a_closed_file()
    {
        await CertificateFile.WriteOpen(_folder.In("cert.pem"), _certificate.Pem);
        await CertificateFile.WriteSecret(_folder.In("key.pem"), _certificate.EncryptedKeyPem(Password));
        await CertificateFile.WriteSecret(_folder.In("password"), Password + "\n");

        Assert.Equal(
            $"CN={TestCertificate.Name}", Load(new() { Certificate = "cert.pem", Key = "key.pem", PasswordFile = "password" }));
    }

    [Fact]
    public async Task A_pkcs12_file_is_opened_by_its_password()
    {
        await CertificateFile.WriteOpen(_folder.In("studio.pfx"), _certificate.Pkcs12(Password));
        await CertificateFile.WriteSecret(_folder.In("password"), Password);

        Assert.Equal($"CN={TestCertificate.Name}", Load(new() { Certificate = "studio.pfx", PasswordFile = "password" }));
        await CertificateFile.WriteSecret(_folder.In("password"), "another password");
        Assert.StartsWith(
            $"The certificate {_folder.In("studio.pfx")} cannot be read with its key:",
            Refused(new() { Certificate = "studio.pfx", PasswordFile = "password" }),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("key.pem")]
    [InlineData("password")]
    public async Task A_secret_that_others_can_read_is_refused(string open)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Files have no modes here.");
        await CertificateFile.WriteOpen(_folder.In("cert.pem"), _certificate.Pem);
        await CertificateFile.WriteSecret(_folder.In("key.pem"), _certificate.EncryptedKeyPem(Password));
        await CertificateFile.WriteSecret(_folder.In("password"), Password);
        await CertificateFile.WriteOpen(_folder.In(open), await File.ReadAllTextAsync(_folder.In(open), TestContext.Current.CancellationToken));

        Assert.Equal(
            $"Other users of this machine can read {_folder.In(open)}, which is a secret: close it to them (chmod 600).",
            Refused(new() { Certificate = "cert.pem", Key = "key.pem", PasswordFile = "password" }));
    }

    [Theory]
    [InlineData(-2, TestCertificate.Name, "is good from")]
    [InlineData(40, TestCertificate.Name, "was good until")]
    [InlineData(0, "desk.example", "does not name desk.example")]
    public async Task One_that_browsers_would_warn_of_is_refused(int daysFromNow, string host, string reason)
    {
        await CertificateFile.WriteSecret(_folder.In("cert.pem"), _certificate.Pem + "\n" + _certificate.KeyPem);

        Assert.StartsWith(
            $"The certificate cert.pem {reason}", Refused(new() { Certificate = "cert.pem" }, host, daysFromNow), StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_that_is_not_there_or_has_another_key_is_refused()
    {
        Assert.Contains("cannot be read", Refused(new() { Certificate = "no.pem" }), StringComparison.Ordinal);

        using var other = new TestCertificate();
        await CertificateFile.WriteOpen(_folder.In("cert.pem"), _certificate.Pem);
        await CertificateFile.WriteSecret(_folder.In("key.pem"), other.KeyPem);
        Assert.Contains("cannot be read", Refused(new() { Certificate = "cert.pem", Key = "key.pem" }), StringComparison.Ordinal);
    }

    public void Dispose()
    {
        _folder.Dispose();
        _certificate.Dispose();
    }

    private string Load(TlsSettings tls, string host = TestCertificate.Name, int daysFromNow = 0, int between = 0)
    {
        var settings = new ServerSettings { Hosts = [host], Listen = "0.0.0.0", Tls = tls };
        var now = TimeProvider.System.GetUtcNow().AddDays(daysFromNow);
        var (certificate, chain) = new ServerCertificate(DataFolder.Open(_folder.Path), settings).Load(now);
        using (certificate)
        {
            Assert.True(certificate.HasPrivateKey);
            Assert.Equal(between, chain.Count);
            return certificate.Subject;
        }
    }

    private string Refused(TlsSettings tls, string host = TestCertificate.Name, int daysFromNow = 0) =>
        Assert.Throws<PlainException>(() => Load(tls, host, daysFromNow)).Message;
}
