using Companion.Server.Access;
using Companion.Server.Shows;
using Companion.Session.Shows.Files;
using Companion.Session.Views;
using Microsoft.AspNetCore.Mvc;

namespace Companion.Server.Live.Desk;

/// <summary>Where the presenter's page sends a show file to be kept: too large for a hub, and whole before it is looked at.</summary>
internal static class ImportEndpoint
{
    /// <summary>The path, behind the presenter's hub so that its cookie is sent there.</summary>
    public const string Path = HubPaths.Presenter + "/shows";

    /// <summary>Maps <c>POST</c>: 204 where it was kept, 400 with the reasons where it was not.</summary>
    /// <param name="routes">Where to map it.</param>
    public static void Map(IEndpointRouteBuilder routes) => routes.MapPost(Path, Import)
        .RequireAuthorization(Policies.Presenter)
        .WithMetadata(new RequestSizeLimitAttribute(ShowFile.LargestBytes));

    private static async Task Import(HttpContext context)
    {
        try
        {
            using var bytes = new MemoryStream();
            await context.Request.Body.CopyToAsync(bytes, context.RequestAborted);
            var services = context.RequestServices;
            await Task.Run(() => services.GetRequiredService<ShowLibrary>().Import(bytes.ToArray(), services.GetRequiredService<Voice>()), context.RequestAborted);
            context.Response.StatusCode = StatusCodes.Status204NoContent;
        }
        catch (PlainException plain)
        {
            await PlainAnswer.Write(context, StatusCodes.Status400BadRequest, plain.Message);
        }
        catch (BadHttpRequestException tooLarge)
        {
            await PlainAnswer.Write(context, tooLarge.StatusCode, "A show file has at most 64 MB: this is another file.");
        }
    }
}
