using System.Globalization;
using Companion.Server.Access;
using Companion.Server.Live.Transport;
using Companion.Server.Wire;
using Companion.Sight;
using Microsoft.AspNetCore.Mvc;

namespace Companion.Server.Live.Following;

/// <summary>
/// Where the presenter's panel posts pictures of the grid, since one is larger than a hub takes. Under the presenter's hub, and so
/// with its cookie and behind its checks. A picture is in memory, and nowhere else.
/// </summary>
internal sealed class ScreenEndpoint
{
    // A crop of 720 px is some 100 kB as PNG, a whole screen up to some megabytes.
    private const int LargestCrop = 1024 * 1024;
    private const int LargestWhole = 12 * 1024 * 1024;

    // In pixels: the page lets nobody draw a grid of less than 90, of which rounding may take a little.
    private const float LeastSide = 80;

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
        else if (await Sent(context) is not { } sent)
            await Refuse(context);
        else
            await Look(context, page, sent);
    }

    private async Task Look(HttpContext context, string page, SentPicture sent)
    {
        Frame? frame;
        try
        {
            frame = _desk.Whole(page, sent);
        }
        catch (FormatException)
        {
            await Refuse(context);
            return;
        }

        if (frame is null)
            await PlainAnswer.Write(context, StatusCodes.Status412PreconditionFailed, ScreenSentences.SendWhole);
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

    private static async Task<Frame?> Picture(HttpContext context) => await Body(context) is { } body ? Frame.Decode(body.Span) : null;

    // An empty body is no picture, but for a change: nothing has changed then.
    private static async Task<SentPicture?> Sent(HttpContext context)
    {
        if (await Body(context) is not { } body)
            return null;
        var part = body.IsEmpty ? null : Frame.Decode(body.Span);
        if (part is null && !body.IsEmpty)
            return null;
        var query = context.Request.Query;
        _ = int.TryParse(query["picture"], NumberStyles.None, CultureInfo.InvariantCulture, out var number);
        if (query["of"].ToString() is not { Length: > 0 } of)
            return new(number, null, 0, 0, part);
        return Numbers<int>(of, 1) is [var earlier] && Numbers<int>(query["at"].ToString(), 2) is [var left, var top]
            ? new(number, earlier, left, top, part)
            : null;
    }

    private static async Task<ReadOnlyMemory<byte>?> Body(HttpContext context)
    {
        try
        {
            using var body = new MemoryStream();
            await context.Request.Body.CopyToAsync(body, context.RequestAborted);
            return body.GetBuffer().AsMemory(0, (int)body.Length);
        }
        catch (BadHttpRequestException)
        {
            return null; // larger than it may be, or cut off
        }
    }

    private static GridPlace? Corners(string text, Frame frame)
    {
        if (Numbers<float>(text, 8) is not { } at || at.Where((number, index) => !(number >= 0 && number <= (index % 2 == 0 ? frame.Width : frame.Height))).Any())
            return null;
        var place = new GridPlace(new(at[0], at[1]), new(at[2], at[3]), new(at[4], at[5]), new(at[6], at[7]));
        return IsWide(place.TopLeft.X, place.TopRight.X) && IsWide(place.BottomLeft.X, place.BottomRight.X)
            && IsWide(place.TopLeft.Y, place.BottomLeft.Y) && IsWide(place.TopRight.Y, place.BottomRight.Y)
            ? place
            : null;

        static bool IsWide(float from, float to) => to - from >= LeastSide;
    }

    private static T[]? Numbers<T>(string text, int count)
        where T : struct, ISpanParsable<T>
    {
        var parts = text.Split(',');
        var numbers = new T[count];
        for (var at = 0; at < count; at++)
        {
            if (parts.Length != count || !T.TryParse(parts[at], CultureInfo.InvariantCulture, out numbers[at]))
                return null;
        }

        return numbers;
    }
}
