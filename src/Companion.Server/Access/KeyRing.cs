using System.Collections.Immutable;

namespace Companion.Server.Access;

/// <summary>The keys that open something at this moment.</summary>
/// <param name="file">Where they are kept.</param>
internal sealed class KeyRing(KeyFile file) : IKeys
{
    private ImmutableDictionary<AccessRole, Holder> _holders = file.Load().ToImmutableDictionary(
        pair => pair.Key, pair => new Holder(pair.Value));

    private DateTime _readAt = file.WrittenAt;

    /// <summary>The key of a role.</summary>
    /// <param name="role">Whose.</param>
    public Key this[AccessRole role] => _holders[role].Key;

    /// <summary>Whose key this is, or null. Every key is compared, so that the time taken says nothing.</summary>
    /// <param name="text">What was sent; may be null.</param>
    public Admission? Find(string? text)
    {
        Admission? found = null;
        if (Key.Read(text) is not { } key)
            return found;
        foreach (var (role, holder) in _holders)
        {
            if (holder.Key.Matches(key))
                found = new(role, holder.Replaced.Token);
        }

        return found;
    }

    /// <summary>Takes over keys that were replaced in the file since it was read last.</summary>
    /// <exception cref="PlainException">The file is damaged; the keys stay as they were.</exception>
    public void Refresh()
    {
        var writtenAt = file.WrittenAt;
        if (writtenAt == _readAt)
            return;
        var old = _holders;
        _holders = file.Load().ToImmutableDictionary(
            pair => pair.Key, pair => old[pair.Key].Key.Matches(pair.Value) ? old[pair.Key] : new Holder(pair.Value));
        _readAt = writtenAt;
        foreach (var (role, holder) in old)
        {
            if (holder != _holders[role])
                holder.Replaced.Cancel();
        }
    }

    private sealed class Holder(Key key)
    {
        public Key Key { get; } = key;

        public CancellationTokenSource Replaced { get; } = new();
    }
}
