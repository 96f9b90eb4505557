using Companion.Engine;

namespace Companion.Session.State;

/// <summary>
/// What the presenter has in front of the audience: the puzzle, the digits placed and the marks written. It may break the rules
/// of the puzzle; <see cref="Boards.SeenBoard"/> says what it means. Compared by value.
/// </summary>
public sealed record Grid
{
    private Grid()
    {
    }

    /// <summary>No puzzle, nothing written.</summary>
    public static Grid Blank { get; } = new();

    /// <summary>The puzzle; null before the first one is loaded.</summary>
    public Puzzle? Puzzle { get; private init; }

    /// <summary>Which loading of the session this grid belongs to: 1 for the first, 0 for no puzzle.</summary>
    /// <remarks>A puzzle loaded twice is worked twice: what was said the first time is not known the second time.</remarks>
    public int Loading { get; private init; }

    /// <summary>What the puzzle is called and whom it is owed to.</summary>
    public Credit Credit { get; private init; } = new("", "", "");

    /// <summary>The digits that the presenter placed, at most one a cell and none on a given.</summary>
    public CandidateSet Placed { get; private init; }

    /// <summary>The candidate lists written in cells; a cell without a digit here has no list.</summary>
    public CandidateSet CellMarks { get; init; }

    /// <summary>The block marks.</summary>
    public BlockMarks BlockMarks { get; init; } = BlockMarks.None;

    /// <summary>The candidates that the presenter struck.</summary>
    public CandidateSet Struck { get; init; }

    /// <summary>The cells whose digit was given.</summary>
    public CellSet Givens => Puzzle?.Board.Givens ?? CellSet.Empty;

    /// <summary>The cells with a digit, given or placed.</summary>
    public CellSet Filled => Givens | Placed.Cells;

    /// <summary>The cells in which something is written: a placed digit, a list, a block mark or a strike.</summary>
    public CellSet Written => Placed.Cells | CellMarks.Cells | BlockMarks.Cells | Struck.Cells;

    /// <summary>A puzzle at its start.</summary>
    /// <param name="puzzle">The puzzle.</param>
    /// <param name="loading">Which loading of the session this is, 1-based.</param>
    /// <param name="credit">Whom it is owed to.</param>
    public static Grid Of(Puzzle puzzle, int loading, Credit credit) =>
        new() { Puzzle = puzzle, Loading = loading, Credit = credit };

    /// <summary>The digit in the cell, given or placed, or null where it is open.</summary>
    public Digit? DigitAt(Cell cell)
    {
        if (Puzzle?.Board.DigitAt(cell) is { } given)
            return given;
        var placed = Placed[cell];
        return placed.IsEmpty ? null : placed.First;
    }

    /// <summary>The digits of all filled cells, given and placed.</summary>
    public CandidateSet Digits
    {
        get
        {
            var digits = Placed;
            foreach (var cell in Givens)
                digits = digits.With(new(cell, Puzzle!.Board.DigitAt(cell)!.Value));
            return digits;
        }
    }

    /// <summary>
    /// The grid with the digit in place of what was placed or marked in the cell. Other cells keep their marks.
    /// </summary>
    public Grid Place(Candidate candidate)
    {
        var cell = CellSet.Of(candidate.Cell);
        return Unmark(cell) with { Placed = (Placed - CandidateSet.Of(cell, DigitSet.All)).With(candidate) };
    }

    /// <summary>The grid with each of these cells erased: the placed digit or, where there is none, the marks.</summary>
    public Grid Erase(CellSet cells)
    {
        var filled = cells & Placed.Cells;
        return Unmark(cells - filled) with { Placed = Placed - CandidateSet.Of(filled, DigitSet.All) };
    }

    /// <summary>The givens alone.</summary>
    public Grid Bare() => new() { Puzzle = Puzzle, Loading = Loading, Credit = Credit };

    /// <inheritdoc/>
    public bool Equals(Grid? other) =>
        other is not null && Loading == other.Loading && Credit == other.Credit
        && Puzzle?.Board.ToString() == other.Puzzle?.Board.ToString()
        && Placed == other.Placed && Struck == other.Struck
        && CellMarks == other.CellMarks && BlockMarks.Equals(other.BlockMarks);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Loading, Credit, Placed, CellMarks, Struck, BlockMarks);

    private Grid Unmark(CellSet cells)
    {
        var all = CandidateSet.Of(cells, DigitSet.All);
        return this with { CellMarks = CellMarks - all, BlockMarks = BlockMarks.Without(cells), Struck = Struck - all };
    }
}
