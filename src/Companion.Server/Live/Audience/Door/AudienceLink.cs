using Companion.Server.Access;
using Companion.Server.Settings;
using Companion.Session.Audience;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Companion.Server.Live.Audience.Door;

/// <summary>Where viewers find the audience's page.</summary>
/// <param name="server">Knows where it listens.</param>
/// <param name="settings">Say how others reach it.</param>
/// <param name="keys">The keys.</param>
internal sealed class AudienceLink(IServer server, ServerSettings settings, KeyRing keys)
{
    /// <summary>The page's path.</summary>
    public const string Path = "/audience";

    /// <summary>Whether the address is one for other machines.</summary>
    public bool IsForOthers => settings.Audience.Address.Length > 0 || settings.IsOpenToOthers;

    /// <summary>The page's address, without a key.</summary>
    public string Address => Site + Path;

    /// <summary>The link to give out: with the audience's key in its fragment, unless the page opens without.</summary>
    /// <param name="door">Who may open the page.</param>
    public string With(AudienceDoor door) =>
        door == AudienceDoor.Open ? Address : $"{Address}#k={keys[AccessRole.Viewer].Reveal()}";

    private string Site => settings.Audience.Address.Length > 0
        ? new Uri(settings.Audience.Address).GetLeftPart(UriPartial.Authority)
        : settings.IsOpenToOthers
            ? new UriBuilder(Uri.UriSchemeHttps, settings.HostForOthers, PortOf(Uri.UriSchemeHttps)).Uri.GetLeftPart(UriPartial.Authority)
            : $"http://localhost:{PortOf(Uri.UriSchemeHttp)}";

    private int PortOf(string scheme) => (server.Features.Get<IServerAddressesFeature>()?.Addresses ?? [])
        .Where(address => address.StartsWith(scheme + "://", StringComparison.Ordinal))
        .Select(address => BindingAddress.Parse(address).Port)
        .FirstOrDefault();
}
