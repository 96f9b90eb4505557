using System.Numerics;
using System.Runtime.InteropServices;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// All arms of a board, and which of them fit what is supposed: all their starts are false then. Made again for each board in the
/// same memory.
/// </summary>
internal sealed class Arms
{
    private readonly List<Choice> _choices = [];
    private readonly List<(CellSet Cells, DigitSet Digits)> _extents = [];
    private readonly List<Arm> _arms = [];

    // Where the arms of each cell, and of each digit in each house, end among all.
    private readonly List<int> _ends = [];

    // The candidates of each choice as nodes, and where they end among all.
    private readonly List<int> _nodes = [];
    private readonly List<int> _endsOfNodes = [];

    // The arms of each choice by number, and for each what it shares: bit n for the choice's candidate n.
    private readonly List<List<(int Arm, int Shared)>> _ofChoice = [];

    // How many candidates an arm of each choice shares at most.
    private readonly List<int> _most = [];
    private readonly CandidateRows _rows = new();

    /// <summary>How many there are.</summary>
    internal int Count => _arms.Count;

    /// <summary>An arm.</summary>
    internal ref readonly Arm this[int arm] => ref CollectionsMarshal.AsSpan(_arms)[arm];

    /// <summary>Where the arms of each thing that only one can have end among all, in order.</summary>
    internal ReadOnlySpan<int> Ends => CollectionsMarshal.AsSpan(_ends);

    /// <summary>Reads a board, whose candidates are nodes of a graph.</summary>
    internal void Read(Board board, ChainGraph graph)
    {
        _choices.Clear();
        _arms.Clear();
        _ends.Clear();
        ReadChoices(board, graph);
        foreach (var cell in board.Open)
            Add(CellSet.Of(cell), board[cell]);
        foreach (var house in HouseSet.All)
        {
            foreach (var digit in board.MissingFrom(house))
                Add(board[digit] & house.Cells, DigitSet.Of(digit));
        }
    }

    /// <summary>Adds the arms that fit where these nodes are false to a row that is empty.</summary>
    internal void AddFitting(ReadOnlySpan<ulong> falses, Span<ulong> fitting)
    {
        for (var choice = 0; choice < _choices.Count; choice++)
        {
            // What may still be true has to be what the arm shares, which is too much for most choices.
            if (_rows.CountBeside(choice, falses) > _most[choice])
                continue;
            var standing = Standing(choice, falses);
            foreach (var (arm, shared) in _ofChoice[choice])
            {
                if ((standing & ~shared) == 0)
                    fitting.Set(arm);
            }
        }
    }

    private int Standing(int choice, ReadOnlySpan<ulong> falses)
    {
        var (standing, bit) = (0, 1);
        for (var node = choice == 0 ? 0 : _endsOfNodes[choice - 1]; node < _endsOfNodes[choice]; node++, bit <<= 1)
        {
            if (!falses.Has(_nodes[node]))
                standing |= bit;
        }

        return standing;
    }

    private void ReadChoices(Board board, ChainGraph graph)
    {
        _nodes.Clear();
        _endsOfNodes.Clear();
        _extents.Clear();
        _most.Clear();
        _rows.Begin(graph);
        Choice.FindAll(board, houses: true, fewest: 3, _choices);
        for (var choice = 0; choice < _choices.Count; choice++)
        {
            _rows.Add(_choices[choice].Candidates);
            foreach (var candidate in _choices[choice].Candidates)
                _nodes.Add(graph.NodeOf(candidate));
            _endsOfNodes.Add(_nodes.Count);
            _extents.Add((_choices[choice].Candidates.Cells, _choices[choice].Candidates.Digits));
            _most.Add(0);
            if (_ofChoice.Count == choice)
                _ofChoice.Add([]);
            _ofChoice[choice].Clear();
        }
    }

    // Only one of these candidates can be true.
    private void Add(CellSet cells, DigitSet digits)
    {
        for (var number = 0; number < _choices.Count; number++)
        {
            // Most choices have nothing to do with it.
            if (!_extents[number].Cells.Overlaps(cells) || (_extents[number].Digits & digits).IsEmpty)
                continue;
            var arm = new Arm(_choices[number], _choices[number].Candidates & CandidateSet.Of(cells, digits));
            if (arm.Shared.IsEmpty || arm.Starts.IsEmpty)
                continue;
            var shared = SharedBits(arm);
            _ofChoice[number].Add((_arms.Count, shared));
            _most[number] = Math.Max(_most[number], BitOperations.PopCount((uint)shared));
            _arms.Add(arm);
        }

        _ends.Add(_arms.Count);
    }

    private static int SharedBits(Arm arm)
    {
        var (bits, bit) = (0, 1);
        foreach (var candidate in arm.Choice.Candidates)
        {
            if (arm.Shared.Contains(candidate))
                bits |= bit;
            bit <<= 1;
        }

        return bits;
    }
}
