using Companion.Server.Live.Loop;
using Companion.Server.Tests.Running;
using Companion.Session.Scanning;
using Companion.Session.State;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Live;

public sealed class ScanTests
{
    [Fact]
    public async Task A_scan_holds_no_entry_up_and_the_latest_wins()
    {
        using var scanner = HeldWorker.OfScans();
        await using var companion = await RunningCompanion.Start(adjust: builder => builder.Services.AddSingleton<IWorker<ScanResult>>(scanner));
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.EssayOne, "", "", "");
        await presenter.Do("PlaceDigit", "r5c5", 5);
        var last = (await presenter.Ask("PlaceDigit", "r5c2", 2)).Sequence;
        await presenter.Sees("Desk", last);
        Assert.DoesNotContain("Next", presenter.Told.Select(told => told.Name));

        scanner.Release();

        Assert.Equal(last, (await presenter.Sees("Next", _ => true)).GetProperty("sequence").GetInt64());
        Assert.Equal(scanner.Begun.SkipLast(1), scanner.Cancelled);
        Assert.Equal(last, scanner.Begun.Last());
    }

    [Fact]
    public async Task What_no_scan_looks_at_leaves_the_list_of_open_deductions_up_to_date()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        var loaded = (await presenter.Ask("LoadPuzzle", Grids.EssayOne, "", "", "")).Sequence;
        await presenter.Sees("Next", loaded);

        var cued = (await presenter.Ask("CueText", "Thanks")).Sequence;
        Assert.Equal(loaded, (await presenter.Sees("Desk", cued)).GetProperty("scanOf").GetInt64());

        var placed = (await presenter.Ask("PlaceDigit", "r5c5", 5)).Sequence;
        Assert.Equal(placed, (await presenter.Sees("Desk", placed)).GetProperty("scanOf").GetInt64());
    }

    [Fact]
    public async Task A_scan_that_fails_stops_neither_the_session_nor_the_next_scan()
    {
        await using var companion = await RunningCompanion.Start(
            adjust: builder => builder.Services.AddSingleton<IWorker<ScanResult>>(new FailingFirstScanner()));
        await using var presenter = await companion.OpenDesk();

        var sequence = (await presenter.Ask("LoadPuzzle", Grids.EssayOne, "", "", "")).Sequence;

        await presenter.Sees("Next", sequence);
    }

    private sealed class FailingFirstScanner : IWorker<ScanResult>
    {
        private readonly ScanWorker _worker = new(Engine.Rules.Ladder.Standard);

        public IEnumerable<ScanResult> WorkOut(SessionState state, CancellationToken cancel) =>
            state.Sequence < 2 ? throw new InvalidOperationException("This scan fails.") : _worker.WorkOut(state, cancel);
    }
}
