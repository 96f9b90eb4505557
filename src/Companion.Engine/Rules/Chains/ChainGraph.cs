using System.Runtime.InteropServices;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// The nodes of a board and how they are linked, as rows of bits, so that a walk from a node takes all its next steps at once.
/// Made again for each board in the same memory.
/// </summary>
internal sealed class ChainGraph(ChainKind kind)
{
    private const int None = -1;

    private readonly Dictionary<Node, int> _several = [];
    private readonly List<Node> _nodes = [];
    private readonly List<CellSet> _seen = [];
    private readonly List<StrongLinkOfNodes> _links = [];
    private readonly ChainRows _rows = new();
    private Board _board = Board.Blank;

    /// <summary>What its chains are made of.</summary>
    internal ChainKind Kind => kind;

    /// <summary>How many nodes there are.</summary>
    internal int Count => _nodes.Count;

    /// <summary>How many of them, the first, are candidates: every candidate that stands, in order.</summary>
    internal int Singles => Numbers.Count;

    /// <summary>Their numbers, which are those of their nodes.</summary>
    internal CandidateNumbers Numbers { get; } = new();

    /// <summary>The length of a row.</summary>
    internal int Words => _rows.Words;

    /// <summary>The strong links; one pair of nodes may have several.</summary>
    internal List<StrongLinkOfNodes> Links => _links;

    internal Node this[int node] => _nodes[node];

    /// <summary>The nodes that a weak link leads to: they are false where this one is true.</summary>
    internal ReadOnlySpan<ulong> Weak(int node) => _rows.Weak(node);

    /// <summary>The nodes from which any strong link goes.</summary>
    internal ReadOnlySpan<ulong> Linked => _rows.Linked;

    /// <summary>The nodes that are true where this one is false.</summary>
    internal ReadOnlySpan<ulong> Strong(int node) => _rows.Strong(node);

    /// <summary>
    /// All nodes that are false where this one is true, whether or not chains of this kind have a weak link there: the other
    /// candidates of its cell always are.
    /// </summary>
    internal ReadOnlySpan<ulong> Excluded(int node) => _rows.Excluded(node);

    /// <summary>The nodes that are true where this one is true, by one weak and one strong link.</summary>
    internal ReadOnlySpan<ulong> Step(int node) => _rows.Step(node);

    /// <summary>The node of a candidate that stands.</summary>
    internal int NodeOf(Candidate candidate) => Numbers.Of(candidate);

    /// <summary>The node of a digit in these cells, or -1.</summary>
    internal int NodeOf(Node node) => node.Cells.Count == 1
        ? NodeOf(new Candidate(node.Cells.First, node.Digit))
        : _several.GetValueOrDefault(node, None);

    /// <summary>The candidates that can be true with neither of the two nodes, so that they go if one of these is true.</summary>
    internal CandidateSet SeenBy(int one, int other)
    {
        var candidates = CandidateSet.Empty;
        foreach (var node in new SharedNodes(Excluded(one), Excluded(other)))
        {
            if (node < Singles)
                candidates = candidates.With(CandidateOf(node));
        }

        return candidates;
    }

    /// <summary>The candidate that is this node.</summary>
    internal Candidate CandidateOf(int single) => new(_nodes[single].Cells.First, _nodes[single].Digit);

    /// <summary>Whether a node comes first by its cells, then by its digit.</summary>
    internal bool IsBefore(int one, int other)
    {
        var (first, second) = (_nodes[one], _nodes[other]);
        return new Candidate(first.Cells.First, first.Digit).CompareTo(new(second.Cells.First, second.Digit)) < 0;
    }

    /// <summary>
    /// The smallest almost locked set by which the two nodes, of two digits, are linked strongly; a cell with two candidates is the
    /// smallest of all.
    /// </summary>
    internal LockedSet SetOf(Node one, Node other)
    {
        if (one.Cells == other.Cells && one.Cells.Count == 1 && _board[one.Cells.First].Count == 2)
            return new(one.Cells, _board[one.Cells.First]);
        var smallest = default(LockedSet);
        foreach (var set in LockedSet.AllAlmost(_board))
        {
            if (set.Digits.Contains(one.Digit) && set.Digits.Contains(other.Digit)
                && set.Cells.ContainsAll(one.Cells | other.Cells)
                && (_board[one.Digit] & set.Cells) == one.Cells && (_board[other.Digit] & set.Cells) == other.Cells
                && (smallest.Cells.IsEmpty || set.Cells.Count < smallest.Cells.Count))
                smallest = set;
        }

        return smallest;
    }

    /// <summary>
    /// The candidates that go where a set is known to hold all its digits but one of these: its other digits, from the cells that
    /// see all their places in the set.
    /// </summary>
    internal CandidateSet LockedOut(LockedSet set, DigitSet linking)
    {
        var removes = CandidateSet.Empty;
        foreach (var digit in set.Digits - linking)
            removes = removes.WithPlane(digit, _board[digit] & (_board[digit] & set.Cells).CommonPeers);
        return removes;
    }

    /// <summary>The nodes that are true where this candidate is, by all that it excludes and one strong link.</summary>
    internal ReadOnlySpan<ulong> Follows(int single) => _rows.Follows(single);

    /// <summary>Reads a board.</summary>
    internal void Read(Board board)
    {
        _board = board;
        Clear();
        foreach (var cell in board.Open)
        {
            foreach (var digit in board[cell])
                Add(new(digit, CellSet.Of(cell)), cell.Peers);
        }

        Numbers.Read(board);
        if (kind.HasFlag(ChainKind.Cells))
            LinkCells();
        if (kind.HasFlag(ChainKind.Places))
            LinkPlaces();
        if (kind.HasFlag(ChainKind.Sets))
            LinkSets();
        if (kind.HasFlag(ChainKind.Fish))
            LinkFish();
        _rows.Make(this, board, _seen);
    }

    private void Clear()
    {
        _several.Clear();
        _nodes.Clear();
        _seen.Clear();
        _links.Clear();
    }

    private int Add(Node node, CellSet seen)
    {
        _nodes.Add(node);
        _seen.Add(seen);
        return Count - 1;
    }

    // None where no candidate sees the whole node: no chain could come to it or end in it.
    private int NodeOf(Digit digit, CellSet cells)
    {
        if (cells.Count == 1)
            return NodeOf(new Candidate(cells.First, digit));
        var node = new Node(digit, cells);
        ref var index = ref CollectionsMarshal.GetValueRefOrAddDefault(_several, node, out var isKnown);
        if (isKnown)
            return index;
        var seen = node.Seen;
        index = seen.Overlaps(_board[digit]) ? Add(node, seen) : None;
        return index;
    }

    private void LinkCells()
    {
        foreach (var cell in _board.CellsWith(2))
        {
            var (one, set) = (_board[cell].First, new LockedSet(CellSet.Of(cell), _board[cell]));
            Link(NodeOf(new Candidate(cell, one)), NodeOf(new Candidate(cell, _board[cell].Without(one).First)), cells: 1, set);
        }
    }

    private void LinkPlaces()
    {
        foreach (var house in HouseSet.All)
        {
            foreach (var digit in Digit.All)
            {
                var places = _board[digit] & house.Cells;
                if (places.Count == 2)
                    Link(NodeOf(new Candidate(places.First, digit)), NodeOf(digit, places.Without(places.First)), cells: 2);
                if (places.Count <= 2 || !kind.HasFlag(ChainKind.Groups))
                    continue;
                foreach (var (first, second) in Segments.InTwo(house, places))
                    Link(NodeOf(digit, first), NodeOf(digit, second), places.Count);
            }
        }
    }

    private void LinkSets()
    {
        Span<int> nodes = stackalloc int[Digit.Count];
        foreach (var set in LockedSet.AllAlmost(_board))
        {
            var count = 0;
            foreach (var digit in set.Digits)
                nodes[count++] = NodeOf(digit, _board[digit] & set.Cells);
            for (var one = 0; one < count; one++)
            {
                for (var other = one + 1; other < count; other++)
                    Link(nodes[one], nodes[other], set.Cells.Count, set);
            }
        }
    }

    private void LinkFish()
    {
        foreach (var (digit, _, fin, one, other) in AlmostFish.All(_board))
        {
            Link(NodeOf(digit, fin), NodeOf(digit, one), (fin | one | other).Count);
            Link(NodeOf(digit, fin), NodeOf(digit, other), (fin | one | other).Count);
        }
    }

    private void Link(int one, int other, int cells, LockedSet set = default)
    {
        if (one != None && other != None)
            _links.Add(new(one, other, cells, set));
    }
}
