using System.Security.Cryptography;
using System.Text;
using Companion.Server.Access;

namespace Companion.Server.Relay.Following;

/// <summary>
/// Recognises the audience's key by its hash. An audience server holds no key, and opens nothing for any other.
/// </summary>
/// <param name="boards">Know the hash.</param>
internal sealed class FollowedKeys(FollowedBoards boards) : IKeys
{
    private readonly Lock _lock = new();
    private (string? Hash, CancellationTokenSource Replaced) _now = (null, new());

    /// <inheritdoc/>
    public Admission? Find(string? text)
    {
        if (Key.Read(text) is not { } key || boards.KeyHash is not { } hash)
            return null;
        return CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(key.Hash()), Encoding.ASCII.GetBytes(hash))
            ? new(AccessRole.Viewer, Replaced(hash))
            : null;
    }

    // What was opened with the key before is closed when somebody comes with the new one.
    private CancellationToken Replaced(string hash)
    {
        lock (_lock)
        {
            if (_now.Hash == hash)
                return _now.Replaced.Token;
            var before = _now.Replaced;
            _now = (hash, new());
            before.Cancel();
            return _now.Replaced.Token;
        }
    }
}
