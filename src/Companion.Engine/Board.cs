using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Companion.Engine.Proofs;

namespace Companion.Engine;

/// <summary>
/// Givens, placed digits and the candidates that still stand. Immutable. No digit stands twice in a house, and a candidate
/// never stands in a filled cell or beside an equal digit; a cell whose candidates were all removed is possible
/// (<see cref="DeadCells"/>) when a wrong digit was placed or a true candidate removed.
/// </summary>
public sealed class Board
{
    // 9 planes of 16 bytes, 81 sets of 2 and two cell sets: 338 bytes. The same facts twice, by digit and by cell, because the
    // rules ask both ways far more often than a board is made.
    private readonly CandidateSet _candidates;
    private readonly CellDigits _digits;

    [InlineArray(Cell.Count)]
    private struct CellDigits
    {
        private DigitSet _first;
    }

    private Board(in CandidateSet candidates, in CellDigits digits, CellSet filled, CellSet givens)
    {
        _candidates = candidates;
        _digits = digits;
        Filled = filled;
        Givens = givens;
    }

    /// <summary>The board with no digit in it, all 729 candidates standing.</summary>
    public static Board Blank { get; } = MakeBlank();

    /// <summary>The cells with a digit, given or placed.</summary>
    public CellSet Filled { get; }

    /// <summary>The cells whose digit was given.</summary>
    public CellSet Givens { get; }

    /// <summary>The cells without a digit.</summary>
    public CellSet Open => ~Filled;

    /// <summary>Whether every cell has a digit.</summary>
    public bool IsFull => Filled == CellSet.All;

    /// <summary>The candidates that stand; none in filled cells.</summary>
    public CandidateSet Candidates => _candidates;

    /// <summary>Open cells in which no candidate stands.</summary>
    public CellSet DeadCells => Open - _candidates.Cells;

    /// <summary>The open cells in which the digit stands as a candidate.</summary>
    public CellSet this[Digit digit] => _candidates[digit];

    /// <summary>The candidates that stand in the cell; empty for a filled cell.</summary>
    public DigitSet this[Cell cell] => Filled.Contains(cell) ? DigitSet.Empty : _digits[cell.Index];

    /// <summary>The digit in the cell, or null where the cell is open.</summary>
    public Digit? DigitAt(Cell cell) => Filled.Contains(cell) ? _digits[cell.Index].First : null;

    /// <summary>The candidates of these digits that stand in these cells.</summary>
    internal CandidateSet Standing(CellSet cells, DigitSet digits) => _candidates & CandidateSet.Of(cells, digits);

    /// <summary>The cells in which exactly this many candidates stand; 1 to 9, since filled cells have none.</summary>
    internal CellSet CellsWith(int count) => _candidates.CellsWith(count);

    /// <summary>The digits that no cell of the house holds yet.</summary>
    public DigitSet MissingFrom(House house)
    {
        var placed = DigitSet.Empty;
        foreach (var cell in house.Cells & Filled)
            placed |= _digits[cell.Index];
        return ~placed;
    }

    /// <summary>Validates a draft. All reasons are returned, not only the first.</summary>
    /// <param name="draft">What came in.</param>
    public static Reading<Board> Read(GridDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var faults = ImmutableArray.CreateBuilder<BoardFault>();
        if (draft.Text.Length != Cell.Count)
            faults.Add(new BoardFault.WrongLength(draft.Text.Length));
        for (var position = 0; position < draft.Text.Length; position++)
        {
            if (draft.Text[position] is not (BoardText.Blank or (>= '1' and <= '9')))
                faults.Add(new BoardFault.BadCharacter(position, draft.Text[position]));
        }

        if (faults.Count == 0)
            FindEqualDigits(draft.Text, faults);
        if (faults.Count > 0)
            return new(faults.ToImmutable());

        var board = Fill(draft);
        foreach (var cell in board.DeadCells)
            faults.Add(new BoardFault.NoCandidateLeft(cell));
        return faults.Count == 0 ? new(board) : new(faults.ToImmutable());
    }

    /// <summary>Reads a text that is known to be good, as in tests and examples.</summary>
    /// <param name="text">Any layout that <see cref="BoardText.Read"/> takes.</param>
    /// <exception cref="FormatException">The text is not a board; the message holds every reason.</exception>
    public static Board Parse(string text)
    {
        var reading = Read(BoardText.Read(text));
        return reading.Value ?? throw new FormatException(string.Join(' ', reading.Faults.Select(fault => fault.Sentence)));
    }

    /// <summary>The board with the digit placed, and with it gone from the cell's peers.</summary>
    /// <exception cref="ArgumentException">The digit does not stand as a candidate in the cell.</exception>
    public Board Place(Candidate candidate)
    {
        var (cell, digit) = candidate;
        if (!_candidates.Contains(candidate))
            throw new ArgumentException($"{digit} does not stand in {cell}.", nameof(candidate));
        return PlaceFree(cell, digit, Givens);
    }

    /// <summary>The board without these candidates; those that do not stand are ignored.</summary>
    public Board Remove(in CandidateSet candidates)
    {
        var gone = candidates & _candidates;
        var digits = _digits;
        foreach (var cell in gone.Cells)
            digits[cell.Index] -= gone[cell];
        return new(_candidates - gone, digits, Filled, Givens);
    }

    /// <summary>The board after a deduction: its placements made, its removals taken out.</summary>
    /// <exception cref="ArgumentException">A digit that the deduction places does not stand here.</exception>
    public Board Apply(Deduction deduction)
    {
        ArgumentNullException.ThrowIfNull(deduction);
        var board = Remove(deduction.Removes);
        foreach (var candidate in deduction.Places)
            board = board.Place(candidate);
        return board;
    }

    /// <summary>The board after all of some deductions that were found on it. Several may say the same.</summary>
    /// <exception cref="ArgumentException">The board has no solution, and a digit would stand twice in a house.</exception>
    public Board Apply(IEnumerable<Deduction> together)
    {
        ArgumentNullException.ThrowIfNull(together);
        var places = CandidateSet.Empty;
        var removes = CandidateSet.Empty;
        foreach (var deduction in together)
        {
            places |= deduction.Places;
            removes |= deduction.Removes;
        }

        var board = removes.IsEmpty ? this : Remove(removes);
        foreach (var candidate in places)
            board = board.Place(candidate);
        return board;
    }

    /// <summary>The 81 characters of the filled cells; candidates are not written.</summary>
    public override string ToString() => BoardText.Write(this);

    private static Board MakeBlank()
    {
        var digits = default(CellDigits);
        foreach (var cell in CellSet.All)
            digits[cell.Index] = DigitSet.All;
        return new(CandidateSet.Of(CellSet.All, DigitSet.All), digits, CellSet.Empty, CellSet.Empty);
    }

    private static Board Fill(GridDraft draft)
    {
        var board = Blank;
        for (var index = 0; index < Cell.Count; index++)
        {
            if (draft.Text[index] == BoardText.Blank)
                continue;
            var cell = Cell.Unchecked(index);
            var givens = draft.Placed.Contains(cell) ? board.Givens : board.Givens.With(cell);
            board = board.PlaceFree(cell, Digit.At(draft.Text[index] - '1'), givens);
        }

        return draft.Removed.IsEmpty ? board : board.Remove(draft.Removed);
    }

    private Board PlaceFree(Cell cell, Digit digit, CellSet givens)
    {
        var digits = _digits;
        foreach (var peer in cell.Peers & _candidates[digit])
            digits[peer.Index] = digits[peer.Index].Without(digit);
        var candidates = _candidates.WithPlane(digit, _candidates[digit] - cell.Peers);
        foreach (var other in digits[cell.Index])
            candidates = candidates.WithPlane(other, candidates[other].Without(cell));
        digits[cell.Index] = DigitSet.Of(digit);
        return new(candidates, digits, Filled.With(cell), givens);
    }

    private static void FindEqualDigits(string text, ImmutableArray<BoardFault>.Builder faults)
    {
        for (var house = 0; house < House.Count; house++)
        {
            var first = new Cell?[Digit.Count];
            foreach (var cell in House.Unchecked(house).Cells)
            {
                if (text[cell.Index] == BoardText.Blank)
                    continue;
                var digit = Digit.At(text[cell.Index] - '1');
                if (first[digit.Index] is { } earlier)
                    faults.Add(new BoardFault.TwoEqualDigits(House.Unchecked(house), digit, earlier, cell));
                else
                    first[digit.Index] = cell;
            }
        }
    }
}
