using System.Threading.Channels;

namespace Companion.Server.Chat;

/// <summary>A queue that never makes the giver wait: what does not fit is dropped, and counted.</summary>
/// <typeparam name="T">What waits.</typeparam>
internal sealed class Dropping<T>
{
    private readonly Channel<T> _items;
    private long _dropped;

    /// <summary>Makes a queue.</summary>
    /// <param name="most">How many fit.</param>
    public Dropping(int most) => _items = Channel.CreateBounded<T>(
        new BoundedChannelOptions(most) { FullMode = BoundedChannelFullMode.DropWrite },
        _ => Interlocked.Increment(ref _dropped));

    /// <summary>Where the items come out, in order.</summary>
    public ChannelReader<T> Reader => _items.Reader;

    /// <summary>Puts an item at the end, unless the queue is full.</summary>
    /// <param name="item">The item.</param>
    public void Give(T item) => _items.Writer.TryWrite(item);

    /// <summary>How many items were dropped since this was asked last.</summary>
    public long TakeDropped() => Interlocked.Exchange(ref _dropped, 0);
}
