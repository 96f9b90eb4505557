using Companion.Server.Live.Loop;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Audience;

/// <summary>Where viewers are told which puzzle it is. They can ask for nothing.</summary>
/// <param name="session">The session.</param>
internal sealed class AudienceHub(SessionLoop session) : Hub<IAudienceClient>
{
    /// <summary>Greets a viewer.</summary>
    public override Task OnConnectedAsync() =>
        session.Greet(snapshot => Clients.Caller.Viewer(PublicViews.Viewer(snapshot.State)));
}
