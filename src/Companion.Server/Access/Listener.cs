using System.Net;
using Companion.Server.Data;
using Companion.Server.Settings;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.Server.Kestrel.Https;

namespace Companion.Server.Access;

/// <summary>Where the server listens: to this machine and, by TLS alone, to others where the settings say so.</summary>
internal static class Listener
{
    /// <summary>Adds the web server.</summary>
    /// <param name="builder">Where to.</param>
    /// <param name="folder">Where the certificate's path begins.</param>
    /// <param name="settings">Name ports, address and certificate.</param>
    /// <exception cref="PlainException">The certificate cannot be used.</exception>
    public static void AddListener(this WebApplicationBuilder builder, DataFolder folder, ServerSettings settings)
    {
        var tls = settings.IsOpenToOthers ? Tls(folder, settings) : null;
        builder.Services.AddRouting();
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 16 * 1024;
            // "localhost" is two addresses, which cannot both be given the same free port.
            if (settings.Port == 0)
                kestrel.Listen(IPAddress.Loopback, 0);
            else
                kestrel.ListenLocalhost(settings.Port);
            if (tls is not null)
                kestrel.ListenToOthers(settings, tls);
        });
    }

    // HTTP/1.1 as on this machine: over HTTP/2 a socket is opened by another method, and one way is enough to watch.
    private static void ListenToOthers(this KestrelServerOptions kestrel, ServerSettings settings, HttpsConnectionAdapterOptions tls) =>
        kestrel.Listen(IPAddress.Parse(settings.Listen), settings.Tls.Port, others =>
        {
            others.Protocols = HttpProtocols.Http1;
            others.UseHttps(tls);
        });

    private static HttpsConnectionAdapterOptions Tls(DataFolder folder, ServerSettings settings)
    {
        var (certificate, chain) = new ServerCertificate(folder, settings).Load(TimeProvider.System.GetUtcNow());
        return new() { ServerCertificate = certificate, ServerCertificateChain = chain };
    }
}
