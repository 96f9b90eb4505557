using Companion.Server.Access;
using Companion.Server.Live.Audience;
using Companion.Server.Tests.Running;
using Companion.Session.Audience;
using Microsoft.AspNetCore.SignalR;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Live;

public sealed class StalledPageTests
{
    [Fact(Timeout = 120_000)]
    public async Task A_page_that_reads_nothing_holds_no_other_up_and_is_cut_off()
    {
        var goodbyes = new CountedGoodbyes();
        await using var companion = await RunningCompanion.Start(
            adjust: builder => builder.Services.Configure<HubOptions>(hub => hub.AddFilter(goodbyes)));
        await using var presenter = await companion.OpenDesk();
        await using var second = await companion.OpenDesk();
        await using var third = await companion.OpenDesk();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
        await using var stage = await companion.OpenStage();
        using var stalledDesk = await StalledPage.Open(companion, HubPaths.Presenter, AccessRole.Presenter);
        using var stalledStage = await StalledPage.Open(companion, HubPaths.Overlay + "?page=stage", AccessRole.Overlay);

        // Until the buffers on the way are full and both are cut off. Every entry is answered and shown meanwhile. They come from
        // several pages by turns, since so many at once are more than one of them may send.
        OpenPage[] panels = [presenter, second, third];
        var sequence = 0L;
        for (var entry = 0; goodbyes.Count < 2; entry++)
        {
            TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
            sequence = (await panels[entry % panels.Length].Ask("AllowCoHostOnAir", entry % 2 == 0)).Sequence;
            await stage.Sees("Stage", sequence);
        }

        await presenter.Sees("Desk", sequence);
        await coHost.Sees("Desk", sequence);
        await stage.Sees("Stage", sequence);
    }

    [Fact(Timeout = 120_000)]
    public async Task No_send_waits_for_a_viewer_who_reads_nothing_and_who_is_cut_off()
    {
        var goodbyes = new CountedGoodbyes();
        await using var companion = await RunningCompanion.Start(
            adjust: builder => builder.Services.Configure<HubOptions>(hub => hub.AddFilter(goodbyes)));
        await using var viewer = await companion.OpenAudience();
        using var stalled = await StalledPage.Open(companion, HubPaths.Audience, AccessRole.Viewer);
        var view = await Greeted(companion);
        var all = companion.Services.GetRequiredService<IHubContext<AudienceHub, IAudienceClient>>().Clients.All;

        // Long views, which soon fill the buffers on the way. If sends waited for the one, there would be a second's that are not over.
        var board = new AudienceBoard("", "", new string('.', 20_000), "", "");
        List<Task> notOver = [];
        for (var sequence = view.Sequence + 1; goodbyes.Count < 1; sequence++)
        {
            TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
            var seen = viewer.Told.Count;
            notOver.Add(all.Board(view with { Sequence = sequence, Board = board }));
            while (viewer.Told.Count == seen)
                await Task.Yield();
            notOver.RemoveAll(send => send.IsCompleted);
            Assert.InRange(notOver.Count, 0, 20);
        }
    }

    // Both viewers are there, and nothing is on its way to them any more.
    private static async Task<AudienceView> Greeted(RunningCompanion companion)
    {
        await RunningCompanion.Until(() => companion.Crowd.Present == 2);
        return companion.Services.GetRequiredService<IAudienceBoards>().Current;
    }

    private sealed class CountedGoodbyes : IHubFilter
    {
        private int _count;

        public int Count => Volatile.Read(ref _count);

        public Task OnDisconnectedAsync(
            HubLifetimeContext context, Exception? exception, Func<HubLifetimeContext, Exception?, Task> next)
        {
            Interlocked.Increment(ref _count);
            return next(context, exception);
        }
    }
}
