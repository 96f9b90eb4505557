using Companion.Server.Access;
using Companion.Server.Live.Loop;
using Companion.Server.Wire;
using Companion.Session.Audience;
using Companion.Session.Commands;

namespace Companion.Server.Live.Desk;

/// <content>What a panel can ask for about the audience's page.</content>
internal sealed partial class DeskHub
{
    public Task<Reply> SetAudienceDoor(string? door) => Ask(_ => new SetAudienceDoor(Door(door)));

    public async Task<Reply> AudienceLink()
    {
        var now = session.Current.State.Sequence;
        if (Caller != AccessRole.Presenter)
            return new(Permission.OnlyThePresenter, now);
        await Clients.Caller.AudienceLink(link.With(boards.Current.Door));
        return new(null, now);
    }

    public Task<Reply> StandByCalls() => Ask(_ => new StandByCalls(asks.View.Calls));

    // The names by which they are sent to the pages.
    private static AudienceDoor Door(string? name) => name switch
    {
        "closed" => AudienceDoor.Closed,
        "byLink" => AudienceDoor.ByLink,
        "open" => AudienceDoor.Open,
        _ => throw new FormatException($"'{name}' says nobody who may open the audience's page: closed, byLink or open."),
    };
}
