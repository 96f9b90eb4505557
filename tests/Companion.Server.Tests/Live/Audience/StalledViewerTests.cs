using Companion.Server.Access;
using Companion.Server.Live.Audience;
using Companion.Server.Tests.Running;
using Companion.Session.Audience;
using Microsoft.AspNetCore.SignalR;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Live.Audience;

public sealed class StalledViewerTests
{
    [Fact(Timeout = 120_000)]
    public async Task Viewers_who_read_nothing_hold_nobody_up_and_are_cut_off()
    {
        await using var companion = await RunningCompanion.Start(settings: new()
        {
            Port = 0,
            AudiencePushesPerSecond = 10,
            Asks = new() { DelaySeconds = 0 },
        });
        await using var presenter = await companion.OpenDesk();
        await using var viewer = await companion.OpenAudience();
        using var one = await StalledPage.Open(companion, HubPaths.Audience, AccessRole.Viewer);
        using var other = await StalledPage.Open(companion, HubPaths.Audience, AccessRole.Viewer);
        await RunningCompanion.Until(() => companion.Crowd.Present == 3);

        // Padding that nobody waits for fills the buffers on the way sooner than boards would.
        var hub = companion.Services.GetRequiredService<IHubContext<AudienceHub, IAudienceClient>>();
        var padding = new AudienceView(0, AudienceDoor.ByLink, 0, new(false, default, false), false, null, new(new('.', 30_000), "", "", "", ""));
        for (var entry = 0; companion.Crowd.Present > 1; entry++)
        {
            TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
            _ = hub.Clients.All.Board(padding);
            await presenter.Do("LoadPuzzle", Grids.Textbook, $"Title {entry}", "", "");
            await viewer.Sees("Board", view => view.GetProperty("credit").ToString().Contains($"\"Title {entry}\"", StringComparison.Ordinal));
        }

        await presenter.Do("LoadPuzzle", Grids.Textbook, "The last", "", "");
        await viewer.Sees("Board", view => view.GetProperty("credit").ToString().Contains("The last", StringComparison.Ordinal));
    }
}
