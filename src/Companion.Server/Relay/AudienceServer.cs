using Companion.Server.Access;
using Companion.Server.Data;
using Companion.Server.Live.Audience;
using Companion.Server.Live.Transport;
using Companion.Server.Pages;
using Companion.Server.Settings;

namespace Companion.Server.Relay;

/// <summary>
/// A server for viewers alone, which follows the presenter's. It has the audience's page and hub and nothing else: no session, no event
/// log, no panel, no key.
/// </summary>
internal static class AudienceServer
{
    /// <summary>Puts the server together.</summary>
    /// <param name="folder">Its settings and log files.</param>
    /// <param name="settings">The settings, which name a Redis server.</param>
    /// <param name="adjust">Changes to the parts, as tests make them; null for none.</param>
    /// <exception cref="PlainException">A file that it needs cannot be used.</exception>
    public static WebApplication Build(DataFolder folder, ServerSettings settings, Action<WebApplicationBuilder>? adjust = null)
    {
        var builder = Program.Begin(folder, settings);
        builder.Services.AddAccess();
        builder.Services.AddHubs();
        builder.Services.AddAudience().AddFollowing(folder, settings);
        adjust?.Invoke(builder);

        var app = builder.Build();
        app.UseAccess();
        app.UseAudience();
        app.MapAccess();
        app.MapAudience();
        app.MapPages(Page.Audience);
        return app;
    }
}
