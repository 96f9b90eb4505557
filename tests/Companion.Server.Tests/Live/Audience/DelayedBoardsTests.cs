using System.Collections.Concurrent;
using Companion.Server.Live.Audience;
using Companion.Server.Live.Loop;
using Companion.Server.Settings;
using Companion.Server.Tests.Wire;
using Companion.Session.Audience;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.Live.Audience;

/// <summary>What goes out to the audience while a session is played, on a clock that moves when it is told to.</summary>
public sealed class DelayedBoardsTests : IAudienceOutput, IAsyncDisposable
{
    private const int Delay = 15;

    private readonly FakeTimeProvider _clock = new();
    private readonly ConcurrentQueue<(DateTimeOffset At, AudienceView View)> _published = new();
    private readonly DelayedBoards _boards;

    public DelayedBoardsTests() => _boards = new(
        new ServerSettings { Asks = new() { DelaySeconds = Delay }, Audience = new() { Door = AudienceDoor.Open } }, [this], _clock);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public async Task No_view_goes_out_that_holds_anything_newer_than_the_delay(int seed)
    {
        var random = new Random(seed);
        var shown = new List<(DateTimeOffset At, Snapshot Snapshot)>();
        await _boards.StartAsync(TestContext.Current.CancellationToken);
        foreach (var snapshot in SomeSessions.Snapshots(seed, steps: 60))
        {
            shown.Add((_clock.GetUtcNow(), snapshot));
            _boards.Show(snapshot);
            await Handled(shown);
            for (var part = random.Next(1, 5); part > 0; part--)
            {
                _clock.Advance(TimeSpan.FromSeconds(random.NextDouble() * 3));
                await Handled(shown);
            }
        }

        Assert.True(_published.Count > 10, "Too few views to show anything.");
        Assert.Equal(_published.Select(published => published.View.Sequence).Order(), _published.Select(published => published.View.Sequence));
        foreach (var (at, view) in _published)
            Assert.Equal(BoardAt(shown, at), view.Board);
    }

    void IAudienceOutput.Show(AudienceView view) => _published.Enqueue((_clock.GetUtcNow(), view));

    public async ValueTask DisposeAsync()
    {
        await _boards.StopAsync(CancellationToken.None);
        _boards.Dispose();
    }

    // The newest view is at last that of now: it came by itself, when its time had come.
    private async Task Handled(List<(DateTimeOffset At, Snapshot Snapshot)> shown)
    {
        while (_boards.Current.Board != BoardAt(shown, _clock.GetUtcNow()))
            await Task.Delay(1, TestContext.Current.CancellationToken);
    }

    private static AudienceBoard? BoardAt(List<(DateTimeOffset At, Snapshot Snapshot)> shown, DateTimeOffset now) =>
        shown.FindLast(each => each.At <= now.AddSeconds(-Delay)).Snapshot is { } seen ? AudienceBoard.Of(seen.State.Grid) : null;
}
