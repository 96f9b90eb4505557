namespace Companion.Server.Chat;

/// <summary>Remembers the newest names, and so knows what comes twice. May be asked from several threads.</summary>
/// <param name="most">How many it remembers.</param>
internal sealed class SeenIds(int most)
{
    private readonly HashSet<string> _ids = [];
    private readonly Queue<string> _inOrder = new();
    private readonly Lock _lock = new();

    /// <summary>Adds a name.</summary>
    /// <param name="id">The name.</param>
    /// <returns>False where it is remembered already.</returns>
    public bool Add(string id)
    {
        lock (_lock)
        {
            if (!_ids.Add(id))
                return false;
            _inOrder.Enqueue(id);
            if (_inOrder.Count > most)
                _ids.Remove(_inOrder.Dequeue());
            return true;
        }
    }
}
