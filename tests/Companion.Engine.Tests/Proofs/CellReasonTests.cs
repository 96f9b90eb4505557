using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Proofs;

/// <summary>Why a digit is, or cannot be, in a cell: the finding and the words.</summary>
public sealed class CellReasonTests
{
    // The demo's puzzle, made by our own generator, seed 2371.
    private const string Demo = "45...9....8..5.4.31....48..6..9......7..1..9......2..8..61....25.2.9..4....4...35";

    [Theory]
    [InlineData("r1c1=4", "Row one column one is four: it was given.", "r1c1 is 4: given")]
    [InlineData("r1c1=5", "Row one column one is four, so it is not five.", "r1c1 is 4")]
    [InlineData(
        "r1c3=9", "Row one column three cannot be nine: it sees row one column six, which is.", "r1c3 cannot be 9: it sees r1c6, which is")]
    [InlineData("r2c5=5", "Row two column five is five: it was given.", "r2c5 is 5: given")]
    [InlineData(
        "r3c4=2", "Row three column four is two. It follows in four steps, the hardest a hidden single.",
        "r3c4 is 2: follows in 4 steps, the hardest a hidden single")]
    public void A_reason_is_found_and_said_in_both_forms(string asked, string spoken, string written) =>
        Assert.Equal(new Saying(spoken, written), ShippedPhrases.Wording.Why(Reason(asked)));

    [Fact]
    public void The_right_digit_is_proved_from_the_board_as_it_stands_and_a_wrong_one_too()
    {
        var goes = Assert.IsType<CellReason.Goes>(Reason("r6c5=4"));
        var cannotBe = Assert.IsType<CellReason.CannotBe>(Reason("r4c5=4"));

        Assert.Equal("xy-wing", Assert.IsType<Attribution.Proved>(goes.Attribution).Hardest.Value);
        Assert.Equal("xy-wing", Assert.IsType<Attribution.Proved>(cannotBe.Attribution).Hardest.Value);
    }

    [Fact]
    public void What_a_mark_took_out_is_proved_from_the_digits_alone()
    {
        var puzzle = Puzzle.Parse(Demo);
        var struck = Candidate.Parse("r4c5=4");

        var reason = CellReason.Of(puzzle.Board.Remove(CandidateSet.Of(struck)), puzzle.Board, puzzle.Solution, struck, Prove);

        Assert.NotEmpty(Assert.IsType<Attribution.Proved>(Assert.IsType<CellReason.CannotBe>(reason).Attribution).Steps);
    }

    [Fact]
    public void What_the_ladder_does_not_prove_is_said_so()
    {
        var puzzle = Puzzle.Parse(Demo);

        var reason = CellReason.Of(
            puzzle.Board,
            puzzle.Board,
            puzzle.Solution,
            Candidate.Parse("r6c5=4"),
            (board, target) => Attribution.Of(board, target, [.. Ladder.Standard.Rules.Take(10)], Costs.ByRung, default));

        Assert.Equal(
            new Saying(
                "Row six column five is four. No rule of the ladder proves it, up to hidden triple.",
                "r6c5 is 4: not proved by the ladder up to hidden triple"),
            ShippedPhrases.Wording.Why(reason));
    }

    [Fact]
    public void A_proof_of_several_steps_says_how_many_and_the_hardest_and_a_single_step_that_does_it_alone()
    {
        // P. Norvig, "Solving Any Sudoku Puzzle" (2006), grid1: r5c5 can only be 5.
        var board = Board.Parse(AttributionTests.Essay);
        var proved = Assert.IsType<Attribution.Proved>(Prove(board, AttributionTarget.Place(Candidate.Parse("r5c5=5"))));

        Assert.Equal(
            new Saying(
                "It follows in three steps, the hardest a hidden single. A naked single does it alone.",
                "follows in 3 steps, the hardest a hidden single; a naked single does it alone"),
            ShippedPhrases.Wording.How(proved));
        Assert.Equal(
            [
                "In column five, four has nowhere left to go but row three. So row three column five is four.",
                "In column five, three has nowhere left to go but row seven. So row seven column five is three.",
                "In column five, only row five is still open, and the digit it still needs is five. So row five column five is five.",
            ],
            ShippedPhrases.Wording.Steps(board, proved.Steps).Select(step => step.Words.Spoken));
    }

    [Fact]
    public void What_is_so_already_is_said_so() => Assert.Equal(
        new Saying("The board shows it already.", "shown already"), ShippedPhrases.Wording.How(new Attribution.Proved([], default, 0, null)));

    private static CellReason Reason(string asked)
    {
        var puzzle = Puzzle.Parse(Demo);
        return CellReason.Of(puzzle.Board, puzzle.Board, puzzle.Solution, Candidate.Parse(asked), Prove);
    }

    private static Attribution Prove(Board board, AttributionTarget target) => Attribution.Of(
        board, target, ShippedLadder.Ladder.WithoutUniqueness(), cancel: TestContext.Current.CancellationToken);
}
