using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// Looks for nets within nets: follows a supposition by singles and, where there is none, supposes other candidates in turn; what
/// leads by singles to a dead end goes. The inner suppositions may take a round of singles more only where no candidate at all is
/// refuted with fewer.
/// </summary>
internal sealed class NestedSearch
{
    // How many rounds of singles a supposition within another may take: the fewer the better.
    private static readonly int[] Depths = [0, 1, 2, 4, int.MaxValue];

    private static readonly RuleId Inner = new ForcingNet().Id;

    [ThreadStatic]
    private static NestedSearch? _ofThread;

    private readonly NetGraph _graph = new();
    private readonly NetWalk _walk = new();
    private readonly NetSteps _outer;
    private readonly NetSteps _inner;
    private readonly List<int> _singles = [];
    private readonly List<int> _innerSingles = [];
    private readonly List<(int Steps, int Candidate)> _refuted = [];

    // What is placed, and in turn what is placed within the inner supposition.
    private readonly ulong[] _known = new ulong[NetGraph.MostWords];

    // Inner suppositions that came to no dead end and to no further single: more rounds change nothing.
    private readonly ulong[] _ranOut = new ulong[NetGraph.MostWords];

    // The same of outer ones, in which all inner ones had run out.
    private readonly ulong[] _outerRanOut = new ulong[NetGraph.MostWords];

    private NestedSearch() => (_outer, _inner) = (new(_graph, _walk), new(_graph, _walk));

    /// <summary>Adds nets for candidates that are refuted so, the fewest steps first, then by the candidate.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="board">The board.</param>
    /// <param name="most">How many nets at most.</param>
    /// <param name="found">Where they go.</param>
    internal static void Find(RuleId rule, Board board, int most, Findings found)
    {
        _ofThread ??= new();
        _ofThread.FindAll(rule, board, most, found);
    }

    private void FindAll(RuleId rule, Board board, int most, Findings found)
    {
        _graph.Read(board);
        _outerRanOut.AsSpan().Clear();
        for (var deepest = 0; deepest < Depths.Length && !found.IsFull; deepest++)
        {
            if (CollectRefuted(Depths.AsSpan(0, deepest + 1), found) == 0)
                continue;
            _refuted.Sort();
            foreach (var (_, candidate) in _refuted.Take(most))
            {
                Refutes(candidate, Depths.AsSpan(0, deepest + 1));
                if (!found.Add(Explain(board, candidate).Deduce(rule)))
                    break;
            }

            return;
        }
    }

    private int CollectRefuted(ReadOnlySpan<int> depths, Findings found)
    {
        _refuted.Clear();
        for (var candidate = 0; candidate < _graph.Count && !found.IsFull; candidate++)
        {
            if (!NodeBits.Has(_outerRanOut, candidate) && Refutes(candidate, depths))
                _refuted.Add((_outer.Length, candidate));
        }

        return _refuted.Count;
    }

    private bool Refutes(int candidate, ReadOnlySpan<int> depths)
    {
        _walk.Begin(_graph);
        if (_walk.IsDead)
            return false;
        _known.AsSpan().Clear();
        _known.AsSpan().Set(candidate);
        _outer.Suppose(candidate);
        var since = 0;
        do
            since = PlaceSingles(since);
        while (!_walk.IsDead && TakeOut(since, depths));
        if (_walk.IsDead)
            _outer.Trace();
        else if (AllRanOut())
            _outerRanOut.AsSpan().Set(candidate);
        return _walk.IsDead;
    }

    // Places singles until there is none; they stay known.
    private int PlaceSingles(int since)
    {
        while (!_walk.IsDead && since < _walk.Mark.Ready)
        {
            var ready = _walk.Mark.Ready;
            _singles.Clear();
            _walk.AddSingles(since, _known, _singles);
            since = ready;
            foreach (var single in _singles)
            {
                if (!_walk.IsDead)
                    _outer.Place(single);
            }
        }

        return since;
    }

    // Takes out what singles refute, those first that take the fewest rounds, until there is a single.
    private bool TakeOut(int since, ReadOnlySpan<int> depths)
    {
        _ranOut.AsSpan().Clear();
        foreach (var depth in depths)
        {
            var any = false;
            for (var candidate = 0; candidate < _graph.Count; candidate++)
            {
                if (!IsOpen(candidate) || NodeBits.Has(_ranOut, candidate) || !RefutesWithin(candidate, depth))
                    continue;
                _outer.Remove(candidate, _inner);
                _ranOut.AsSpan().Clear();
                any = true;
                if (_walk.IsDead || _walk.Mark.Ready > since)
                    return true;
            }

            if (any)
                return true;
        }

        return false;
    }

    private bool IsOpen(int candidate) => !_walk.IsGone(candidate) && !NodeBits.Has(_known, candidate);

    private bool AllRanOut()
    {
        for (var candidate = 0; candidate < _graph.Count; candidate++)
        {
            if (IsOpen(candidate) && !NodeBits.Has(_ranOut, candidate))
                return false;
        }

        return true;
    }

    private bool RefutesWithin(int candidate, int rounds)
    {
        var mark = _walk.Mark;
        _innerSingles.Clear();
        _known.AsSpan().Set(candidate);
        _inner.Suppose(candidate);
        var (placed, since) = (0, mark.Ready);
        for (; !_walk.IsDead && rounds > 0; rounds--)
        {
            var ready = _walk.Mark.Ready;
            _walk.AddSingles(since, _known, _innerSingles);
            since = ready;
            if (placed == _innerSingles.Count)
                break;
            while (placed < _innerSingles.Count && !_walk.IsDead)
                _inner.Place(_innerSingles[placed++]);
        }

        var isDead = _walk.IsDead;
        if (isDead)
            _inner.Trace();
        else if (placed == _innerSingles.Count && since == _walk.Mark.Ready)
            _ranOut.AsSpan().Set(candidate);
        _walk.GoBack(mark);
        Forget(candidate);
        _innerSingles.ForEach(Forget);
        return isDead;
    }

    private void Forget(int candidate) => _known[candidate >> 6] &= ~(1ul << candidate);

    private Net Explain(Board board, int candidate)
    {
        var net = new Net(board, _graph[candidate]);
        foreach (var step in _outer.Needed)
        {
            if (step.Places)
                net.ApplySingle(_graph[step.Candidate]);
            else
                net.Apply(Net.OfSingles(net.Board, _graph[step.Candidate], Candidates(_outer.SinglesWithin(step))).Deduce(Inner));
        }

        return net.Ends() ? net : throw new InvalidOperationException("The net leads to no dead end.");
    }

    private Candidate[] Candidates(ReadOnlySpan<int> numbers)
    {
        var candidates = new Candidate[numbers.Length];
        for (var at = 0; at < numbers.Length; at++)
            candidates[at] = _graph[numbers[at]];
        return candidates;
    }
}
