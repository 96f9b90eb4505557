using Companion.Engine.Proofs;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.Proving;

namespace Companion.Session.Tests.Proving;

public sealed class DueTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    private IEnumerable<string> Labels => Due.Of(_session.State).Select(claim => claim.Step.Label);

    [Fact]
    public void Entries_wait_for_their_proofs_in_order_until_each_has_one()
    {
        _session.Place("r2c2", 6).Place("r3c1", 2).Strike("r1c1", 5);
        Assert.Equal(["6 in r2c2", "2 in r3c1", "strike 5 in r1c1"], Labels);

        _session.Attribute(1);
        Assert.Equal(["2 in r3c1", "strike 5 in r1c1"], Labels);

        _session.Attribute();
        Assert.Empty(Labels);
        Assert.Equal([1, 2, 3], _session.State.Attributions.Select(attributed => attributed.Entry));
    }

    [Fact]
    public void An_entry_that_was_taken_back_waits_no_more_and_waits_again_when_it_is_made_again()
    {
        _session.Place("r2c2", 6).Undo();
        Assert.Empty(Labels);

        _session.Redo();
        Assert.Equal(["6 in r2c2"], Labels);

        _session.Attribute().Undo().Redo();
        Assert.Empty(Labels);
    }

    [Fact]
    public void A_list_waits_until_it_is_finished()
    {
        _session.List("r2c2", "46").Strike("r2c2", 7);
        Assert.Empty(Labels);

        _session.Settle();
        Assert.Equal(["strike 7 in r2c2"], Labels);
    }

    [Fact]
    public void What_is_wrong_or_stands_on_a_wrong_board_waits_for_no_proof()
    {
        _session.Place("r1c1", 5).Place("r2c2", 6);

        Assert.Empty(Labels);
    }

    [Fact]
    public void A_proof_that_comes_late_is_kept_once_and_only_of_an_entry_that_stands()
    {
        var found = new AttributeEntry(1, new Attribution.NotProved(new("x-wing")));
        _session.Place("r2c2", 6).Undo();
        Assert.Empty(_session.Try(found).Events);

        _session.Redo();
        Assert.IsType<EntryAttributed>(Assert.Single(_session.Try(found).Events));
        Assert.Empty(_session.Try(found).Events);
    }

    [Fact]
    public void A_proof_is_no_entry()
    {
        var before = _session.Place("r2c2", 6).State;

        _session.Attribute();

        Assert.Equal(
            before with { Sequence = before.Sequence + 1, Attributions = _session.State.Attributions }, _session.State);
        Assert.True(Session.Scanning.Scan.HoldsFor(before, _session.State));
    }
}
