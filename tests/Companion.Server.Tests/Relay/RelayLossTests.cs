using System.Text.Json;
using Companion.Server.Live.Audience;

namespace Companion.Server.Tests.Relay;

/// <summary>What becomes of the viewers when the Redis server or the presenter's goes away and comes back.</summary>
public sealed class RelayLossTests
{
    [Fact]
    public async Task Whatever_goes_away_is_told_plainly_and_found_again_and_the_session_goes_on()
    {
        await using var show = await Show.Begin();
        await using var panel = await show.OpenPanel();
        await using var own = await show.OpenViewer(show.Presenter);
        await using var viewer = await show.OpenViewer(show.AudienceServers[0]);

        // Without Redis the session and its own viewers go on; the others are sent away and told why.
        await show.Redis.Stop();
        await panel.Do("PlaceDigit", "r1c1", 4);
        await own.Sees("Board", view => Placed(view, 0) == '4');
        await viewer.IsClosed();
        foreach (var server in show.AudienceServers)
            await show.Refuses(server, AudienceSentences.Away);
        await panel.Do("PlaceDigit", "r1c2", 8);

        // Whoever comes back is shown the whole view, with what they have missed.
        await show.Redis.Start();
        foreach (var server in show.AudienceServers)
        {
            await using var back = await show.OpenViewer(server);
            await back.Sees("Board", view => Placed(view, 0) == '4' && Placed(view, 1) == '8');
            await panel.Do("PlaceDigit", "r1c4", 9);
            await back.Sees("Board", view => Placed(view, 3) == '9');
            Assert.NotEqual("notice", (await back.Ask<JsonElement>("Hint", null, null)).GetProperty("kind").GetString());
            await panel.Do("Undo");
        }

        // The presenter's server dies and comes back, numbering its views anew.
        await using var other = await show.OpenViewer(show.AudienceServers[1]);
        await show.Presenter.DisposeAsync();
        await other.IsClosed();
        await show.Refuses(show.AudienceServers[1], AudienceSentences.Away);
        await show.StartPresenter();
        await using var again = await show.OpenViewer(show.AudienceServers[1]);
        await again.Sees("Board", view => Placed(view, 1) == '8');
    }

    private static char? Placed(JsonElement view, int cell) => view.GetProperty("board") is { ValueKind: JsonValueKind.Object } board
        ? board.GetProperty("placed").GetString()![cell]
        : null;
}
