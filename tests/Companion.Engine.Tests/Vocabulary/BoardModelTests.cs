using Companion.Engine.Proofs;
using CsCheck;

namespace Companion.Engine.Tests.Vocabulary;

/// <summary>Boards under random placements and removals, beside a model of plain dictionaries.</summary>
public class BoardModelTests
{
    private static readonly Gen<List<(bool Places, Candidate Candidate)>> Moves =
        Gen.Select(Gen.Int[0, 2].Select(draw => draw > 0), Any.Candidate).List[0, 150];

    [Fact]
    public void A_board_keeps_its_candidates_in_step_with_its_digits() => Moves.Sample(moves =>
    {
        var board = Board.Blank;
        var digits = new Dictionary<Cell, Digit>();
        var standing = CandidateSet.Of(CellSet.All, DigitSet.All).ToHashSet();
        foreach (var (places, move) in moves)
        {
            if (!places)
            {
                board = board.Remove(CandidateSet.Of(move));
                standing.Remove(move);
            }
            else if (standing.Contains(move))
            {
                board = board.Place(move);
                digits[move.Cell] = move.Digit;
                standing.RemoveWhere(one => one.Cell == move.Cell || (one.Digit == move.Digit && one.Cell.Sees(move.Cell)));
            }
            else
            {
                Assert.Throws<ArgumentException>(() => board.Place(move));
            }
        }

        AssertSame(board, digits, standing);
    });

    [Fact]
    public void Moves_leave_the_board_they_start_from_alone()
    {
        foreach (var move in CandidateSet.Of(CellSet.All, DigitSet.All))
        {
            Board.Blank.Place(move);
            Board.Blank.Remove(CandidateSet.Of(move));
        }

        AssertSame(Board.Blank, [], [.. CandidateSet.Of(CellSet.All, DigitSet.All)]);
    }

    [Fact]
    public void Given_digits_are_given_and_placed_ones_are_not() => Any.Grid.Sample(grid =>
    {
        var board = Board.Parse(grid);
        Assert.Equal(board.Filled, board.Givens);
        foreach (var candidate in board.Candidates.Take(1))
            Assert.Equal(board.Givens, board.Place(candidate).Givens);
    });

    [Fact]
    public void A_read_grid_is_the_blank_board_with_its_digits_placed() => Any.Grid.Sample(grid =>
    {
        var placed = CellSet.All.Where(cell => grid[cell.Index] != BoardText.Blank)
            .Aggregate(Board.Blank, (board, cell) => board.Place(new(cell, Digit.Of(grid[cell.Index] - '0'))));

        Assert.Equal(placed.Candidates, Board.Parse(grid).Candidates);
        Assert.Equal(placed.Filled, Board.Parse(grid).Filled);
    });

    [Fact]
    public void A_deduction_is_applied_removals_and_placements_alike()
    {
        var deduction = new Deduction
        {
            Rule = new("own"),
            Cells = [new(Cell.Of(1, 1), Role.Single)],
            Digits = DigitSet.Parse("5"),
            Places = CandidateSet.Parse("r1c1=5"),
            Removes = CandidateSet.Parse("r9c9=1 r9c9=2"),
        };

        var board = Board.Blank.Apply(deduction);

        Assert.Equal(Board.Blank.Place(Candidate.Parse("r1c1=5")).Candidates - deduction.Removes, board.Candidates);
        Assert.Throws<ArgumentException>(() => board.Apply(deduction));
    }

    [Fact]
    public void A_cell_without_candidates_is_dead_and_not_filled()
    {
        var cell = Cell.Of(3, 3);
        var board = Board.Blank.Remove(CandidateSet.Of(CellSet.Of(cell), DigitSet.All));

        Assert.Equal(CellSet.Of(cell), board.DeadCells);
        Assert.True(board.Open.Contains(cell));
        Assert.Null(board.DigitAt(cell));
    }

    private static void AssertSame(Board board, Dictionary<Cell, Digit> digits, HashSet<Candidate> standing)
    {
        Assert.Equal(standing.Order(), board.Candidates);
        Assert.Equal(digits.Keys.Order(), board.Filled);
        Assert.Equal(digits.Count == Cell.Count, board.IsFull);
        Assert.Equal(~board.Filled, board.Open);
        var (byCell, byDigit) = (standing.ToLookup(one => one.Cell), standing.ToLookup(one => one.Digit));
        foreach (var cell in CellSet.All)
        {
            Assert.Equal(digits.TryGetValue(cell, out var digit) ? digit : null, board.DigitAt(cell));
            Assert.Equal(byCell[cell].Select(one => one.Digit).Order(), board[cell]);
        }

        foreach (var digit in Digit.All)
            Assert.Equal(byDigit[digit].Select(one => one.Cell).Order(), board[digit]);
        foreach (var house in HouseSet.All)
        {
            var placed = house.Cells.Where(digits.ContainsKey).Select(cell => digits[cell]).ToHashSet();
            Assert.Equal(Digit.All.Where(digit => !placed.Contains(digit)), board.MissingFrom(house));
        }

        for (var count = 1; count <= 9; count++)
            Assert.Equal(CellSet.All.Where(cell => byCell[cell].Count() == count), board.CellsWith(count));
    }
}
