namespace Companion.Server.Access;

/// <summary>The headers that every answer carries.</summary>
/// <param name="next">What comes after.</param>
internal sealed class SecurityHeaders(RequestDelegate next)
{
    // The pages load nothing that is not ours, send forms nowhere and are framed by nobody; a page source of broadcast software
    // opens the overlay at top level.
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self'; connect-src 'self'; "
        + "base-uri 'none'; form-action 'none'; object-src 'none'; frame-ancestors 'none'";

    // The one page that may ask the browser for a picture of the screen.
    private static readonly PathString FollowsScreen = "/presenter";

    /// <summary>Sets the headers.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = context.Request.Path.StartsWithSegments(FollowsScreen) ? "display-capture=(self)" : "display-capture=()";
        headers.CacheControl = "no-store";
        return next(context);
    }
}
