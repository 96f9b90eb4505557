using System.Net;
using Companion.Server.Settings;

namespace Companion.Server.Access;

/// <summary>Where the server listens: on this machine alone.</summary>
internal static class Listener
{
    /// <summary>Adds the web server on the loopback addresses.</summary>
    /// <param name="builder">Where to.</param>
    /// <param name="settings">Names the port.</param>
    public static void AddListener(this WebApplicationBuilder builder, ServerSettings settings)
    {
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
        });
    }
}
