using System.Threading.Channels;

namespace Companion.Server.Live.Transport;

/// <summary>
/// Sends the newest of what it is given and skips what was overtaken, so that whoever gives never waits. A send that takes longer
/// than the pump's patience goes on by itself: one stalled page holds the others up for that long at most, until it is cut off.
/// </summary>
/// <typeparam name="T">What is sent.</typeparam>
/// <param name="send">Sends one.</param>
/// <param name="pace">Patience and pause.</param>
/// <param name="clock">The clock.</param>
/// <param name="failed">Told of a send that failed; the pump goes on.</param>
internal sealed class Pump<T>(Func<T, Task> send, PumpPace pace, TimeProvider clock, Action<Exception> failed)
    where T : class
{
    private readonly Channel<T> _newest = Channel.CreateBounded<T>(new BoundedChannelOptions(1)
    {
        FullMode = BoundedChannelFullMode.DropOldest,
        SingleReader = true,
    });

    /// <summary>Has this sent, unless something newer comes first. Never waits.</summary>
    /// <param name="item">What to send.</param>
    public void Give(T item) => _newest.Writer.TryWrite(item);

    /// <summary>Sends until it is stopped.</summary>
    /// <param name="stop">Stops it.</param>
    public async Task Run(CancellationToken stop)
    {
        await foreach (var item in _newest.Reader.ReadAllAsync(stop))
        {
            var pause = pace.Pause > TimeSpan.Zero ? Task.Delay(pace.Pause, clock, stop) : Task.CompletedTask;
            await Send(item, stop);
            await pause;
        }
    }

    private async Task Send(T item, CancellationToken stop)
    {
        var sending = Guarded(item);
        try
        {
            await sending.WaitAsync(pace.Patience, clock, stop);
        }
        catch (TimeoutException)
        {
            // It goes on by itself; the transport cuts the stalled page off.
        }
    }

    private async Task Guarded(T item)
    {
        try
        {
            await send(item);
        }
        catch (Exception failure)
        {
            failed(failure);
        }
    }
}
