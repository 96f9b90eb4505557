using Companion.Server.Access;
using Companion.Server.Live.Transport;
using Companion.Session.Audience;
using Microsoft.AspNetCore.Http.Features;

namespace Companion.Server.Live.Audience.Door;

/// <summary>
/// Stands before the audience's hub: lets in whom the presenter lets in, as long as there is room. A page that only knocks, to be told
/// why it was refused, is answered here and takes no connection.
/// </summary>
/// <param name="next">What comes after.</param>
/// <param name="boards">Say who may come in.</param>
/// <param name="crowd">Says whether there is room.</param>
internal sealed class AudienceEntrance(RequestDelegate next, IAudienceBoards boards, Crowd crowd)
{
    /// <summary>Lets the request on or answers it.</summary>
    public async Task InvokeAsync(HttpContext context)
    {
        if (!context.Request.Path.StartsWithSegments(HubPaths.Audience))
        {
            await next(context);
            return;
        }

        var role = context.Features.Get<Admission>()?.Role;
        if (Refusal(role) is var (status, sentence))
        {
            await PlainAnswer.Write(context, status, sentence);
            return;
        }

        var stays = context.Features.Get<IHttpUpgradeFeature>()?.IsUpgradableRequest == true;
        var full = crowd.Enter(context.Connection.RemoteIpAddress, stays, role == AccessRole.Viewer, out var place);
        using (place)
        {
            if (full is not null)
            {
                await PlainAnswer.Write(context, StatusCodes.Status503ServiceUnavailable, full);
            }
            else if (place is not null)
            {
                context.Features.Set(place);
                context.Features.Set(new SharedTraffic(place.Bytes));
                await next(context);
            }
        }
    }

    private (int Status, string Sentence)? Refusal(AccessRole? role) => boards.Current.Door switch
    {
        _ when boards.Away is { } why => (StatusCodes.Status503ServiceUnavailable, why),
        _ when role is not (null or AccessRole.Viewer) => (StatusCodes.Status403Forbidden, Sentences.OtherKey),
        AudienceDoor.Open => null,
        AudienceDoor.ByLink => role is null ? (StatusCodes.Status401Unauthorized, AudienceSentences.ByLink) : null,
        _ => (StatusCodes.Status403Forbidden, AudienceSentences.Closed),
    };
}
