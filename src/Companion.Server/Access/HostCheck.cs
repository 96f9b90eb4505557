using System.Net;
using Companion.Server.Settings;

namespace Companion.Server.Access;

/// <summary>
/// Answers only to loopback names and to the names and the address in the settings: otherwise a page of another site whose name was pointed at this
/// machine could read everything.
/// </summary>
/// <param name="next">What comes after.</param>
/// <param name="settings">Names the other hosts.</param>
internal sealed class HostCheck(RequestDelegate next, ServerSettings settings)
{
    /// <summary>Lets the request on or refuses it.</summary>
    public Task InvokeAsync(HttpContext context) => IsOurs(context.Request.Host.Host)
        ? next(context)
        : PlainAnswer.Write(context, StatusCodes.Status400BadRequest, Sentences.ForeignHost);

    private bool IsOurs(string host) =>
        string.Equals(host, "localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host, out var address) && IPAddress.IsLoopback(address))
        || settings.Hosts.Contains(host, StringComparer.OrdinalIgnoreCase)
        || string.Equals(host, settings.Audience.Host, StringComparison.OrdinalIgnoreCase)
        || (settings.IsOpenToOthers && host.Trim('[', ']') == settings.Listen);
}
