using Microsoft.Net.Http.Headers;

namespace Companion.Server.Access;

/// <summary>
/// Lets only our own pages reach a hub or change anything. A browser names the page's site in <c>Origin</c> on every WebSocket and
/// every POST; a WebSocket is open to pages of all sites otherwise.
/// </summary>
/// <param name="next">What comes after.</param>
internal sealed class OriginCheck(RequestDelegate next)
{
    /// <summary>Lets the request on or refuses it.</summary>
    public Task InvokeAsync(HttpContext context) => !NeedsOrigin(context.Request) || IsOwn(context.Request) || IsFromTool(context.Request)
        ? next(context)
        : PlainAnswer.Write(context, StatusCodes.Status403Forbidden, Sentences.ForeignOrigin);

    private static bool NeedsOrigin(HttpRequest request) =>
        request.Path.StartsWithSegments(HubPaths.All)
        || !(HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method) || HttpMethods.IsOptions(request.Method));

    // No browser leaves Origin out of a POST, whatever page it comes from.
    private static bool IsFromTool(HttpRequest request) =>
        request.Path == ToolPaths.ChatMessages && !request.Headers.ContainsKey(HeaderNames.Origin);

    // The scheme is not compared: behind a proxy that ends TLS the page's is https and ours http.
    private static bool IsOwn(HttpRequest request) =>
        Uri.TryCreate(request.Headers[HeaderNames.Origin], UriKind.Absolute, out var origin)
        && (origin.Scheme == Uri.UriSchemeHttp || origin.Scheme == Uri.UriSchemeHttps)
        && string.Equals(origin.Authority, request.Host.Value, StringComparison.OrdinalIgnoreCase);
}
