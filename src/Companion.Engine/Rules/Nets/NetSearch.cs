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
            _known = new ulong[_graph.Words];
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
            if (RoundsToDeadEnd(most: int.MaxValue) is { } rounds)
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
        if (steps == 0 || _found.IsFull || (steps > 1 && RoundsToDeadEnd(steps) is null))
            return false;
        var first = _singles.Count;
        _walk.AddSingles(since: 0, _known, _singles);
        var last = _singles.Count;
        ForgetFrom(first);
        var isOver = false;
        for (var at = first; at < last && !isOver; at++)
        {
            _known.AsSpan().Set(_singles[at]);
            isOver = Place(_singles[at], steps - 1);
        }

        ForgetFrom(first);
        _singles.RemoveRange(first, last - first);
        return isOver;
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

    // How many rounds lead from here to a dead end, in each of which all singles are placed that are not known; null where there is
    // none, or where it takes more.
    private int? RoundsToDeadEnd(int most)
    {
        var mark = _walk.Mark;
        var (first, placed, since) = (_singles.Count, _singles.Count, 0);
        var rounds = 0;
        while (!_walk.IsDead && rounds < most)
        {
            var ready = _walk.Mark.Ready;
            _walk.AddSingles(since, _known, _singles);
            since = ready;
            if (placed == _singles.Count)
                break;
            while (placed < _singles.Count)
                _walk.Place(_singles[placed++]);
            rounds++;
        }

        var isDead = _walk.IsDead;
        _walk.GoBack(mark);
        ForgetFrom(first);
        _singles.RemoveRange(first, _singles.Count - first);
        return isDead ? rounds : null;
    }

    private void ForgetFrom(int first)
    {
        for (var at = first; at < _singles.Count; at++)
            Forget(_singles[at]);
    }

    private void Forget(int candidate) => _known[candidate >> 6] &= ~(1ul << candidate);
}
