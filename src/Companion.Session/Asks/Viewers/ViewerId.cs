namespace Companion.Session.Asks.Viewers;

/// <summary>
/// Who asks, as far as we know: a hash with the salt of the show. It tells viewers apart and nobody who they are. Made by
/// <see cref="ShowSalt"/>.
/// </summary>
/// <param name="Value">64 bits of the hash.</param>
public readonly record struct ViewerId(ulong Value);
