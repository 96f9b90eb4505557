using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// Looks for nets of singles: candidates which, once supposed, lead by singles to a dead end. Tries nets of no step, of one, of two
/// and so on, so that the first one that it comes to has the fewest steps.
/// </summary>
/// <remarks>
/// A net is a set of singles that can be placed in some order; each set is tried once, in one of its orders: a single that was
/// tried is left out of what comes after it beside it. And only where as many rounds, in each of which all singles at once are
/// placed, lead to a dead end: no net has fewer steps than rounds.
/// </remarks>
internal sealed class NetSearch
{
    [ThreadStatic]
    private static NetSearch? _ofThread;

    private readonly NetGraph _graph = new();
    private readonly NetWalk _walk = new();
    private readonly List<(int Rounds, int Candidate)> _refuted = [];

    // The singles that are under consideration, level upon level.
    private readonly List<int> _singles = [];
    private readonly List<int> _path = [];
    private ulong[] _known = [];
    private ulong[] _ready = [];
    private Findings _found = null!;

    /// <summary>Adds a net for each candidate that is refuted by a net of so few steps that no candidate is by fewer.</summary>
    internal static void Find(RuleId rule, Board board, Findings found)
    {
        _ofThread ??= new();
        _ofThread.FindAll(rule, board, found);
    }

    private void FindAll(RuleId rule, Board board, Findings found)
    {
        _found = found;
        _graph.Read(board);
        _walk.Begin(_graph);
        if (_walk.IsDead)
            return;
        if (_known.Length < _graph.Words)
            (_known, _ready) = (new ulong[_graph.Words], new ulong[_graph.Words]);
        _known.AsSpan().Clear();
        CollectRefuted();
        var before = found.Count;
        for (var steps = 0; _refuted.Count > 0 && found.Count == before && !found.IsFull; steps++)
            FindOf(steps, rule, board);
    }

    private void FindOf(int steps, RuleId rule, Board board)
    {
        foreach (var (rounds, candidate) in _refuted)
        {
            if (rounds > steps || !Refutes(candidate, steps))
                continue;
            if (!_found.Add(Net.OfSingles(board, _graph[candidate], [.. _path.Select(step => _graph[step])]).Deduce(rule)))
                return;
        }
    }

    private void CollectRefuted()
    {
        _refuted.Clear();
        for (var candidate = 0; candidate < _graph.Count && !_found.IsFull; candidate++)
        {
            var mark = Suppose(candidate);
            if (RoundsToDeadEnd() is { } rounds)
                _refuted.Add((rounds, candidate));
            GiveUp(candidate, mark);
        }
    }

    // Whether a net of so many steps refutes the candidate; its steps are then the path.
    private bool Refutes(int candidate, int steps)
    {
        _path.Clear();
        var mark = Suppose(candidate);
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
        if (steps == 0 || _found.IsFull || (steps > 1 && !MayDie(steps)))
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

    private bool GoesOnBy(int first, int last, int steps)
    {
        for (var at = first; at < last; at++)
        {
            _known.AsSpan().Set(_singles[at]);
            if (Place(_singles[at], steps - 1))
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

    private bool Place(int single, int stepsLeft)
    {
        var mark = _walk.Mark;
        _path.Add(single);
        _walk.Place(single);
        var isOver = _walk.IsDead || GoOn(stepsLeft);
        _walk.GoBack(mark);
        if (!isOver)
            _path.RemoveAt(_path.Count - 1);
        return isOver;
    }

    // Whether so many steps may lead from here to a dead end: whether one single leads there after as many rounds less one.
    private bool MayDie(int steps)
    {
        var mark = _walk.Mark;
        var first = _singles.Count;
        var placed = PlaceRounds(steps - 1, out _);
        var mayDie = _walk.IsDead || LastStep(placed) is not null;
        GiveUpRounds(first, mark);
        return mayDie;
    }

    // How many rounds lead from here to a dead end, in each of which all singles are placed that are not known; null where there is
    // none.
    private int? RoundsToDeadEnd()
    {
        var mark = _walk.Mark;
        var first = _singles.Count;
        PlaceRounds(most: int.MaxValue, out var rounds);
        var isDead = _walk.IsDead;
        GiveUpRounds(first, mark);
        return isDead ? rounds : null;
    }

    // Goes on by rounds until there is a dead end, nothing more to place, or there were enough; then the singles of one more are known.
    // Tells where those begin that were not placed.
    private int PlaceRounds(int most, out int rounds)
    {
        var (placed, since) = (_singles.Count, 0);
        for (rounds = 0; !_walk.IsDead; rounds++)
        {
            var ready = _walk.Mark.Ready;
            _walk.AddSingles(since, _known, _singles);
            since = ready;
            if (placed == _singles.Count || rounds == most)
                break;
            while (placed < _singles.Count)
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
