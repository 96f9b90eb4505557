using System.Text.Json;
using Microsoft.AspNetCore.Mvc;

namespace Companion.Server.Access;

/// <summary>Where a page hands in the key that it took out of its link.</summary>
internal static class Entrance
{
    /// <summary>The path; also the name of its rate limit.</summary>
    public const string Path = "/enter";

    /// <summary>
    /// Maps <c>POST /enter</c>: a good key is answered with 204 and the cookie of its hub. A page may name the hub that it wants, and
    /// is told if its key opens another.
    /// </summary>
    /// <param name="routes">Where to map it.</param>
    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapPost(Path, Enter)
            .RequireRateLimiting(Path)
            .WithMetadata(new RequestSizeLimitAttribute(1024));

    private static async Task Enter(HttpContext context)
    {
        var sent = await Read(context);
        if (sent?.Key is not { } key || context.RequestServices.GetRequiredService<IKeys>().Find(key) is not { } admission)
        {
            await PlainAnswer.Write(context, StatusCodes.Status403Forbidden, Sentences.UnknownKey);
            return;
        }

        if (sent.Hub is { } wanted && !HubPaths.IsOf(admission.Role, wanted))
        {
            await PlainAnswer.Write(context, StatusCodes.Status403Forbidden, Sentences.OtherKey);
            return;
        }

        KeyCookie.Set(context, admission.Role, key);
        context.Response.StatusCode = StatusCodes.Status204NoContent;
    }

    private static async Task<Entry?> Read(HttpContext context)
    {
        try
        {
            return await context.Request.ReadFromJsonAsync<Entry>(context.RequestAborted);
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException or BadHttpRequestException)
        {
            return null;
        }
    }

    private sealed record Entry(string? Key, string? Hub);
}
