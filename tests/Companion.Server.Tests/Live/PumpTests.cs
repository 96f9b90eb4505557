using Companion.Server.Live.Transport;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.Live;

public sealed class PumpTests : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(100);

    private readonly FakeTimeProvider _clock = new();
    private readonly CancellationTokenSource _stop = new();
    private readonly SemaphoreSlim _begun = new(0);
    private readonly List<string> _sent = [];
    private readonly List<Exception> _failures = [];

    [Fact]
    public async Task What_was_overtaken_is_skipped_and_the_newest_always_arrives()
    {
        var gate = new TaskCompletionSource();
        var pump = Run(new(Patience), _ => gate.Task);
        pump.Give("first");
        await _begun.WaitAsync(TestContext.Current.CancellationToken);

        pump.Give("second");
        pump.Give("third");
        gate.SetResult();
        await _begun.WaitAsync(TestContext.Current.CancellationToken);

        Assert.Equal(["first", "third"], _sent);
    }

    [Fact]
    public async Task A_send_that_never_ends_holds_the_next_one_up_for_the_pumps_patience_and_no_longer()
    {
        var pump = Run(new(Patience), item => item == "stalled" ? new TaskCompletionSource().Task : Task.CompletedTask);
        pump.Give("stalled");
        await _begun.WaitAsync(TestContext.Current.CancellationToken);
        pump.Give("next");

        _clock.Advance(Patience - TimeSpan.FromTicks(1));
        Assert.Equal(["stalled"], _sent);

        await AdvanceToNextSend(TimeSpan.FromTicks(1), Patience);
        Assert.Equal(["stalled", "next"], _sent);
    }

    [Fact]
    public async Task A_send_that_fails_is_reported_and_the_next_one_goes_on()
    {
        var pump = Run(new(Patience), item => item == "bad" ? throw new InvalidOperationException(item) : Task.CompletedTask);
        pump.Give("bad");
        await _begun.WaitAsync(TestContext.Current.CancellationToken);
        pump.Give("good");
        await _begun.WaitAsync(TestContext.Current.CancellationToken);

        Assert.Equal(["bad", "good"], _sent);
        Assert.Equal("bad", Assert.Single(_failures).Message);
    }

    [Fact]
    public async Task Between_two_sends_lies_the_pumps_pause()
    {
        var pump = Run(new(Patience, TimeSpan.FromMilliseconds(200)), _ => Task.CompletedTask);
        pump.Give("one");
        await _begun.WaitAsync(TestContext.Current.CancellationToken);
        pump.Give("two");
        pump.Give("three");
        Assert.Equal(["one"], _sent);

        await AdvanceToNextSend(TimeSpan.FromMilliseconds(200), TimeSpan.FromMilliseconds(200));

        Assert.Equal(["one", "three"], _sent);
    }

    public void Dispose()
    {
        _stop.Cancel();
        _stop.Dispose();
        _begun.Dispose();
    }

    // The pump tells of a send before it looks at the clock again: time that passed in between does not count for it.
    private async Task AdvanceToNextSend(TimeSpan step, TimeSpan furtherSteps)
    {
        _clock.Advance(step);
        while (!await _begun.WaitAsync(TimeSpan.FromMilliseconds(20), TestContext.Current.CancellationToken))
            _clock.Advance(furtherSteps);
    }

    private Pump<string> Run(PumpPace pace, Func<string, Task> send)
    {
        var pump = new Pump<string>(
            item =>
            {
                _sent.Add(item);
                _begun.Release();
                return send(item);
            },
            pace,
            _clock,
            _failures.Add);
        _ = pump.Run(_stop.Token);
        return pump;
    }
}
