using System.Numerics;
using System.Runtime.InteropServices;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// Candidates placed one after another, and taken back in turn: what is gone because of them, which choices have one candidate left
/// (a single) and whether one has none (a dead end). Nothing is allocated on the way.
/// </summary>
internal sealed class NetWalk
{
    private readonly int[] _left = new int[NetGraph.Choices];
    private readonly List<int> _trail = [];
    private readonly List<int> _ready = [];

    // At which place of the trail each candidate is that is gone.
    private readonly int[] _place = new int[Candidate.Count];
    private NetGraph _graph = null!;
    private ulong[] _gone = [];
    private int _deadEnds;

    /// <summary>Whether a choice has no candidate left.</summary>
    internal bool IsDead => _deadEnds > 0;

    /// <summary>How far the walk is; <see cref="GoBack"/> takes it.</summary>
    internal (int Gone, int Ready) Mark => (_trail.Count, _ready.Count);

    /// <summary>Starts on a board, with nothing placed.</summary>
    internal void Begin(NetGraph graph)
    {
        _graph = graph;
        if (_gone.Length < graph.Words)
            _gone = new ulong[graph.Words];
        _gone.AsSpan().Clear();
        _trail.Clear();
        _ready.Clear();
        _deadEnds = 0;
        graph.Sizes.CopyTo(_left);
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
    internal bool HasOneLeft(int choice) => _left[choice] == 1;

    /// <summary>The candidates that are gone, in the order in which they went.</summary>
    internal ReadOnlySpan<int> Gone => CollectionsMarshal.AsSpan(_trail);

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
        for (var last = _trail.Count - 1; last >= mark.Gone; last--)
        {
            var gone = _trail[last];
            _gone[gone >> 6] &= ~(1ul << gone);
            foreach (var choice in _graph.ChoicesOf(gone))
            {
                if (_left[choice]++ == 0)
                    _deadEnds--;
            }
        }

        _trail.RemoveRange(mark.Gone, _trail.Count - mark.Gone);
        _ready.RemoveRange(mark.Ready, _ready.Count - mark.Ready);
    }

    /// <summary>Adds the singles that have come up since, but for those that are known, and makes them known.</summary>
    /// <param name="since">How many choices had come up before.</param>
    /// <param name="known">The candidates that are known, as a row.</param>
    /// <param name="singles">Where the singles go.</param>
    internal void AddSingles(int since, Span<ulong> known, List<int> singles)
    {
        for (; since < _ready.Count; since++)
        {
            if (_left[_ready[since]] != 1)
                continue;
            var single = SingleOf(_ready[since]);
            if (NodeBits.Has(known, single))
                continue;
            known.Set(single);
            singles.Add(single);
        }
    }

    private void TakeOut(int candidate)
    {
        _place[candidate] = _trail.Count;
        _trail.Add(candidate);
        foreach (var choice in _graph.ChoicesOf(candidate))
        {
            _left[choice]--;
            Note(choice);
        }
    }

    private void Note(int choice)
    {
        if (_left[choice] == 1)
            _ready.Add(choice);
        else if (_left[choice] == 0)
            _deadEnds++;
    }

    private int SingleOf(int choice)
    {
        var members = _graph.Members(choice);
        var word = 0;
        while ((members[word] & ~_gone[word]) == 0)
            word++;
        return word << 6 | BitOperations.TrailingZeroCount(members[word] & ~_gone[word]);
    }
}
