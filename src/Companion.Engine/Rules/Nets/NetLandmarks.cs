using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// Landmarks of a walk: sets of singles, of each of which every net from here on places at least one. No two of them share a single,
/// so that no net from here on has fewer steps than there are landmarks.
/// </summary>
/// <remarks>
/// Each is what is cut off by as many singles as can be placed without coming to a dead end: then each further one leads to one.
/// Those that are in a landmark already are placed whenever they come up, so that the next landmark does without them.
/// </remarks>
internal sealed class NetLandmarks(NetWalk walk)
{
    // The landmarks, row upon row, those of a level after those of the level before.
    private ulong[] _rows = [];
    private int _words;
    private int _first;
    private int _end;

    // The singles of the landmarks of this level.
    private readonly ulong[] _free = new ulong[NetGraph.MostWords];

    // What has come up or may not be placed.
    private readonly ulong[] _seen = new ulong[NetGraph.MostWords];

    // What has come up and is in no landmark.
    private readonly int[] _queue = new int[Candidate.Count];
    private int _queued;

    // How many choices that had one candidate left have been looked at.
    private int _ready;

    // Where the walk was before landmarks were looked for, and before one was.
    private readonly NetWalk.Kept _start = new();
    private readonly NetWalk.Kept _beforeCut = new();

    /// <summary>The level; <see cref="GoBack"/> takes it.</summary>
    internal (int First, int End) Level => (_first, _end);

    /// <summary>How many landmarks this level has.</summary>
    internal int Count => _end - _first;

    /// <summary>Whether a single is in a landmark, just after more were looked for.</summary>
    internal bool Has(int single) => NodeBits.Has(_free, single);

    /// <summary>Begins with a board, without a landmark.</summary>
    internal void Begin(NetGraph graph) => (_words, _first, _end) = (graph.Words, 0, 0);

    /// <summary>Goes to the next level, on which a single is placed: landmarks that it is not in remain.</summary>
    /// <param name="placed">The single.</param>
    /// <param name="known">What is placed, with it, and what may not be placed any more.</param>
    /// <returns>Whether there can be nets from there on: each landmark has a single left.</returns>
    internal bool GoOn(int placed, ReadOnlySpan<ulong> known)
    {
        var (first, end) = Level;
        _first = end;
        for (var landmark = first; landmark < end; landmark++)
        {
            if (NodeBits.Has(Row(landmark), placed))
                continue;
            if (!AddWithout(known, landmark))
                return false;
        }

        return true;
    }

    /// <summary>Goes back to a level.</summary>
    internal void GoBack((int First, int End) level) => (_first, _end) = level;

    /// <summary>Looks for more landmarks.</summary>
    /// <param name="most">Of how many steps a net may be.</param>
    /// <param name="known">What is placed and what may not be placed any more.</param>
    /// <returns>Whether there can be a net of so many steps: there are not more landmarks, and there is a dead end.</returns>
    internal bool Extend(int most, ReadOnlySpan<ulong> known)
    {
        if (Count > most)
            return false;
        walk.Keep(_start);
        known.CopyTo(_seen);
        _free.AsSpan(0, _words).Clear();
        for (var landmark = _first; landmark < _end; landmark++)
            _free.AsSpan(0, _words).Add(Row(landmark));
        (_ready, _queued) = (0, 0);
        var canBe = Grow(most);
        walk.GoBack(_start);
        return canBe;
    }

    private Span<ulong> Row(int landmark) => _rows.AsSpan(landmark * _words, _words);

    private bool AddWithout(ReadOnlySpan<ulong> known, int landmark)
    {
        var row = NewRow();
        var old = Row(landmark);
        var any = 0ul;
        for (var word = 0; word < row.Length; word++)
            any |= row[word] = old[word] & ~known[word];
        return any != 0;
    }

    private Span<ulong> NewRow()
    {
        if (_rows.Length < (_end + 1) * _words)
            Array.Resize(ref _rows, (_end + 8) * _words * 2);
        return Row(_end++);
    }

    private bool Grow(int most)
    {
        while (true)
        {
            PlaceFree();
            if (walk.IsDead)
                return true;
            if (Count == most || !AddCut())
                return false;
            PlaceQueued();
        }
    }

    // Places one single after another that leads to no dead end; the others are a landmark.
    private bool AddCut()
    {
        var row = NewRow();
        row.Clear();
        var any = false;
        walk.Keep(_beforeCut);
        Span<ulong> seenBefore = stackalloc ulong[NetGraph.MostWords];
        Span<ulong> seen = stackalloc ulong[NetGraph.MostWords];
        _seen.CopyTo(seenBefore);
        var (queuedBefore, readyBefore) = (_queued, _ready);
        for (var at = 0; at < _queued; at++)
        {
            _seen.CopyTo(seen);
            var (mark, queued, ready) = (walk.Mark, _queued, _ready);
            walk.Place(_queue[at]);
            PlaceFree();
            if (!walk.IsDead)
                continue;
            walk.GoBack(mark);
            seen.CopyTo(_seen);
            (_queued, _ready) = (queued, ready);
            row.Set(_queue[at]);
            any = true;
        }

        walk.GoBack(_beforeCut);
        seenBefore.CopyTo(_seen);
        (_queued, _ready) = (queuedBefore, readyBefore);
        _free.AsSpan(0, _words).Add(row);
        return any;
    }

    // Places what is in a landmark as it comes up; the rest is queued.
    private void PlaceFree()
    {
        while (!walk.IsDead && _ready < walk.Mark.Ready)
        {
            if (!walk.IsSingle(_ready++, out var single) || NodeBits.Has(_seen, single))
                continue;
            _seen.AsSpan().Set(single);
            if (NodeBits.Has(_free, single))
                walk.Place(single);
            else
                _queue[_queued++] = single;
        }
    }

    private void PlaceQueued()
    {
        var kept = 0;
        for (var at = 0; at < _queued; at++)
        {
            if (!NodeBits.Has(_free, _queue[at]))
                _queue[kept++] = _queue[at];
            else if (!walk.IsDead)
                walk.Place(_queue[at]);
        }

        _queued = kept;
    }
}
