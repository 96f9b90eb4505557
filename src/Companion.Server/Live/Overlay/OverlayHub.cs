using Companion.Server.Live.Loop;
using Companion.Server.Wire;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Overlay;

/// <summary>Where the pages on air are told what to draw. They can ask for nothing.</summary>
/// <param name="session">The session.</param>
/// <param name="scenes">The scenes being shown.</param>
/// <param name="voice">The words.</param>
internal sealed class OverlayHub(SessionLoop session, ScenesShown scenes, Voice voice) : Hub<IOverlayClient>
{
    /// <summary>The group of all stage pages.</summary>
    public const string Stage = "stage";

    /// <summary>The group of the overlay pages of a scene.</summary>
    /// <param name="scene">The scene.</param>
    public static string Scene(string scene) => "scene " + scene;

    /// <summary>Greets a page with what is on air: <c>?page=stage</c>, or <c>?page=overlay&amp;scene=NAME</c>.</summary>
    public override async Task OnConnectedAsync()
    {
        var asked = Context.GetHttpContext()!.Request.Query;
        if (asked["page"] == Stage)
        {
            await Groups.AddToGroupAsync(Context.ConnectionId, Stage);
            await session.Greet(snapshot => Clients.Caller.Stage(StageWire.Of(snapshot.State, voice)));
            return;
        }

        var scene = scenes.Add(asked["scene"]);
        await Groups.AddToGroupAsync(Context.ConnectionId, Scene(scene));
        await session.Greet(snapshot => Clients.Caller.Overlay(OverlayWire.Of(snapshot.State, scene, voice)));
    }
}
