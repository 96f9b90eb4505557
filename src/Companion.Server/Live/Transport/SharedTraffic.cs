namespace Companion.Server.Live.Transport;

/// <summary>What a connection may send together with others, where whoever let it in has set such a limit on its request.</summary>
/// <param name="Bytes">The bytes.</param>
internal sealed record SharedTraffic(TokenBucket Bytes);
