using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.Proving;

namespace Companion.Session.Tests.Proving;

public sealed class ClaimTests
{
    // In the solution: r1c1 4, r1c2 8, r2c2 6, r2c3 7, r3c1 2.
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void A_digit_claims_itself_on_the_board_before_it()
    {
        _session.Place("r1c1", 4).Place("r1c2", 8);

        Assert.Equal(["places r1c2=8", "places r1c1=4"], Claims());
        Assert.Equal("578", Before(0, "r1c2"));
        Assert.Equal("45", Before(1, "r1c1"));
    }

    [Fact]
    public void A_block_mark_claims_once_it_has_two_places()
    {
        _session.Block("r1c1", 4);
        Assert.Empty(Claims());

        _session.Block("r2c2", 4);
        Assert.Equal(["removes r1c2=4 r2c3=4"], Claims());
    }

    [Fact]
    public void A_strike_claims_what_stood()
    {
        _session.Strike("r1c1 r1c2", 5).Strike("r1c1", 3);

        Assert.Equal(["removes r1c1=5 r1c2=5"], Claims());
    }

    [Fact]
    public void A_list_claims_when_it_is_finished_and_the_entry_that_finishes_it_is_not_charged_with_it()
    {
        _session.List("r2c2", "46");
        Assert.Empty(Claims());

        _session.Place("r1c1", 4);
        Assert.Equal(["places r1c1=4", "removes r2c2=2 r2c2=7 r2c2=8"], Claims());
        Assert.Equal("46", Before(0, "r2c2"));
        Assert.Equal("24678", Before(1, "r2c2"));
    }

    [Fact]
    public void A_list_that_is_settled_claims_by_its_last_entry()
    {
        _session.List("r2c2", "46").Settle();

        Assert.Equal("6 in the list of r2c2", Assert.Single(Claim.Of(_session.State)).Step.Label);
    }

    [Fact]
    public void A_digit_that_replaces_another_is_claimed_on_the_board_without_that_one()
    {
        _session.Place("r1c1", 5).Place("r1c1", 4);

        var claim = Claim.Of(_session.State).First();
        Assert.True(claim.IsProvable);
        Assert.Equal("45", Before(0, "r1c1"));
    }

    [Fact]
    public void A_wrong_digit_or_strike_is_wrong_and_nothing_is_proved_from_the_board_after_it()
    {
        _session.Place("r1c1", 5).Place("r2c2", 6);
        Assert.Equal([(false, false), (true, false)], Claim.Of(_session.State).Select(claim => (claim.IsWrong, claim.IsProvable)));

        _session.Undo().Undo().Strike("r1c1", 4).Place("r2c2", 6);
        Assert.Equal([(false, false), (true, false)], Claim.Of(_session.State).Select(claim => (claim.IsWrong, claim.IsProvable)));
    }

    [Fact]
    public void Who_erases_clears_or_takes_a_strike_back_claims_nothing()
    {
        _session.Strike("r1c1", 5).Strike("r1c1", 5).Place("r1c1", 4).Erase("r1c1").Place("r2c2", 6).Do(new ClearGrid());

        Assert.Equal(["places r2c2=6", "places r1c1=4", "removes r1c1=5"], Claims());
    }

    [Fact]
    public void The_entries_of_a_puzzle_before_are_claims_on_their_own_boards()
    {
        _session.Place("r1c1", 4).Do(new LoadPuzzle(Puzzles.Demo, "", "", ""));

        Assert.Equal(["places r1c1=4"], Claims());
        Assert.Equal("45", Before(0, "r1c1"));
    }

    private string Before(int claim, string cell) =>
        Claim.Of(_session.State).ElementAt(claim).Before![Cell.Parse(cell)].ToString();

    private IEnumerable<string> Claims() => Claim.Of(_session.State).Select(claim => string.Join(
        ' ',
        new[] { ("places", claim.Target.Places), ("removes", claim.Target.Removes) }
            .Where(part => !part.Item2.IsEmpty)
            .Select(part => $"{part.Item1} {part.Item2}")));
}
