using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// Looks for a net of so many steps from one candidate. Several of these search one board at once.
/// </summary>
/// <remarks>
/// A net is a set of singles that can be placed in some order; each set is tried once, in one of its orders: a single that was
/// tried is left out of what comes after it beside it. And only where as many rounds, in each of which all singles at once are
/// placed, lead to a dead end: no net has fewer steps than rounds.
/// </remarks>
internal sealed class NetTrial
{
    private readonly NetWalk _walk = new();

    // The singles that are under consideration, level upon level.
    private readonly List<int> _singles = [];
    private readonly List<int> _path = [];
    private NetGraph _graph = null!;
    private ulong[] _known = [];
    private ulong[] _ready = [];
    private Func<bool> _isOff = () => false;
    private bool _isStopped;

    /// <summary>The steps of the net found last.</summary>
    internal IReadOnlyList<int> Path => _path;

    /// <summary>How much was tried since it began, in boards.</summary>
    internal int Tried { get; private set; }

    /// <summary>Begins with a board.</summary>
    /// <returns>Whether it can be searched: it has come to no dead end.</returns>
    internal bool Begin(NetGraph graph)
    {
        (_graph, Tried) = (graph, 0);
        _walk.Begin(graph);
        if (_known.Length < graph.Words)
            (_known, _ready) = (new ulong[graph.Words], new ulong[graph.Words]);
        _known.AsSpan().Clear();
        return !_walk.IsDead;
    }

    /// <summary>How many rounds lead from a candidate to a dead end, in each of which all singles are placed; null where none do.</summary>
    internal int? RoundsFrom(int candidate)
    {
        var mark = Suppose(candidate);
        PlaceRounds(since: 0, most: int.MaxValue, out var rounds);
        var isDead = _walk.IsDead;
        GiveUpRounds(first: 0, mark);
        Forget(candidate);
        return isDead ? rounds : null;
    }

    /// <summary>Whether a net of so many steps refutes a candidate, if none of fewer does; its steps are then <see cref="Path"/>.</summary>
    /// <param name="candidate">The candidate.</param>
    /// <param name="steps">How many steps.</param>
    /// <param name="isOff">Asked again and again whether nobody wants to know any more.</param>
    internal bool Refutes(int candidate, int steps, Func<bool> isOff)
    {
        (_isOff, _isStopped) = (isOff, false);
        _path.Clear();
        var mark = Suppose(candidate);
        var refutes = _walk.IsDead || GoOn(steps, since: 0);
        GiveUp(candidate, mark);
        return refutes;
    }

    private (int, int) Suppose(int candidate)
    {
        var mark = _walk.Mark;
        _known.AsSpan().Set(candidate);
        _walk.Place(candidate);
        return mark;
    }

    private void GiveUp(int candidate, (int, int) mark)
    {
        _walk.GoBack(mark);
        Forget(candidate);
    }

    // Since: how many choices had come up before those whose singles may be placed.
    private bool GoOn(int steps, int since)
    {
        if (steps == 0 || IsOff())
            return false;
        var rounds = steps > 1 ? RoundsToDeadEnd(steps, since) : 1;
        if (rounds > steps)
            return false;
        var first = _singles.Count;
        _walk.AddSingles(since, _known, _singles);
        var last = _singles.Count;
        ForgetFrom(first);
        // Where there are as many rounds as steps each has one of them, so that what can be placed now cannot be placed later on.
        var isOver = steps == 1 ? EndsWith(LastStep(first)) : GoesOnBy(first, last, steps, rounds == steps ? _walk.Mark.Ready : since);
        ForgetFrom(first);
        _singles.RemoveRange(first, last - first);
        return isOver;
    }

    // Not asked for each board: asking takes longer than some of them do.
    private bool IsOff() => _isStopped || ((++Tried & 15) == 0 && (_isStopped = _isOff()));

    private bool GoesOnBy(int first, int last, int steps, int since)
    {
        for (var at = first; at < last; at++)
        {
            _known.AsSpan().Set(_singles[at]);
            if (Place(_singles[at], steps - 1, since))
                return true;
        }

        return false;
    }

    private bool EndsWith(int? single)
    {
        if (single is { } last)
            _path.Add(last);
        return single is not null;
    }

    // The first of the singles from here on that leads to a dead end at once. Most of the search comes to this, so that it is told
    // without placing them.
    private int? LastStep(int first)
    {
        if (first == _singles.Count)
            return null;
        var ready = _ready.AsSpan(0, _graph.Words);
        ready.Clear();
        _walk.AddSingles(ready);
        for (var at = first; at < _singles.Count; at++)
        {
            if (_walk.WouldBeDead(_singles[at], ready))
                return _singles[at];
        }

        return null;
    }

    private bool Place(int single, int stepsLeft, int since)
    {
        var mark = _walk.Mark;
        _path.Add(single);
        _walk.Place(single);
        var isOver = _walk.IsDead || GoOn(stepsLeft, since);
        _walk.GoBack(mark);
        if (!isOver)
            _path.RemoveAt(_path.Count - 1);
        return isOver;
    }

    // How many rounds lead from here to a dead end; more than so many where it takes more.
    private int RoundsToDeadEnd(int most, int since)
    {
        var mark = _walk.Mark;
        var first = _singles.Count;
        var placed = PlaceRounds(since, most - 1, out var rounds);
        if (!_walk.IsDead)
            rounds = LastStep(placed) is null ? most + 1 : most;
        GiveUpRounds(first, mark);
        return rounds;
    }

    // Goes on by rounds until there is a dead end, nothing more to place, or there were enough; then the singles of one more are known.
    // Tells where those begin that were not placed.
    private int PlaceRounds(int since, int most, out int rounds)
    {
        var placed = _singles.Count;
        for (rounds = 0; !_walk.IsDead; rounds++)
        {
            var ready = _walk.Mark.Ready;
            _walk.AddSingles(since, _known, _singles);
            since = ready;
            if (placed == _singles.Count || rounds == most)
                break;
            while (placed < _singles.Count && !_walk.IsDead)
                _walk.Place(_singles[placed++]);
        }

        return placed;
    }

    private void GiveUpRounds(int first, (int, int) mark)
    {
        _walk.GoBack(mark);
        ForgetFrom(first);
        _singles.RemoveRange(first, _singles.Count - first);
    }

    private void ForgetFrom(int first)
    {
        for (var at = first; at < _singles.Count; at++)
            Forget(_singles[at]);
    }

    private void Forget(int candidate) => _known[candidate >> 6] &= ~(1ul << candidate);
}
