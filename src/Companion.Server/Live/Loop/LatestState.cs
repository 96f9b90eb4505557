using System.Threading.Channels;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>Work on the newest state, one at a time: the next state cancels the work on the one before and takes its place.</summary>
internal sealed class LatestState
{
    private readonly Channel<SessionState> _newest = Channel.CreateBounded<SessionState>(new BoundedChannelOptions(1)
    {
        FullMode = BoundedChannelFullMode.DropOldest,
    });

    private readonly Lock _lock = new();
    private Action _cancel = () => { };

    /// <summary>Has this state worked on instead of the one before. Never waits.</summary>
    /// <param name="state">The state.</param>
    public void Start(SessionState state)
    {
        lock (_lock)
        {
            _newest.Writer.TryWrite(state);
            _cancel();
        }
    }

    /// <summary>Cancels the work, and begins none on a state that waits. Never waits.</summary>
    public void Cancel()
    {
        lock (_lock)
        {
            _newest.Reader.TryRead(out _);
            _cancel();
        }
    }

    /// <summary>Works until it is stopped.</summary>
    /// <param name="work">The work on one state, off the caller's thread. It catches what it throws.</param>
    /// <param name="stop">Stops it.</param>
    public async Task Run(Func<SessionState, CancellationToken, Task> work, CancellationToken stop)
    {
        while (await _newest.Reader.WaitToReadAsync(stop))
        {
            var cancel = new CancellationTokenSource(); // without a timer or a link there is nothing to dispose
            await using var atStop = stop.Register(cancel.Cancel);
            if (Take(cancel) is { } state)
                await Task.Run(() => work(state, cancel.Token), stop);
        }
    }

    // Under the lock, so that a state that comes meanwhile either is the one taken or cancels it.
    private SessionState? Take(CancellationTokenSource cancel)
    {
        lock (_lock)
        {
            _cancel = cancel.Cancel;
            return _newest.Reader.TryRead(out var state) ? state : null;
        }
    }
}
