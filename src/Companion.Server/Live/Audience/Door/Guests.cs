using System.Collections.Concurrent;
using Companion.Session.Audience;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Audience.Door;

/// <summary>Those who are connected. When the door is closed to some of them they are sent away, and their pages say why.</summary>
internal sealed class Guests : IAudienceOutput
{
    private readonly ConcurrentDictionary<string, HubCallerContext> _present = new();
    private AudienceDoor? _door;

    /// <summary>Somebody has connected.</summary>
    /// <param name="guest">Who.</param>
    /// <param name="boards">Say who may come in.</param>
    public void Welcome(HubCallerContext guest, IAudienceBoards boards)
    {
        _present[guest.ConnectionId] = guest;

        // Looked at only now: if the door is closed later, this one is sent away with all the others.
        SendAway(guest, boards.Current.Door);
    }

    /// <summary>Somebody has gone.</summary>
    /// <param name="connection">The connection.</param>
    public void Forget(string connection) => _present.TryRemove(connection, out _);

    /// <summary>Sends all away. Their pages come back as soon as they are let in, and are shown the whole view.</summary>
    public void SendAllAway()
    {
        foreach (var guest in _present.Values)
            guest.Abort();
    }

    /// <summary>Whether somebody may ask something now.</summary>
    /// <param name="guest">Who.</param>
    public static bool MayAsk(HubCallerContext guest) => PlaceOf(guest)?.MayAsk() == true;

    /// <inheritdoc/>
    public void Show(AudienceView view)
    {
        if (view.Door == _door)
            return;
        _door = view.Door;
        foreach (var guest in _present.Values)
            SendAway(guest, view.Door);
    }

    private static void SendAway(HubCallerContext guest, AudienceDoor door)
    {
        if (door == AudienceDoor.Closed || (door == AudienceDoor.ByLink && PlaceOf(guest)?.HasKey != true))
            guest.Abort();
    }

    private static Place? PlaceOf(HubCallerContext guest) => guest.GetHttpContext()?.Features.Get<Place>();
}
