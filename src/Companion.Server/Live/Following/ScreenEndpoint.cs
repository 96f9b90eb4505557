using System.Globalization;
using Companion.Server.Access;
using Companion.Server.Live.Transport;
using Companion.Server.Wire;
using Companion.Sight;
using Microsoft.AspNetCore.Mvc;

namespace Companion.Server.Live.Following;

/// <summary>
/// Where the presenter's panel posts pictures of the grid, since one is larger than a hub takes. Under the presenter's hub, and so
/// with its cookie and behind its checks. A picture is in memory while it is read, and nowhere else.
/// </summary>
internal sealed class ScreenEndpoint
{
    // A crop of 720 px is some 100 kB as PNG, a whole screen up to some megabytes.
    private const int LargestCrop = 1024 * 1024;
    private const int LargestWhole = 12 * 1024 * 1024;

    private readonly ScreenDesk _desk;
    private readonly TokenBucket _looks;
    private readonly TokenBucket _searches;

    /// <summary>Makes the endpoint.</summary>
    /// <param name="desk">Follows the screen.</param>
    /// <param name="clock">The clock.</param>
    public ScreenEndpoint(ScreenDesk desk, TimeProvider clock) =>
        (_desk, _looks, _searches) = (desk, new(perSecond: 15, burst: 30, clock), new(perSecond: 1, burst: 5, clock));

    /// <summary>Maps both ways in.</summary>
    /// <param name="routes">Where to map them.</param>
    public static void Map(IEndpointRouteBuilder routes)
    {
        Map(HubPaths.Screen, LargestCrop, (endpoint, context) => endpoint.Look(context));
        Map(HubPaths.ScreenGrid, LargestWhole, (endpoint, context) => endpoint.Find(context));

        void Map(string path, int largest, Func<ScreenEndpoint, HttpContext, Task> take) => routes
            .MapPost(path, context => take(context.RequestServices.GetRequiredService<ScreenEndpoint>(), context))
            .WithMetadata(new RequestSizeLimitAttribute(largest))
            .RequireAuthorization(Policies.Presenter);
    }

    private async Task Look(HttpContext context)
    {
        var page = context.Request.Query["page"].ToString();
        if (!_desk.Follows(page))
            await PlainAnswer.Write(context, StatusCodes.Status409Conflict, ScreenSentences.NotFollowing);
        else if (!_looks.Take(1))
            await PlainAnswer.Write(context, StatusCodes.Status429TooManyRequests, ScreenSentences.TooMany);
        else if (await Picture(context) is not { } frame)
            await Refuse(context);
        else if (Corners(context.Request.Query["corners"].ToString(), frame) is not { } place)
            await PlainAnswer.Write(context, StatusCodes.Status400BadRequest, ScreenSentences.NoCorners);
        else if (await _desk.Look(page, frame, place) is not { } view)
            await PlainAnswer.Write(context, StatusCodes.Status429TooManyRequests, ScreenSentences.TooMany);
        else
            await context.Response.WriteAsJsonAsync(view, WireJson.Options, context.RequestAborted);
    }

    private async Task Find(HttpContext context)
    {
        if (!_searches.Take(1))
            await PlainAnswer.Write(context, StatusCodes.Status429TooManyRequests, ScreenSentences.TooMany);
        else if (await Picture(context) is not { } frame)
            await Refuse(context);
        else if (await _desk.Find(frame) is not (true, var place))
            await PlainAnswer.Write(context, StatusCodes.Status429TooManyRequests, ScreenSentences.TooMany);
        else
            await context.Response.WriteAsJsonAsync(new GridWire(place is null ? null : GridWire.Numbers(place)), WireJson.Options, context.RequestAborted);
    }

    private static Task Refuse(HttpContext context) =>
        PlainAnswer.Write(context, StatusCodes.Status400BadRequest, ScreenSentences.NoPicture);

    private static async Task<Frame?> Picture(HttpContext context)
    {
        try
        {
            using var body = new MemoryStream();
            await context.Request.Body.CopyToAsync(body, context.RequestAborted);
            return Frame.Decode(body.GetBuffer().AsSpan(0, (int)body.Length));
        }
        catch (BadHttpRequestException)
        {
            return null; // larger than it may be, or cut off
        }
    }

    private static GridPlace? Corners(string text, Frame frame)
    {
        var numbers = text.Split(',');
        var corners = new float[8];
        for (var at = 0; at < corners.Length; at++)
        {
            if (numbers.Length != corners.Length || !float.TryParse(numbers[at], NumberStyles.Float, CultureInfo.InvariantCulture, out corners[at])
                || !(corners[at] >= 0 && corners[at] <= (at % 2 == 0 ? frame.Width : frame.Height)))
                return null;
        }

        return new(new(corners[0], corners[1]), new(corners[2], corners[3]), new(corners[4], corners[5]), new(corners[6], corners[7]));
    }
}
