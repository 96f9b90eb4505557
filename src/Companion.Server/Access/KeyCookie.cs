using System.Globalization;

namespace Companion.Server.Access;

/// <summary>
/// The cookie that carries a key to its hub, since a page can set no header on a WebSocket. No script can read it, and no other
/// site's page can have it sent. Each role's hub has its own, so that pages of several roles can be open in one browser.
/// </summary>
internal static class KeyCookie
{
    /// <summary>The cookie's name at a hub. It names the port, since browsers send one host's cookies to every port of it.</summary>
    /// <param name="hub">The hub's path.</param>
    /// <param name="host">The address that the page was opened by.</param>
    public static string NameFor(PathString hub, HostString host) =>
        $"companion-{hub.Value!.Split('/')[^1]}-{host.Port?.ToString(CultureInfo.InvariantCulture) ?? "usual"}";

    /// <summary>Puts a good key into the cookie of its hub, until the browser closes.</summary>
    /// <param name="context">The request that brought the key.</param>
    /// <param name="role">Whose key it is.</param>
    /// <param name="key">The key.</param>
    public static void Set(HttpContext context, AccessRole role, string key)
    {
        var hub = HubPaths.Of(role);
        context.Response.Cookies.Append(NameFor(hub, context.Request.Host), key, new CookieOptions
        {
            HttpOnly = true,
            IsEssential = true,
            Path = hub,
            SameSite = SameSiteMode.Strict,
            Secure = IsSecure(context.Request),
        });
    }

    /// <summary>The key that came in the cookie of the hub asked for, or null.</summary>
    /// <param name="request">A request to a hub.</param>
    public static string? Of(HttpRequest request)
    {
        foreach (var hub in HubPaths.Each)
        {
            if (request.Path.StartsWithSegments(hub))
                return request.Cookies[NameFor(hub, request.Host)];
        }

        return null;
    }

    // The page's own address counts too: a proxy may have ended TLS on the way.
    private static bool IsSecure(HttpRequest request) =>
        request.IsHttps || request.Headers.Origin.ToString().StartsWith("https://", StringComparison.OrdinalIgnoreCase);
}
