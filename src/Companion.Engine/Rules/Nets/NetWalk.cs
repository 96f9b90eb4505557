using System.Numerics;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// Candidates placed one after another, and taken back in turn: what is gone because of them, which choices have one candidate left
/// (a single) and whether one has none (a dead end). Nothing is allocated on the way.
/// </summary>
internal sealed class NetWalk
{
    private const int One = NetGraph.One;

    // The content of each choice that is left.
    private readonly int[] _left = new int[NetGraph.Choices];

    // The candidates that are gone in the order in which they went, and the choices that had one left in the order in which they came up.
    private readonly int[] _trail = new int[Candidate.Count];
    private readonly int[] _ready = new int[NetGraph.Choices];

    // At which place of the trail each candidate is that is gone.
    private readonly int[] _place = new int[Candidate.Count];
    private NetGraph _graph = null!;
    private ulong[] _gone = [];
    private int _trailed;
    private int _readied;
    private int _deadEnds;

    /// <summary>Whether a choice has no candidate left.</summary>
    internal bool IsDead => _deadEnds > 0;

    /// <summary>How far the walk is, to go back there.</summary>
    internal (int Gone, int Ready) Mark => (_trailed, _readied);

    /// <summary>Starts on a board, with nothing placed.</summary>
    internal void Begin(NetGraph graph)
    {
        _graph = graph;
        if (_gone.Length < graph.Words)
            _gone = new ulong[graph.Words];
        _gone.AsSpan().Clear();
        (_trailed, _readied, _deadEnds) = (0, 0, 0);
        graph.Content.CopyTo(_left);
        for (var choice = 0; choice < NetGraph.Choices; choice++)
            Note(choice);
    }

    /// <summary>Places a candidate.</summary>
    internal void Place(int candidate)
    {
        var excluded = _graph.Excluded(candidate);
        for (var word = 0; word < excluded.Length; word++)
        {
            var fresh = excluded[word] & ~_gone[word];
            _gone[word] |= fresh;
            for (; fresh != 0; fresh &= fresh - 1)
                TakeOut(word << 6 | BitOperations.TrailingZeroCount(fresh));
        }
    }

    /// <summary>Takes a candidate out that stands.</summary>
    internal void Remove(int candidate)
    {
        _gone[candidate >> 6] |= 1ul << candidate;
        TakeOut(candidate);
    }

    /// <summary>Whether a candidate is gone.</summary>
    internal bool IsGone(int candidate) => (_gone[candidate >> 6] >> candidate & 1) != 0;

    /// <summary>Whether a candidate that is gone went when at least so many others were.</summary>
    internal bool WentSince(int others, int candidate) => _place[candidate] >= others;

    /// <summary>Whether a choice has one candidate left.</summary>
    internal bool HasOneLeft(int choice) => _left[choice] is >= One and < 2 * One;

    /// <summary>The candidates that are gone, in the order in which they went.</summary>
    internal ReadOnlySpan<int> Gone => _trail.AsSpan(0, _trailed);

    /// <summary>Adds the choices that have no candidate left.</summary>
    internal void AddDeadEnds(List<int> choices)
    {
        for (var choice = 0; choice < NetGraph.Choices; choice++)
        {
            if (_left[choice] == 0)
                choices.Add(choice);
        }
    }

    /// <summary>Takes back all that was placed since.</summary>
    internal void GoBack((int Gone, int Ready) mark)
    {
        for (var last = _trailed - 1; last >= mark.Gone; last--)
        {
            var gone = _trail[last];
            _gone[gone >> 6] &= ~(1ul << gone);
            foreach (var choice in _graph.ChoicesOf(gone))
            {
                if (_left[choice] == 0)
                    _deadEnds--;
                _left[choice] += One + gone;
            }
        }

        (_trailed, _readied) = mark;
    }

    /// <summary>Keeps where the walk is: to go far and back again this takes less time than a mark does.</summary>
    internal void Keep(Kept kept)
    {
        _left.CopyTo(kept.Left);
        _gone.CopyTo(kept.Gone);
        (kept.Mark, kept.DeadEnds) = (Mark, _deadEnds);
    }

    /// <summary>Goes back to where it was kept; from there on it has been nowhere but farther.</summary>
    internal void GoBack(Kept kept)
    {
        kept.Left.CopyTo(_left);
        kept.Gone.AsSpan(0, _gone.Length).CopyTo(_gone);
        ((_trailed, _readied), _deadEnds) = (kept.Mark, kept.DeadEnds);
    }

    /// <summary>Adds all singles that have come up to a row.</summary>
    internal void AddSingles(Span<ulong> row)
    {
        foreach (var choice in _ready.AsSpan(0, _readied))
        {
            if (HasOneLeft(choice))
                row.Set(LastOf(choice));
        }
    }

    /// <summary>Adds the singles that have come up since, but for those that are known, and makes them known.</summary>
    /// <param name="since">How many choices had come up before.</param>
    /// <param name="known">The candidates that are known, as a row.</param>
    /// <param name="singles">Where the singles go.</param>
    internal void AddSingles(int since, Span<ulong> known, List<int> singles)
    {
        for (; since < _readied; since++)
        {
            if (!HasOneLeft(_ready[since]))
                continue;
            var single = LastOf(_ready[since]);
            if (NodeBits.Has(known, single))
                continue;
            known.Set(single);
            singles.Add(single);
        }
    }

    /// <summary>Whether a choice that had come up has its last candidate still, a single.</summary>
    /// <param name="ready">How many choices had come up before it.</param>
    /// <param name="single">The single.</param>
    internal bool IsSingle(int ready, out int single)
    {
        var choice = _ready[ready];
        single = LastOf(choice);
        return HasOneLeft(choice);
    }

    /// <summary>Whether a candidate that stands leads to a dead end at once, if it is placed.</summary>
    /// <param name="candidate">The candidate.</param>
    /// <param name="singles">All singles that have come up, as a row.</param>
    internal bool WouldBeDead(int candidate, ReadOnlySpan<ulong> singles)
    {
        var excluded = _graph.Excluded(candidate);
        if (excluded.Overlaps(singles))
            return true;
        foreach (var choice in _graph.Across(candidate))
        {
            if (_left[choice] is >= 2 * One and < Digit.Count * One && HasOnly(choice, excluded))
                return true;
        }

        return false;
    }

    // Whether all that stands of a choice is in a row.
    private bool HasOnly(int choice, ReadOnlySpan<ulong> row)
    {
        var members = _graph.Members(choice);
        for (var word = 0; word < members.Length; word++)
        {
            if ((members[word] & ~_gone[word] & ~row[word]) != 0)
                return false;
        }

        return true;
    }

    private void TakeOut(int candidate)
    {
        _place[candidate] = _trailed;
        _trail[_trailed++] = candidate;
        foreach (var choice in _graph.ChoicesOf(candidate))
        {
            _left[choice] -= One + candidate;
            Note(choice);
        }
    }

    private void Note(int choice)
    {
        if (_left[choice] >= 2 * One)
            return;
        if (_left[choice] == 0)
            _deadEnds++;
        else
            _ready[_readied++] = choice;
    }

    // Of a choice that has one left.
    private int LastOf(int choice) => _left[choice] - One;

    /// <summary>Where a walk was.</summary>
    internal sealed class Kept
    {
        internal int[] Left { get; } = new int[NetGraph.Choices];

        internal ulong[] Gone { get; } = new ulong[NetGraph.MostWords];

        internal (int Gone, int Ready) Mark { get; set; }

        internal int DeadEnds { get; set; }
    }
}
