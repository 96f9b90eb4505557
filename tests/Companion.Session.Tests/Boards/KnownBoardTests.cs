using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Boards;
using Companion.Session.Commands;

namespace Companion.Session.Tests.Boards;

public sealed class KnownBoardTests
{
    private const string Pointing8 = "pointing 8 locked r7c8 r9c8 in b9 removes r1c8=8 r2c8=8";

    private const string Pointing8InBlock3 = "pointing 8 locked r2c7 r2c8 in b3 removes r2c2=8";

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    private Board Known => KnownBoard.Of(_session.State).Value!;

    [Fact]
    public void At_first_it_is_the_seen_board() =>
        Assert.Equal(SeenBoard.Of(_session.State.Grid, default).Value!.Candidates, Known.Candidates);

    [Fact]
    public void What_a_used_deduction_removes_is_gone()
    {
        Use(Pointing8);

        Assert.Equal(
            CandidateSet.Parse("r1c8=8 r2c8=8"),
            SeenBoard.Of(_session.State.Grid, default).Value!.Candidates - Known.Candidates);
    }

    [Fact]
    public void A_deduction_whose_support_came_back_removes_nothing_and_neither_does_what_rests_on_it()
    {
        // 8 in block 3:
        // . 8 .     struck in r1c8, it is kept to row 2.
        // 8 8 .
        // . . .
        var removed = CandidateSet.Parse("r2c2=8 r5c5=3");
        _session.Strike("r1c8", 8);
        Use(Pointing8InBlock3);
        _session.Do(new MarkUsed(new Deduction
        {
            Rule = new("made-up"),
            Cells = [],
            Digits = DigitSet.Parse("38"),
            RestsOn = CandidateSet.Parse("r2c2=8"),
            Removes = CandidateSet.Parse("r5c5=3"),
        }));
        Assert.Empty(Known.Candidates & removed);

        _session.Strike("r1c8", 8);
        Assert.Equal(removed, Known.Candidates & removed);

        _session.Strike("r1c8", 8);
        Assert.Empty(Known.Candidates & removed);
    }

    [Fact]
    public void A_cell_that_was_filled_is_support_too()
    {
        // 7 in block 1:     then, with 8 and 5 placed:
        // . 7 3             . 8 3
        // 9 7 7             9 7 7    both in row 2
        // . 7 1             . 5 1
        _session.Place("r1c2", 8).Place("r3c2", 5);
        var pointing = Open("pointing 7 locked r2c2 r2c3 in b1");
        Assert.DoesNotContain(new Candidate(Cell.Parse("r3c2"), Digit.Of(7)), pointing.RestsOn);
        Use(pointing.ToString());
        Assert.Empty(Known.Candidates & pointing.Removes);

        _session.Undo();
        Assert.Equal(pointing.Removes, Known.Candidates & pointing.Removes);

        _session.Redo();
        Assert.Empty(Known.Candidates & pointing.Removes);
    }

    [Fact]
    public void A_digit_placed_against_what_a_deduction_rests_on_takes_its_removals_back()
    {
        _session.Strike("r1c8", 8);
        Use(Pointing8InBlock3);
        _session.Place("r1c8", 8);

        Assert.Equal(CandidateSet.Parse("r2c2=8"), Known.Candidates & CandidateSet.Parse("r2c2=8"));
    }

    [Fact]
    public void What_was_said_about_another_puzzle_or_another_loading_of_this_one_does_not_count()
    {
        Use(Pointing8);
        _session.Do(new LoadPuzzle(Puzzles.Easy, "", "", ""));
        Assert.Equal(Puzzle.Parse(Puzzles.Easy).Board.Candidates, Known.Candidates);

        _session.Undo();
        Assert.Empty(Known.Candidates & CandidateSet.Parse("r1c8=8 r2c8=8"));
    }

    [Fact]
    public void On_a_broken_grid_there_is_none()
    {
        Use(Pointing8);
        _session.Place("r1c1", 3);

        Assert.False(KnownBoard.Of(_session.State).IsGood);
    }

    [Fact]
    public void A_cell_that_loses_its_last_candidate_to_a_used_deduction_is_a_fault()
    {
        Use(Pointing8);
        _session.List("r2c8", "8").Settle();

        Assert.Equal([new BoardFault.NoCandidateLeft(Cell.Parse("r2c8"))], KnownBoard.Of(_session.State).Faults);
    }

    private Deduction Open(string start) => _session.Scan().Open
        .Select(found => found.Deduction).First(deduction => deduction.ToString().StartsWith(start, StringComparison.Ordinal));

    private void Use(string id) => _session.Do(new MarkUsed(Open(id)));
}
