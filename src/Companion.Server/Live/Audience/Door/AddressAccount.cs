using Companion.Server.Live.Transport;

namespace Companion.Server.Live.Audience.Door;

/// <summary>What is allowed to all viewers of one address together.</summary>
/// <param name="Arrivals">How often they may knock.</param>
/// <param name="Asks">How often they may ask.</param>
/// <param name="Bytes">How much they may send.</param>
internal sealed record AddressAccount(TokenBucket Arrivals, TokenBucket Asks, TokenBucket Bytes)
{
    /// <summary>How many of them are there.</summary>
    public int Present { get; set; }
}
