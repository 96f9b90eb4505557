using System.Runtime.InteropServices;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// Looks for a net of so many steps from one candidate. Several of these search one board at once.
/// </summary>
/// <remarks>
/// A net is a set of singles that can be placed in some order; each set is tried once, in one of its orders: a single that was
/// tried is left out of what comes after it beside it. And only where there are no more landmarks than steps.
/// </remarks>
internal sealed class NetTrial
{
    // A net of fewer steps is found before another core could help.
    private const int Short = 6;

    private readonly NetWalk _walk = new();
    private readonly NetLandmarks _landmarks;

    // The singles that are under consideration, level upon level.
    private readonly List<int> _singles = [];
    private readonly List<int> _path = [];
    private NetGraph _graph = null!;
    private ulong[] _known = [];
    private ulong[] _ready = [];
    private NetParts _parts = null!;
    private int _steps;
    private int _tried;
    private bool _isStopped;

    /// <summary>Makes one; it begins with a board.</summary>
    internal NetTrial() => _landmarks = new(_walk);

    /// <summary>The steps of the net found last.</summary>
    internal IReadOnlyList<int> Path => _path;

    /// <summary>The part of the trial it was found in.</summary>
    internal int Part { get; private set; }

    /// <summary>Begins with a board.</summary>
    /// <returns>Whether it can be searched: it has come to no dead end.</returns>
    internal bool Begin(NetGraph graph)
    {
        _graph = graph;
        _walk.Begin(graph);
        if (_known.Length < graph.Words)
            (_known, _ready) = (new ulong[graph.Words], new ulong[graph.Words]);
        _known.AsSpan().Clear();
        return !_walk.IsDead;
    }

    /// <summary>
    /// How many rounds lead from a candidate to a dead end, in each of which all singles are placed; null where none do. No net has
    /// fewer steps.
    /// </summary>
    internal int? RoundsFrom(int candidate)
    {
        var mark = Suppose(candidate);
        var rounds = PlaceRounds();
        var isDead = _walk.IsDead;
        ForgetFrom(first: 0);
        _singles.Clear();
        GiveUp(candidate, mark);
        return isDead ? rounds : null;
    }

    /// <summary>How many steps a net that refutes a candidate has at least, by its landmarks; there is one.</summary>
    internal int LeastSteps(int candidate)
    {
        var mark = Suppose(candidate);
        _landmarks.Begin(_graph);
        if (!_walk.IsDead)
            _landmarks.Extend(most: int.MaxValue, _known);
        GiveUp(candidate, mark);
        return _landmarks.Count;
    }

    /// <summary>Whether a net of so many steps refutes a candidate, if none of fewer does; its steps are then <see cref="Path"/>.</summary>
    /// <param name="candidate">The candidate.</param>
    /// <param name="steps">How many steps.</param>
    /// <param name="parts">The parts of the trial; those are left out that another search has taken.</param>
    internal bool Refutes(int candidate, int steps, NetParts parts)
    {
        (_steps, _parts, Part, _isStopped) = (steps, parts, -1, false);
        _path.Clear();
        var mark = Suppose(candidate);
        _landmarks.Begin(_graph);
        var refutes = _walk.IsDead || GoOn(steps);
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

    private bool GoOn(int steps)
    {
        if (steps == 0 || (_steps - steps == SharedFrom && !_parts.Takes(++Part)) || IsOff() || (steps > 1 && !_landmarks.Extend(steps, _known)))
            return false;
        var first = _singles.Count;
        _walk.AddSingles(since: 0, _known, _singles);
        var last = _singles.Count;
        ForgetFrom(first);
        var isOver = steps == 1 ? EndsWith(LastStep(first)) : GoesOnBy(first, last, steps);
        ForgetFrom(first);
        _singles.RemoveRange(first, last - first);
        return isOver;
    }

    // Not asked for each board: asking takes longer than some of them do.
    private bool IsOff() => _isStopped || ((++_tried & 15) == 0 && (_isStopped = _parts.IsOff(Part)));

    // After how many steps a trial falls into parts: short ones have but one.
    private int SharedFrom => _steps < Short ? 0 : 2;

    private bool GoesOnBy(int first, int last, int steps)
    {
        PutLandmarksFirst(first, last);
        for (var at = first; at < last; at++)
        {
            _known.AsSpan().Set(_singles[at]);
            if (Place(_singles[at], steps - 1))
                return true;
        }

        return false;
    }

    // A net has few steps beside those of landmarks, so that these lead to it sooner; and what is tried after them does without them,
    // which leaves landmarks few singles or none.
    private void PutLandmarksFirst(int first, int last)
    {
        var singles = CollectionsMarshal.AsSpan(_singles)[first..last];
        var placed = 0;
        for (var at = 0; at < singles.Length; at++)
        {
            if (!_landmarks.Has(singles[at]))
                continue;
            var single = singles[at];
            singles[placed..at].CopyTo(singles[(placed + 1)..]);
            singles[placed++] = single;
        }
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

    private bool Place(int single, int stepsLeft)
    {
        var (mark, level) = (_walk.Mark, _landmarks.Level);
        _path.Add(single);
        var isOver = _landmarks.GoOn(single, _known) && _landmarks.Count <= stepsLeft && LeadsOn(single, stepsLeft);
        _walk.GoBack(mark);
        _landmarks.GoBack(level);
        if (!isOver)
            _path.RemoveAt(_path.Count - 1);
        return isOver;
    }

    private bool LeadsOn(int single, int stepsLeft)
    {
        _walk.Place(single);
        return _walk.IsDead || GoOn(stepsLeft);
    }

    // Goes on by rounds until there is a dead end or nothing more to place; tells how many.
    private int PlaceRounds()
    {
        var (placed, since) = (0, 0);
        for (var rounds = 0; ; rounds++)
        {
            var ready = _walk.Mark.Ready;
            _walk.AddSingles(since, _known, _singles);
            since = ready;
            if (_walk.IsDead || placed == _singles.Count)
                return rounds;
            while (placed < _singles.Count && !_walk.IsDead)
                _walk.Place(_singles[placed++]);
        }
    }

    private void ForgetFrom(int first)
    {
        for (var at = first; at < _singles.Count; at++)
            Forget(_singles[at]);
    }

    private void Forget(int candidate) => _known[candidate >> 6] &= ~(1ul << candidate);
}
