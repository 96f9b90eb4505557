using System.Numerics;
using System.Runtime.InteropServices;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// All arms of a board, and which of them fit what is supposed: all their starts are false then. Made again for each board in the
/// same memory.
/// </summary>
internal sealed class Arms
{
    private const int None = -1;

    private readonly List<Choice> _choices = [];
    private readonly List<Arm> _arms = [];

    // The choice of each cell, and of each digit in each house, by number.
    private readonly int[] _ofCell = new int[Cell.Count];
    private readonly int[] _ofHouse = new int[House.Count * Digit.Count];

    // Where the arms of each cell, and of each digit in each house, end among all.
    private readonly List<int> _ends = [];

    // The candidates of each choice by number, and where they end among all.
    private readonly CandidateNumbers _numbers = new();
    private readonly List<int> _candidates = [];
    private readonly List<int> _endsOfCandidates = [];

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

    /// <summary>Reads a board.</summary>
    internal void Read(Board board)
    {
        _numbers.Read(board);
        _choices.Clear();
        _arms.Clear();
        _ends.Clear();
        ReadChoices(board);
        foreach (var cell in board.Open)
            AddOf(cell, board);
        foreach (var house in HouseSet.All)
        {
            foreach (var digit in board.MissingFrom(house))
                AddOf(digit, house, board);
        }
    }

    /// <summary>Adds the arms that fit where these candidates are false to a row that is empty.</summary>
    internal void AddFitting(ReadOnlySpan<ulong> falses, Span<ulong> fitting)
    {
        var most = CollectionsMarshal.AsSpan(_most);
        for (var choice = 0; choice < most.Length; choice++)
        {
            // What may still be true has to be what the arm shares, which is too much for most choices.
            if (_rows.HasMoreBeside(choice, falses, most[choice]))
                continue;
            var standing = Standing(choice, falses);
            foreach (var (arm, shared) in CollectionsMarshal.AsSpan(_ofChoice[choice]))
            {
                if ((standing & ~shared) == 0)
                    fitting.Set(arm);
            }
        }
    }

    private int Standing(int choice, ReadOnlySpan<ulong> falses)
    {
        var (standing, bit) = (0, 1);
        for (var at = choice == 0 ? 0 : _endsOfCandidates[choice - 1]; at < _endsOfCandidates[choice]; at++, bit <<= 1)
        {
            if (!falses.Has(_candidates[at]))
                standing |= bit;
        }

        return standing;
    }

    private void ReadChoices(Board board)
    {
        _candidates.Clear();
        _endsOfCandidates.Clear();
        _most.Clear();
        _rows.Begin(_numbers);
        Array.Fill(_ofCell, None);
        Array.Fill(_ofHouse, None);
        Choice.FindAll(board, houses: true, fewest: 3, _choices);
        for (var choice = 0; choice < _choices.Count; choice++)
        {
            var (candidates, house) = _choices[choice];
            if (house is { } its)
                _ofHouse[At(its, candidates.Digits.First)] = choice;
            else
                _ofCell[candidates.Cells.First.Index] = choice;
            _rows.Add(candidates);
            foreach (var candidate in candidates)
                _candidates.Add(_numbers.Of(candidate));
            _endsOfCandidates.Add(_candidates.Count);
            _most.Add(0);
            if (_ofChoice.Count == choice)
                _ofChoice.Add([]);
            _ofChoice[choice].Clear();
        }
    }

    // Only one digit is in a cell: places of several digits may share it.
    private void AddOf(Cell cell, Board board)
    {
        foreach (var house in cell.Houses)
        {
            foreach (var digit in board[cell])
                Add(_ofHouse[At(house, digit)], CellSet.Of(cell), digit, board);
        }

        _ends.Add(_arms.Count);
    }

    // A digit is in one place of a house: cells of it may share that, and its places in houses that cross.
    private void AddOf(Digit digit, House house, Board board)
    {
        var places = board[digit] & house.Cells;
        foreach (var cell in places)
            Add(_ofCell[cell.Index], CellSet.Of(cell), digit, board);
        foreach (var other in HouseSet.All)
        {
            if (other != house)
                Add(_ofHouse[At(other, digit)], places & other.Cells, digit, board);
        }

        _ends.Add(_arms.Count);
    }

    private void Add(int number, CellSet cells, Digit digit, Board board)
    {
        if (number == None || cells.IsEmpty)
            return;
        var choice = _choices[number];
        var shared = SharedBits(choice, cells, digit, board);
        // All candidates of the choice: none of them would be a start.
        if (BitOperations.PopCount((uint)shared) == CandidatesOf(number))
            return;
        _ofChoice[number].Add((_arms.Count, shared));
        _most[number] = Math.Max(_most[number], BitOperations.PopCount((uint)shared));
        _arms.Add(new(choice, CandidateSet.Of(cells, digit)));
    }

    private static int At(House house, Digit digit) => house.Index * Digit.Count + digit.Index;

    private int CandidatesOf(int choice) => _endsOfCandidates[choice] - (choice == 0 ? 0 : _endsOfCandidates[choice - 1]);

    // In the order of the choice's candidates: of a cell by the digit, of a house by the place.
    private static int SharedBits(in Choice choice, CellSet cells, Digit digit, Board board)
    {
        if (choice.House is not { } house)
            return 1 << BitOperations.PopCount((uint)board[cells.First].Bits & (1u << digit.Index) - 1);
        var (bits, bit) = (0, 1);
        foreach (var place in board[digit] & house.Cells)
        {
            if (cells.Contains(place))
                bits |= bit;
            bit <<= 1;
        }

        return bits;
    }
}
