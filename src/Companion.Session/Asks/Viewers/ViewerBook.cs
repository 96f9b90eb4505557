namespace Companion.Session.Asks.Viewers;

/// <summary>Remembers viewers, as many as are allowed: who has not asked for longest is forgotten first.</summary>
/// <param name="most">How many are remembered at once.</param>
internal sealed class ViewerBook(int most)
{
    private readonly Dictionary<ViewerId, LinkedListNode<(ViewerId Id, Viewer Viewer)>> _viewers = [];
    private readonly LinkedList<(ViewerId Id, Viewer Viewer)> _lastFirst = new();

    /// <summary>How many are remembered.</summary>
    public int Count => _viewers.Count;

    /// <summary>What is remembered of a viewer, who comes to the front with it.</summary>
    public Viewer this[ViewerId id]
    {
        get
        {
            if (_viewers.TryGetValue(id, out var node))
                _lastFirst.Remove(node);
            else
                node = new((id, new()));
            _lastFirst.AddFirst(node);
            _viewers[id] = node;
            if (_viewers.Count > most)
                Forget(_lastFirst.Last!);
            return node.Value.Viewer;
        }
    }

    /// <summary>Forgets everybody.</summary>
    public void Clear()
    {
        _viewers.Clear();
        _lastFirst.Clear();
    }

    private void Forget(LinkedListNode<(ViewerId Id, Viewer Viewer)> node)
    {
        _viewers.Remove(node.Value.Id);
        _lastFirst.Remove(node);
    }
}
