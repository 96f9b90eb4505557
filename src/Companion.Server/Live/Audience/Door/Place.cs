using Companion.Server.Live.Transport;

namespace Companion.Server.Live.Audience.Door;

/// <summary>The place of one connection among the viewers, taken until it is disposed of.</summary>
/// <param name="crowd">Where it is counted.</param>
/// <param name="account">What is allowed to its address.</param>
/// <param name="clock">The clock.</param>
internal sealed class Place(Crowd crowd, AddressAccount account, TimeProvider clock) : IDisposable
{
    // Four grades clicked through at once and a call; then as fast as anybody reads.
    private readonly TokenBucket _asks = new(perSecond: 0.5, burst: 8, clock);
    private int _isLeft;

    /// <summary>Whether who has it came with the audience's key.</summary>
    public bool HasKey { get; init; }

    /// <summary>What it may send together with the others of its address.</summary>
    public TokenBucket Bytes => account.Bytes;

    /// <summary>Whether it may ask something now.</summary>
    public bool MayAsk() => _asks.Take(1) && account.Asks.Take(1);

    /// <inheritdoc/>
    public void Dispose()
    {
        if (Interlocked.Exchange(ref _isLeft, 1) == 0)
            crowd.Leave(account);
    }
}
